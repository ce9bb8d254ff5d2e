import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { expectedThread } from '../../src/cli/expected-thread';
import { identificationJson } from '../../src/cli/identification-json';
import { measured } from '../measured';
import { jsonLines, runCommand } from './run-command';

const photo = (name: string) =>
  fileURLToPath(new URL(`../../fixtures/photos/${name}.jpg`, import.meta.url));
const truth = (name: string) =>
  JSON.parse(readFileSync(photo(name).replace(/\.jpg$/, '.truth.json'), 'utf8'));

interface Wear {
  readonly thread: string;
  readonly class: string | null;
  readonly crest: {
    readonly state: string;
    readonly why: string | null;
    readonly byMm: number | null;
    readonly lowerMm: number | null;
    readonly upperMm: number | null;
  };
  readonly perCrest: readonly { atMm: number; heightMm: number; u: number; side: string }[];
  readonly overlapMm: number | null;
  readonly finding: { readonly level: string | null; readonly reasons: readonly string[] };
}

// d26 is a render of a 3/4-16 UNF stud; its truth lies beside it.
const d26 = () => measured(new Uint8Array(readFileSync(photo('d26'))));

async function wearOf(thread: string, className?: string): Promise<Wear> {
  const expected = expectedThread({ expect: thread, class: className });
  return (identificationJson('d26', await d26(), { expected }) as { wear: Wear }).wear;
}

test('--expect adds the wear of the thread that is named, and the class changes its limits', async () => {
  const args = ['--json', '--expect', '3/4-16', '--class', '3A', photo('d26')];
  const { code, out, err } = await runCommand('measure', ...args);
  expect(code, err).toBe(0);
  const { wear: tight } = jsonLines(out)[0] as unknown as { wear: Wear };
  expect(tight).toEqual(await wearOf('3/4-16', '3A'));
  const loose = await wearOf('3/4-16 UNF');
  expect(loose).toMatchObject({ thread: '3/4-16 UNF', class: '2A' });
  expect(loose.crest.lowerMm).toBeCloseTo(18.773, 2);
  expect(loose.crest.upperMm).toBeCloseTo(19.012, 2);
  expect(tight.class).toBe('3A');
  expect(tight.crest.upperMm).toBeCloseTo(19.05, 6);
  expect(loose.crest.state).toMatch(/^(within|not-decidable)$/);

  const real = truth('d26').crest_major_at_start_mm / 2;
  expect(loose.perCrest.length).toBeGreaterThan(8);
  expect(new Set(loose.perCrest.map(({ side }) => side)).size).toBe(2);
  const off = loose.perCrest.map(({ heightMm, u }) => Math.abs(heightMm - real) / u);
  expect(off.filter((z) => z < 3).length).toBeGreaterThan(0.9 * off.length);
  expect(loose.overlapMm).toBeCloseTo(real - 17.69 / 2, 0);
});

test('another thread, a taper: not decidable, with the reason', async () => {
  const other = await wearOf('M22x1.5');
  expect(other.crest).toMatchObject({
    state: 'not-decidable',
    why: 'another-pitch',
    byMm: null,
  });
  expect(other.finding).toMatchObject({
    level: 'gauge',
    reasons: expect.arrayContaining(['another-thread']),
  });
  const taper = await wearOf('1/2 NPT');
  expect(taper.crest).toMatchObject({ state: 'not-decidable', why: 'tapered', lowerMm: null });
  expect(taper.class).toBeNull();
});

test('without --expect there is no wear; as text it comes with its cautions', async () => {
  expect(
    identificationJson('d26', await d26(), { expected: expectedThread({}) }),
  ).not.toHaveProperty('wear');
  const { out } = await runCommand('measure', '--expect', '3/4-16 UNF', photo('d26'));
  expect(out).toMatch(/class +18\.77\d to 19\.01\d mm/);
  expect(out).toMatch(/GO and NOT GO/);
  expect(out).not.toMatch(/\bgood\b|impossible/);
});

test('a thread or class that is none is a usage error', async () => {
  for (const [args, complaint] of [
    [['--expect', '3/4-17'], /3\/4-17/],
    [['--expect', 'M22x1.5', '--class', '2A'], /6g or 6h/],
    [['--expect', '1/2 NPT', '--class', '2A'], /no class/],
    [['--class', '2A'], /--expect/],
  ] as const) {
    const { code, out, err } = await runCommand('measure', ...args, photo('d26'));
    expect(code, err).toBe(2);
    expect(err).toMatch(complaint);
    expect(out).toBe('');
  }
});
