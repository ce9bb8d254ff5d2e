import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { nodeDecoders } from '../../src/cli/node-decoders';
import { loadNodeVision } from '../../src/cli/node-vision';
import { readPhoto } from '../../src/journey/1-photo/read-photo';
import {
  defaultOptions,
  type Identification,
  type Measured,
  type MeasureOptions,
} from '../../src/journey/identification';
import { identifyPhoto } from '../../src/journey/identify';
import { markers } from '../../src/scale-card/geometry';
import type { Vision } from '../../src/vision/vision';
import { makePng } from './1-photo/make-files';
import { type DrawnScrew, drawScrew, m8, marksOf } from './drawn-screw';

type Ruler = NonNullable<MeasureOptions['ruler']>;

let vision: Vision;
beforeAll(async () => {
  vision = await loadNodeVision();
});

const never = new AbortController().signal;
const identify = (
  bytes: Uint8Array,
  ruler: Ruler,
  corrections: MeasureOptions['corrections'] = null,
): Promise<Identification> =>
  identifyPhoto(
    never,
    bytes,
    { ...defaultOptions, ruler, corrections },
    { vision, decoders: nodeDecoders },
    () => {},
  );

const drawn = (screw: DrawnScrew) =>
  makePng(drawScrew(screw, (image, px) => vision.blur(image, px)));

/** Errors of pitch and diameter over their u, and of their ratio, relative. */
function errorsOf({ measurement }: Measured, pitchMm: number, majorMm: number) {
  const { pitchMm: pitch, majorDiameterMm: major } = measurement;
  return {
    pitch: (pitch.value - pitchMm) / pitch.u,
    major: (major.value - majorMm) / major.u,
    ratio: ((pitch.value / major.value) * majorMm) / pitchMm - 1,
    relative: Math.max(Math.abs(pitch.value / pitchMm - 1), Math.abs(major.value / majorMm - 1)),
    uPitch: pitch.u / pitch.value,
    uMajor: major.u / major.value,
  };
}

