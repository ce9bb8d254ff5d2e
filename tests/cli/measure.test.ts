import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { jsonLines, runCommand, spawnCommand } from './run-command';

const folder = mkdtempSync(join(tmpdir(), 'crestwise-'));
const photo = (name: string) =>
  fileURLToPath(new URL(`../../fixtures/photos/${name}.jpg`, import.meta.url));

function file(name: string, content: Uint8Array | string): string {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
}

test('one JSON object a line per photo, in order, whatever the photos are', async () => {
  const truncated = readFileSync(photo('d05')).subarray(0, 40_000);
  const photos = [
    photo('d26'),
    file('note.jpg', 'not a photo\n'),
    join(folder, 'missing.jpg'),
    folder,
    file('half.jpg', truncated),
    photo('d11'),
  ];
  const { code, out } = await spawnCommand('measure', '--json', ...photos);
  expect(code).toBe(0);
  const answers = jsonLines(out);
  expect(answers.map((answer) => answer.photo)).toEqual(photos);
  expect(answers.map((answer) => answer.outcome)).toEqual([
    'measured',
    'refused',
    'refused',
    'refused',
    'refused',
    'measured',
  ]);
  for (const { refusal } of answers.slice(1, 5)) {
    expect(refusal).toEqual({ reason: 'unreadable', advice: expect.stringMatching(/\w{4}.*\.$/) });
  }
  const estimate = { value: expect.any(Number), u: expect.any(Number) };
  expect(answers[0]).toMatchObject({
    reference: {
      kind: 'card',
      pxPerMm: expect.any(Number),
      axisHeightMm: expect.any(Number),
      cameraHeightMm: expect.any(Number),
    },
    thread: {
      pitchMm: estimate,
      majorDiameterMm: estimate,
      correlation: expect.any(Number),
      turns: expect.any(Number),
    },
    threads: expect.arrayContaining([
      expect.objectContaining({ designation: expect.any(String), probability: expect.any(Number) }),
    ]),
    connections: expect.any(Array),
    decision: { state: expect.stringMatching(/^(settled|needs-reading|unlisted)$/) },
    timingsMs: { total: expect.any(Number) },
  });
  expect(Object.keys(answers[0].thread)).toEqual(
    expect.arrayContaining(['taper', 'flankAngleDeg', 'hand']),
  );
  expect(Object.keys(answers[0].end)).toContain('noseHalfAngleDeg');
});

test('readings change the answer; text is for people', async () => {
  const { code, out } = await runCommand(
    'measure',
    '--reading',
    'seat=o-ring-at-hex',
    photo('d26'),
  );
  expect(code).toBe(0);
  // d26 is a 3/4-16 O-ring stud.
  expect(out).toMatch(/3\/4-16/);
  expect(out).toMatch(/pitch +1\.\d+ ± 0\.\d+ mm/);
  // 3/4-16 carries the 37° flare too (ISO 8434-2, size -8): its nut screws on and does not seal.
  expect(out).toMatch(/must not be joined:.*ISO 8434-2 -8/);
});

test('usage errors end with code 2, say why, and print no answer', async () => {
  for (const [args, complaint] of [
    [['--json'], /photo/],
    [['--nonsense', photo('d26')], /nonsense/],
    [['--reading', 'seat=round', photo('d26')], /seat=round/],
    [['--ruler', '1,2,3', photo('d26')], /--ruler/],
    [['--ruler', '5,5,5,5,10', photo('d26')], /--ruler/],
    [['--bars', '150', photo('d26')], /--bars/],
    [['--bars', '15,10', photo('d26')], /--bars/],
  ] as const) {
    const { code, out, err } = await runCommand('measure', ...args);
    expect(code, err).toBe(2);
    expect(err).toMatch(complaint);
    expect(out).toBe('');
  }
});
