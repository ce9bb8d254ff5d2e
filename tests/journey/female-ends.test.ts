import { expect, test } from 'vitest';
import { casesInFolder } from '../../src/cli/accuracy/cases';
import { score } from '../../src/cli/accuracy/score';
import { identificationJson } from '../../src/cli/identification-json';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { defaultOptions } from '../../src/journey/identification';
import { identifyPhoto } from '../../src/journey/identify';

const identify = async (bytes: Uint8Array, gender: 'female' | 'male') =>
  identifyPhoto(
    new AbortController().signal,
    bytes,
    { ...defaultOptions, gender },
    { vision: await loadNodeVision(), decoders: nodeDecoders },
    () => {},
  );

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
