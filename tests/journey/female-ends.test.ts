import { readFile } from 'node:fs/promises';
import { describe, expect, test } from 'vitest';
import { casesInFolder } from '../../src/cli/accuracy/cases';
import { score } from '../../src/cli/accuracy/score';
import { identificationJson } from '../../src/cli/identification-json';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { readPhoto } from '../../src/journey/1-photo/read-photo';
import { defaultOptions } from '../../src/journey/identification';
import { measured } from '../measured';
import { makePng } from './1-photo/make-files';

const identify = async (bytes: Uint8Array, gender: 'female' | 'male') =>
  measured(bytes, { ...defaultOptions, gender });

/** Renders with truth (fixtures/female) of ends that stand mouth up, and of one that lies. Bounds are the issue's:
 *  pitch within 1 %, diameter inside within 1.5 %; a figure beyond 4 u is a fault. */
test.each(['gf022', 'gf024', 'gl018'])(
  '%s: pitch and minor diameter of a female end',
  async (name) => {
    const cases = await casesInFolder('fixtures/female');
    const { truth, bytes } = await cases.find((one) => one.name === name)!.load();
    const answer = await identify(bytes, 'female');
    expect(answer.outcome).toBe('measured');
    if (answer.outcome !== 'measured') return;
    const { numbers, verdict } = score(truth, answer);
    expect(Math.abs(numbers!.pitchError)).toBeLessThan(0.01);
    expect(Math.abs(numbers!.majorError)).toBeLessThan(0.015);
    expect(Math.abs(numbers!.pitchZ)).toBeLessThan(4);
    expect(Math.abs(numbers!.majorZ)).toBeLessThan(4);
    expect(verdict).not.toBe('wrong');
    expect(answer.conclusion.end).toBe('female');
    expect(identificationJson(name, answer)).toMatchObject({
      thread: { majorDiameterMm: null, minorDiameterMm: { value: expect.any(Number) } },
      end: { gender: 'female' },
    });
  },
  120_000,
);

describe('beside the end of gf024', () => {
  const [left, top, width, height, aside] = [820, 455, 170, 185, 300];

  /** The photo with something else in the place beside the end. */
  async function withBeside(paint: (row: Uint8Array, of: Uint8Array) => void): Promise<Uint8Array> {
    const bytes = new Uint8Array(await readFile('fixtures/female/gf024.jpg'));
    const photo = await readPhoto(new AbortController().signal, bytes, nodeDecoders);
    if (!photo.ok) throw new Error(photo.reason);
    const { grey } = photo.value;
    const data = grey.data.slice();
    for (let y = top; y < top + height; y++) {
      const from = y * grey.width + left;
      paint(
        data.subarray(from - aside, from - aside + width),
        grey.data.subarray(from, from + width),
      );
    }
    return makePng({ ...grey, data });
  }

  test('a second one is told of', async () => {
    const two = await withBeside((row, of) => row.set(of));
    const answer = await identify(two, 'female');
    expect(answer.outcome === 'refused' && answer.refusal.reason).toBe('several-fittings');
  }, 60_000);

  test('a block without a thread is no second one', async () => {
    const beside = await withBeside((row) => row.fill(150));
    const [alone, answer] = [
      await identify(new Uint8Array(await readFile('fixtures/female/gf024.jpg')), 'female'),
      await identify(beside, 'female'),
    ];
    if (alone.outcome === 'refused' || answer.outcome === 'refused')
      throw new Error(answer.outcome === 'refused' ? answer.refusal.reason : 'gf024 is refused');
    const { value, u } = alone.measurement.pitchMm;
    expect(Math.abs(answer.measurement.pitchMm.value - value)).toBeLessThan(u);
  }, 60_000);
});
