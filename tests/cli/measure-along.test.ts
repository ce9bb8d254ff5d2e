import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { axisByHand } from '../../src/cli/accuracy/axis-by-hand';
import { type Truth, truthSchema } from '../../src/cli/accuracy/truth';
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
  const { other, axis_rear: rear, axis_p0: nose } = truth;
  if (!other || !rear) throw new Error('no adaptor');
  const length = Math.hypot(...nose.map((x, i) => x - (rear[i] ?? 0)));
  const inward = nose.map(
    (x, i) => (rear[i] ?? 0) + ((x - (rear[i] ?? 0)) / length) * other.thread_len_mm,
  );
  const behind = { ...truth, axis_p0: rear, axis_p1: inward as Truth['axis_p1'] };
  expect(Math.abs((await along(truth)) / truth.pitch_mm - 1)).toBeLessThan(0.006);
  expect(Math.abs((await along(behind)) / other.pitch_mm - 1)).toBeLessThan(0.006);
  expect(other.pitch_mm).not.toBe(truth.pitch_mm);
}, 60_000);