describe('drawings of a screw beside a rule', () => {
  const small = { axisHeightMm: 1, gapMm: 6 };
  test.each<[string, DrawnScrew]>([
    ['M8', m8],
    ['M8 on black', { ...m8, table: 35, metal: 230 }],
    ['M8 on grey, askew', { ...m8, table: 120, metal: 200, angleRad: 0.6, gapMm: 18 }],
    ['M8 whose head touches the rule', { ...m8, gapMm: 7.1 }],
    ['M8 from afar', { ...m8, distanceMm: 1500 }],
    ['M8, 10 px per mm', { ...m8, pxPerMm: 10 }],
    ['M8, 45 px per mm', { ...m8, pxPerMm: 45 }],
    // Its pitch is the rule's own division, and it lies along the rule.
    ['M6', { ...m8, pitchMm: 1, majorMm: 5.9, headMm: { across: 10, length: 4 }, gapMm: 8 }],
    ['1/4-20', { ...m8, pitchMm: 1.27, majorMm: 6.3, divisionMm: 25.4 / 16 }],
    [
      'M3',
      {
        ...m8,
        ...small,
        pitchMm: 0.5,
        majorMm: 2.95,
        headMm: { across: 5.5, length: 3 },
        threadMm: 16,
      },
    ],
    [
      'M24',
      {
        ...m8,
        pitchMm: 3,
        majorMm: 23.7,
        threadMm: 40,
        headMm: { across: 36, length: 15 },
        axisHeightMm: 11.5,
        gapMm: 20,
      },
    ],
  ])(
    '%s is covered by its interval, its ratio is better known',
    async (_, screw) => {
      const result = await identify(drawn(screw), marksOf(screw));
      if (result.outcome === 'refused') throw new Error(result.refusal.advice);
      const errors = errorsOf(result, screw.pitchMm, screw.majorMm);
      expect(Math.abs(errors.pitch)).toBeLessThan(1.96);
      expect(Math.abs(errors.major)).toBeLessThan(1.96);
      // Flat paint mirrors nothing at its rim, where metal does: diameters read large by 0.15 px a side.
      expect(Math.abs(errors.ratio)).toBeLessThan(0.024);
      expect(errors.relative).toBeLessThan(0.07);
      expect(Math.min(errors.uPitch, errors.uMajor)).toBeGreaterThan(0.01);
      // The scale is common; the shadow that a lamp might throw beside a small screw is not.
      expect(result.measurement.correlation).toBeGreaterThan(0.55);
    },
    60_000,
  );

  test('what no pose can say is null, and the notes and the budget say why', async () => {
    const result = await identify(drawn(m8), marksOf(m8));
    if (result.outcome === 'refused') throw new Error(result.refusal.advice);
    expect(result.reference).toMatchObject({
      kind: 'rule',
      axisHeightMm: null,
      cameraHeightMm: null,
      tiltDeg: null,
      field: 'light',
    });
    expect(result.reference.pxPerMm).toBeCloseTo(20, 3);
    expect(result.measurement.hand).toBeNull();
    expect(result.notes).toContain('ruler-without-pose');
    const { budget, pitchMm, majorDiameterMm } = result.measurement;
    // Half the head's width, 7 mm, from 150 mm away, rectangular (JCGM 100:2008, 4.3.7).
    const parallax = budget.find(({ source }) => source === 'height');
    expect(parallax!.majorDiameterMm / majorDiameterMm.value).toBeCloseTo(
      7.1 / 150 / Math.sqrt(3),
      2,
    );
    expect(Math.hypot(...budget.map((row) => row.pitchMm))).toBeCloseTo(pitchMm.u, 6);
    expect(Math.hypot(...budget.map((row) => row.majorDiameterMm))).toBeCloseTo(
      majorDiameterMm.u,
      6,
    );
    // The screw is drawn with its middle at the middle of the picture, along the rule.
    const [a, b] = result.overlay.axis!;
    expect(Math.abs(a[1] / 20 - 29)).toBeLessThan(0.3);
    expect(Math.abs(b[1] / 20 - 29)).toBeLessThan(0.3);
    expect(a[0]).toBeLessThan(b[0]);
  }, 60_000);

  test('an axis drawn by a person is enough, whatever else is found', async () => {
    const screw = { ...m8, angleRad: 0.6, gapMm: 18 };
    const at = (mm: number) =>
      [(45 + mm * Math.cos(0.6)) * 20, (22 + mm * Math.sin(0.6)) * 20] as const;
    const result = await identify(drawn(screw), marksOf(screw), {
      axis: [at(-14), at(8)],
      side: 'both',
    });
    if (result.outcome === 'refused') throw new Error(result.refusal.advice);
    const errors = errorsOf(result, screw.pitchMm, screw.majorMm);
    expect(Math.abs(errors.pitch)).toBeLessThan(1.96);
    expect(Math.abs(errors.major)).toBeLessThan(1.96);
  }, 60_000);

  test.each([1, 0.5, 25.4 / 16])(
    'a rule alone shows no thread: divisions of %f mm',
    async (divisionMm) => {
      const bare = { ...m8, divisionMm, threadMm: 0, headMm: { across: 0, length: 0 } };
      const result = await identify(drawn(bare), marksOf(bare));
      expect(result).toMatchObject({ outcome: 'refused', refusal: { reason: 'no-thread' } });
    },
    60_000,
  );

  test('nor does a smooth pin', async () => {
    const pin = { ...m8, pitchMm: 0.01 };
    const result = await identify(drawn(pin), marksOf(pin));
    expect(result.outcome).toBe('refused');
  }, 60_000);
});

