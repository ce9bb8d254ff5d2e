import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { defaultOptions } from '../../src/journey/identification';
import { identifyPhoto } from '../../src/journey/identify';

/** Photographs of screws beside a rule; fixtures/real/README.md names their source. */
const folder = new URL('../../fixtures/real/', import.meta.url);
interface Photograph {
  readonly file: string;
  readonly thread: string;
  readonly pitchMm: number;
  readonly majorLimitsMm: readonly [number, number];
  readonly pxPerMm: number;
}
const photographs: Photograph[] = JSON.parse(
  readFileSync(new URL('manifest.json', folder), 'utf8'),
);

/** The rule runs along the row 812; two graduations that are `mm` apart, the first at `fromPx`. */
function besideRule(photograph: Photograph, fromPx: number, mm: number) {
  const key = `${photograph.file} ${fromPx} ${mm}`;
  const answer = measured.get(key) ?? measureBesideRule(photograph, fromPx, mm);
  measured.set(key, answer);
  return answer;
}

const measured = new Map<string, ReturnType<typeof measureBesideRule>>();

async function measureBesideRule({ file, pxPerMm }: Photograph, fromPx: number, mm: number) {
  const answer = await identifyPhoto(
    new AbortController().signal,
    new Uint8Array(readFileSync(new URL(file, folder))),
    {
      ...defaultOptions,
      ruler: { from: [fromPx, 812], to: [fromPx + mm * pxPerMm, 812], mm },
    },
    { vision: await loadNodeVision(), decoders: nodeDecoders },
    () => {},
  );
  if (answer.outcome !== 'measured') throw new Error(answer.refusal.reason);
  return answer;
}

test.each(photographs)(
  '$file is measured within what is stated',
  async (photograph) => {
    const { measurement } = await besideRule(photograph, 80, 80);
    const { pitchMm, majorDiameterMm } = measurement;
    const [from, to] = photograph.majorLimitsMm;
    expect(Math.abs(pitchMm.value / photograph.pitchMm - 1)).toBeLessThan(0.02);
    expect(Math.abs(pitchMm.value - photograph.pitchMm)).toBeLessThan(2 * pitchMm.u);
    // Its axis lies above the rule and reads large; nothing is corrected without a focal length.
    expect(Math.abs(majorDiameterMm.value / ((from + to) / 2) - 1)).toBeLessThan(0.025);
    expect(majorDiameterMm.value).toBeGreaterThan(from - 2 * majorDiameterMm.u);
    expect(majorDiameterMm.value).toBeLessThan(to + 2 * majorDiameterMm.u);
  },
  60_000,
);

test('where on the rule the graduations are marked does not matter', async () => {
  const eleven = photographs.find(({ file }) => file.includes('_11'))!;
  const [whole, half] = [
    await besideRule(eleven, 80, 80),
    await besideRule(eleven, 80 + 20 * eleven.pxPerMm, 50),
  ];
  const { value } = whole.measurement.pitchMm;
  expect(half.measurement.pitchMm.value / value).toBeCloseTo(1, 1.7);
  const ratio = (answer: typeof whole) =>
    answer.measurement.pitchMm.value / answer.measurement.majorDiameterMm.value;
  expect(ratio(half) / ratio(whole)).toBeCloseTo(1, 1.7);
}, 60_000);
