import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const root = fileURLToPath(new URL('..', import.meta.url));
const src = join(root, 'src');

interface Import {
  readonly from: string;
  /** Path under src/, or a package's name. */
  readonly to: string;
  readonly typeOnly: boolean;
}

const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.tsx?$/.test(file))
  .map((file) => file.replaceAll('\\', '/'));

const imports = files.flatMap(importsOf);

/** Static imports and exports, dynamic imports, and workers started by URL. */
function importsOf(file: string): Import[] {
  const text = readFileSync(join(src, file), 'utf8');
  const statements = text.matchAll(
    /(?:^|\n)\s*(?:import|export)\s+(type\s+)?(?:[^'";]*?\sfrom\s+)?'([^']+)'/g,
  );
  const calls = text.matchAll(/(?:import\(\s*|new URL\(\s*)'([^']+)'/g);
  return [
    ...[...statements].map(([, type, to]) => ({ to, typeOnly: type !== undefined })),
    ...[...calls].map(([, to]) => ({ to, typeOnly: false })),
  ].map(({ to, typeOnly }) => ({ from: file, to: target(file, to), typeOnly }));
}

function target(file: string, specifier: string): string {
  if (!specifier.startsWith('.')) return specifier;
  const path = resolve(src, dirname(file), specifier);
  return relative(src, path).replaceAll('\\', '/');
}

const isInside = (path: string, folder: string) => path.startsWith(`${folder}/`);
const areaOf = (path: string) => path.split('/')[0];
const stageOf = (path: string) => Number(/^journey\/(\d)-/.exec(path)?.[1] ?? Number.NaN);
const describe = ({ from, to }: Import) => `${from} → ${to}`;

/** What each area may import of the others; a package or the area itself is not asked about. */
const mayImport: Record<string, readonly string[]> = {
  quantity: [],
  'scale-card': ['quantity'],
  standards: ['quantity'],
  vision: ['quantity'],
  journey: ['vision', 'standards', 'scale-card', 'quantity'],
  drawer: ['journey', 'handover', 'standards', 'quantity'],
  handover: ['journey', 'standards', 'scale-card', 'quantity'],
  offline: [],
  worker: ['journey', 'vision', 'scale-card', 'quantity'],
  ui: ['offline', 'worker', 'journey', 'drawer', 'handover', 'standards', 'scale-card', 'quantity'],
  cli: ['journey', 'vision', 'standards', 'scale-card', 'quantity'],
  'main.tsx': ['ui', 'offline'],
};

const areas = new Set(files.map(areaOf));

test('the imports were found', () => {
  expect(imports.length).toBeGreaterThan(100);
  expect(imports.map(describe)).toContain('journey/1-photo/read-photo.ts → quantity/result');
});

test('every area has its place in the order', () => {
  expect([...areas].filter((area) => !(area in mayImport))).toEqual([]);
});

test('imports point down: ui → worker/client ⇢ worker/serve → journey → {vision, standards} → quantity', () => {
  const wrong = imports.filter(({ from, to }) => {
    const [here, there] = [areaOf(from), areaOf(to)];
    return areas.has(there) && here !== there && !mayImport[here]?.includes(there);
  });
  expect(wrong.map(describe)).toEqual([]);
});

test('the page knows the worker by its client only', () => {
  const wrong = imports.filter(
    ({ from, to, typeOnly }) =>
      areaOf(from) === 'ui' && areaOf(to) === 'worker' && to !== 'worker/client' && !typeOnly,
  );
  expect(wrong.map(describe)).toEqual([]);
});

test("the page does no stage's work that needs wasm: stages 1 to 4 run in the worker", () => {
  const wrong = imports.filter(
    ({ from, to, typeOnly }) => areaOf(from) === 'ui' && stageOf(to) <= 4 && !typeOnly,
  );
  expect(wrong.map(describe)).toEqual([]);
});

test('a stage imports only stages of lower numbers', () => {
  const wrong = imports.filter(({ from, to }) => stageOf(to) > stageOf(from));
  expect(wrong.map(describe)).toEqual([]);
});

test('nothing imports itself by way of others, not even its types', () => {
  expect(circles(importsWithin()).map((circle) => circle.join(' ↔ '))).toEqual([]);
});

/** Which of our files each file imports. */
function importsWithin(): Map<string, string[]> {
  const known = new Set(files);
  const within = new Map<string, string[]>(files.map((file) => [file, []]));
  for (const { from, to } of imports) {
    const file = [to, `${to}.ts`, `${to}.tsx`].find((name) => known.has(name));
    if (file) within.get(from)!.push(file);
  }
  return within;
}

/** Groups of files that reach one another, sorted. */
function circles(within: ReadonlyMap<string, readonly string[]>): string[][] {
  const reached = new Map(
    [...within.keys()].map((file) => {
      const seen = new Set<string>();
      const open = [...within.get(file)!];
      for (let next = open.pop(); next; next = open.pop())
        if (!seen.has(next)) {
          seen.add(next);
          open.push(...within.get(next)!);
        }
      return [file, seen] as const;
    }),
  );
  const groups = [...within.keys()]
    .filter((file) => reached.get(file)!.has(file))
    .map((file) => [...reached.get(file)!].filter((one) => reached.get(one)!.has(file)).sort());
  return [...new Map(groups.map((group) => [group.join(), group])).values()].sort();
}

test('OpenCV is called by src/vision alone', () => {
  const wrong = imports.filter(
    ({ from, to }) => /opencv/i.test(to) && !to.endsWith('.wasm?url') && !isInside(from, 'vision'),
  );
  expect(wrong.map(describe)).toEqual([]);
});

test('stages 5 to 8 run without wasm', () => {
  const wrong = imports.filter(
    ({ from, to, typeOnly }) =>
      stageOf(from) >= 5 &&
      !typeOnly &&
      (isInside(to, 'vision') || /wasm|@jsquash|@cwasm/.test(to)),
  );
  expect(wrong.map(describe)).toEqual([]);
});

test('no barrels', () => {
  expect(files.filter((file) => /(^|\/)index\.tsx?$/.test(file))).toEqual([]);
});

/** Their last bits are the engine's: quantity/portable-math.ts has the ones to use instead. */
const engineDependent =
  /Math\.(a?sinh?|a?cosh?|a?tanh?|atan2|exp|expm1|log|log1p|log2|log10|pow|cbrt)\b|\*\* *(?!2\b(?!\.))[\w(.-]/;

test('what leads to a measurement computes the same bits in every engine', () => {
  const wrong = files
    .filter(
      (file) => /^(journey\/[2-7]-|quantity\/)/.test(file) && !file.endsWith('portable-math.ts'),
    )
    .flatMap((file) =>
      readFileSync(join(src, file), 'utf8')
        .split('\n')
        .map((line, i) => ({
          at: `${file}:${i + 1}`,
          line: line.replace(/^\s*(\/?\*|\/\/).*/, ''),
        }))
        .filter(({ line }) => engineDependent.test(line))
        .map(({ at, line }) => `${at} ${line.trim()}`),
    );
  expect(wrong).toEqual([]);
});