describe('two marks that give no scale', () => {
  test.each<[string, Ruler]>([
    ['outside the photo', { from: [100, 100], to: [5000, 100], mm: 100 }],
    ['too close', { from: [100, 100], to: [115, 100], mm: 1 }],
    ['far too long', { from: [100, 100], to: [1100, 100], mm: 1e5 }],
    ['far too short', { from: [100, 100], to: [1100, 100], mm: 0.1 }],
    ['no length', { from: [100, 100], to: [1100, 100], mm: 0 }],
    ['not a number', { from: [Number.NaN, 100], to: [1100, 100], mm: 50 }],
  ])(
    '%s',
    async (_, ruler) => {
      const result = await identify(drawn(m8), ruler);
      expect(result).toMatchObject({ outcome: 'refused', refusal: { reason: 'no-card' } });
      if (result.outcome === 'refused') expect(result.refusal.advice).toMatch(/[Mm]ark|distance/);
    },
    60_000,
  );

  test('a thread with too few pixels', async () => {
    const result = await identify(drawn(m8), { from: [100, 100], to: [1100, 100], mm: 400 });
    expect(result).toMatchObject({ outcome: 'refused', refusal: { reason: 'too-coarse' } });
  }, 60_000);
});

/** The card's top row of markers as a rule, on path-traced renders: 15 to 20 mm of axis height from 150 mm
 *  away, up to 19° of tilt. Harder than a screw beside a rule, and no photographs. */
test('renders: the top row of the card as the rule', async () => {
  const names = 'd01 d02 d05 d09 d11 d13 d15 d16 d17 d20 d21 d26'.split(' ');
  const all = [];
  for (const name of names) {
    const url = (kind: string) => new URL(`../../fixtures/photos/${name}.${kind}`, import.meta.url);
    const bytes = new Uint8Array(readFileSync(url('jpg')));
    const truth = JSON.parse(readFileSync(url('truth.json'), 'utf8'));
    const result = await identify(bytes, await topRow(bytes));
    if (result.outcome === 'refused') continue;
    const majorMm = (truth.crest_major_at_start_mm + truth.crest_major_at_end_mm) / 2;
    all.push({ name, ...errorsOf(result, truth.pitch_mm, majorMm) });
  }
  expect(all.length).toBeGreaterThanOrEqual(11);
  const covered = all.filter(
    ({ pitch, major }) => Math.abs(pitch) < 1.96 && Math.abs(major) < 1.96,
  );
  expect(covered.length / all.length).toBeGreaterThan(0.9);
  for (const { name, pitch, major } of all)
    expect(Math.max(Math.abs(pitch), Math.abs(major)), name).toBeLessThan(3);
  const close = all.filter(({ ratio }) => Math.abs(ratio) < 0.02);
  expect(close.length / all.length).toBeGreaterThan(0.8);
  for (const { name, uPitch, uMajor } of all)
    expect(Math.min(uPitch, uMajor), name).toBeGreaterThan(0.01);
}, 120_000);

async function topRow(bytes: Uint8Array): Promise<Ruler> {
  const photo = await readPhoto(never, bytes, nodeDecoders);
  if (!photo.ok) throw new Error(photo.reason);
  const { grey } = photo.value;
  const factor = Math.min(1, 1600 / Math.max(grey.width, grey.height));
  const image = vision.resize(
    grey,
    Math.round(grey.width * factor),
    Math.round(grey.height * factor),
  );
  const seen = vision
    .detectMarkers(image)
    .markers.filter(({ id }) => id <= 10)
    .sort((a, b) => a.id - b.id);
  const middle = (corners: readonly (readonly [number, number])[]) =>
    [0, 1].map(
      (k) => (corners.reduce((sum, corner) => sum + corner[k], 0) / 4 + 0.5) / factor - 0.5,
    ) as [number, number];
  const [first, last] = [seen[0], seen[seen.length - 1]];
  return {
    from: middle(first.corners),
    to: middle(last.corners),
    mm: markers[last.id].xMm - markers[first.id].xMm,
  };
}
