import { expect, test } from 'vitest';
import { drawn, errorsOf, identifyByRuler } from './by-ruler';
import { m8, marksOf } from './drawn-screw';

test('what no pose can say is null, and the notes and the budget say why', async () => {
  const result = await identifyByRuler(drawn(m8), marksOf(m8));
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
  expect(Math.hypot(...budget.map((row) => row.majorDiameterMm))).toBeCloseTo(majorDiameterMm.u, 6);
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
  const result = await identifyByRuler(drawn(screw), marksOf(screw), {
    axis: [at(-14), at(8)],
    side: 'both',
  });
  if (result.outcome === 'refused') throw new Error(result.refusal.advice);
  const errors = errorsOf(result, screw.pitchMm, screw.majorMm);
  expect(Math.abs(errors.pitch)).toBeLessThan(1.96);
  expect(Math.abs(errors.major)).toBeLessThan(1.96);
}, 60_000);
