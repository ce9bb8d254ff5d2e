import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { axisByHand } from '../../src/cli/accuracy/axis-by-hand';
import { otherEndOf, type Truth, truthSchema } from '../../src/cli/accuracy/truth';
import { jsonLines, runCommand } from './run-command';

/** A rendered adaptor of known geometry, not a photograph. */
const folder = new URL('../../fixtures/ends/', import.meta.url);
const photo = fileURLToPath(new URL('gz003.jpg', folder));
const truth = truthSchema.parse(
  JSON.parse(readFileSync(new URL('gz003.truth.json', folder), 'utf8')),
);

async function along(of: Truth) {
  const axis = axisByHand(of);
  const { code, out } = await runCommand('measure', '--json', '--along', String(axis), photo);
  expect(code).toBe(0);
  const [answer] = jsonLines(out) as unknown as [
    { along: unknown; thread: { pitchMm: { value: number } } },
  ];
  expect(answer.along).toEqual(axis);
  return answer.thread.pitchMm.value;
}

/** Measured alone, each end counts; the one that is shown comes first. */
test('the end whose axis is shown is the one that is measured', async () => {
  const other = otherEndOf(truth);
  if (!other) throw new Error('no adaptor');
  expect(Math.abs((await along(truth)) / truth.pitch_mm - 1)).toBeLessThan(0.006);
  expect(Math.abs((await along(other)) / other.pitch_mm - 1)).toBeLessThan(0.006);
  expect(other.pitch_mm).not.toBe(truth.pitch_mm);
}, 60_000);
