import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { jsonLines, runCommand, spawnCommand } from './run-command';

const folder = mkdtempSync(join(tmpdir(), 'crestwise-'));

function batch(name: string, ...lines: (object | string)[]): string {
  const path = join(folder, name);
  const text = lines.map((line) => (typeof line === 'string' ? line : JSON.stringify(line)));
  writeFileSync(path, text.join('\n'));
  return path;
}

/** 11/16-16 UN, the face seal of ISO 8434-3 for 3/8 in tube, as a good photo would see it. */
const faceSeal = {
  pitchMm: { value: 1.5874, u: 0.003 },
  majorDiameterMm: { value: 17.3, u: 0.05 },
  correlation: 0.8,
  taper: { value: 0.0003, u: 0.002 },
  flankAngleDeg: null,
  noseHalfAngleDeg: null,
  readings: [],
};

test('a batch gives one line of threads, connections and decision for each case', async () => {
  const path = batch(
    'cases.jsonl',
    faceSeal,
    { ...faceSeal, readings: ['seat=flat-face-o-ring'] },
    {
      pitchMm: null,
      majorDiameterMm: null,
      correlation: 0,
      taper: null,
      flankAngleDeg: null,
      noseHalfAngleDeg: null,
      readings: ['caliper-od=1 7/16in', 'pitch-gauge=12tpi', 'seat=flat-face-o-ring'],
    },
  );
  const { code, out } = await spawnCommand('identify', '--json', '--batch', path);
  expect(code).toBe(0);
  const answers = jsonLines(out);
  expect(answers).toHaveLength(3);
  for (const answer of answers) {
    expect(Object.keys(answer)).toEqual(
      expect.arrayContaining(['threads', 'connections', 'decision']),
    );
  }
  const [photo, withSeat, readingsAlone] = answers as never as {
    threads: { designation: string; probability: number }[];
    decision: {
      state: string;
      thread: string;
      connection: object;
      ask: { reading: string } | null;
    };
  }[];
  expect(photo.threads[0].designation).toBe('11/16-16 UN');
  expect(photo.threads[0].probability).toBeGreaterThan(0.99);
  expect(withSeat.decision).toMatchObject({
    state: 'settled',
    thread: '11/16-16 UN',
    connection: { family: 'ISO 8434-3', size: '-6' },
    ask: null,
  });
  // Common practice: a male end of 1 7/16 in and 12 tpi is the dash 16 face seal.
  expect(readingsAlone.threads[0].designation).toMatch(/^1 7\/16-12 UN/);
  expect(readingsAlone.decision.connection).toMatchObject({ family: 'ISO 8434-3', size: '-16' });
});

test('a command that was started ends with its exit code, and says nothing on stdout that is no answer', async () => {
  const ran = await spawnCommand('identify', '--nonsense');
  expect(ran).toMatchObject({ code: 2, out: '' });
  expect(ran.err).toMatch(/nonsense.*\n\nUsage: npm run --silent identify/);
});

test('usage errors end with code 2 and say why', async () => {
  for (const [args, complaint] of [
    [[], /--batch/],
    [['--nonsense'], /nonsense/],
    [['--batch', join(folder, 'missing.jsonl')], /cannot be read/],
    [['--batch', batch('text.jsonl', 'not json')], /Line 1 is not JSON/],
    [['--batch', batch('wrong.jsonl', faceSeal, { pitchMm: 3 })], /Line 2/],
    [['--batch', batch('reading.jsonl', { ...faceSeal, readings: ['seat=round'] })], /seat=round/],
    [['--reading', 'caliper-od=17'], /unit/],
  ] as const) {
    const { code, out, err } = await runCommand('identify', ...args);
    expect(code, err).toBe(2);
    expect(err).toMatch(complaint);
    expect(out).toBe('');
  }
});

test('readings alone, as a person reads the answer', async () => {
  const { code, out } = await runCommand('identify', '--reading', 'caliper-od=27.0mm');
  expect(code).toBe(0);
  expect(out).toMatch(/still needed: /);
});

test('the standards come as two lists with a source in every row', async () => {
  const { code, out } = await spawnCommand('standards', '--json');
  expect(code).toBe(0);
  const { threads, connections } = JSON.parse(out) as {
    threads: Record<string, unknown>[];
    connections: Record<string, unknown>[];
  };
  const named = ['system', 'designation', 'tpi', 'pitchMm', 'basicMajorMm', 'minorInternalMm'];
  for (const row of threads) {
    expect(Object.keys(row)).toEqual(
      expect.arrayContaining([...named, 'flankAngleDeg', 'taper', 'source']),
    );
    expect(row.source).toMatch(/\w{3}/);
  }
  for (const row of connections) {
    expect(Object.keys(row)).toEqual(
      expect.arrayContaining(['family', 'size', 'tubeOd', 'thread', 'seat', 'oRing', 'source']),
    );
    expect(row.source).toMatch(/\w{3}/);
  }
  expect(threads.length).toBeGreaterThan(100);
  expect(connections.length).toBeGreaterThan(50);
});

test('what lies on the bench, and what the part is off, are given by their names', async () => {
  const reading = ['--reading', 'caliper-od=18.9mm'];
  const asked = async (tools: string) => {
    const { out } = await runCommand('identify', '--json', '--at-hand', tools, ...reading);
    const [answer] = jsonLines(out) as never as { decision: { ask: { reading: string } } }[];
    return answer.decision.ask.reading;
  };
  expect(await asked('caliper,pitch-gauge')).toBe('pitch-gauge');
  expect(await asked('caliper,rule')).toBe('turns-over');
  const { code, err } = await runCommand('identify', '--at-hand', 'hammer', ...reading);
  expect(code).not.toBe(0);
  expect(err).toContain('seat-gauge');
  expect((await runCommand('identify', '--region', 'moon', ...reading)).code).not.toBe(0);
});

test('where no thread fits, the nearest is named and no shares are given', async () => {
  const { out } = await runCommand(
    'identify',
    ...['--reading', 'caliper-od=14.4mm', '--reading', 'pitch-gauge=1.5mm'],
  );
  expect(out).toContain('the nearest is M14x1.5, 0.4 mm too large for a male');
  expect(out).not.toContain('%');
});
