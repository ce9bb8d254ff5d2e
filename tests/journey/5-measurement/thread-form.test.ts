import { describe, expect, it } from 'vitest';
import type { OutlinePoint } from '../../../src/journey/4-thread-signal/outline-edges';
import { fitThread } from '../../../src/journey/5-measurement/fit-thread';
import { anyForm, formsNear } from '../../../src/journey/5-measurement/thread-form';
import { seededRandom } from '../../../src/quantity/random';

const likeliest = (pitchMm: number, majorMm: number, taper: number | null) =>
  formsNear(pitchMm, majorMm, taper === null ? null : { value: taper, u: 0.004 }).reduce((a, b) =>
    b.share > a.share ? b : a,
  );

describe('forms that pitch and diameter leave', () => {
  it.each([
    ['M18×1.5', 1.5, 17.85, 0, 'flat'],
    ['7/8-14 UNF', 25.4 / 14, 22.1, 0, 'flat'],
    ['G 3/8: only Whitworth pipe threads have 19 to the inch', 25.4 / 19, 16.6, 0, 'round'],
    ['R 1/4, place unknown', 25.4 / 19, 12.95, null, 'round'],
    ['1/4 NPT: only NPT has 18 to the inch and a taper', 25.4 / 18, 13.6, 1 / 16, 'sharp'],
  ] as const)('%s', (_, pitchMm, majorMm, taper, crests) => {
    const { form, share } = likeliest(pitchMm, majorMm, taper);
    expect(share).toBeGreaterThan(0.9);
    const kind = form.rounding > 0 ? 'round' : form.flat.value < 0.1 ? 'sharp' : 'flat';
    expect(kind).toBe(crests);
  });

  it('1/2-14 without a taper resolved: more than one, and both are said', () => {
    const near = formsNear(25.4 / 14, 21.1, null);
    expect(near.length).toBeGreaterThan(1);
    expect(near.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
  });

  it('nothing in the tables: any form', () => {
    expect(formsNear(1.63, 51, null)).toEqual([{ form: anyForm, share: 1 }]);
  });
});

const pitchMm = 25.4 / 14;
const radiusMm = 20.9 / 2;

/** Whitworth's section (ISO 228-1), drawn from its definition: circles of 0.137329 p at crest and root
 *  between flanks of 27.5°. */
function whitworth(turns: number): number {
  const r = 0.137329;
  const t = 27.5 * (Math.PI / 180);
  const height = 0.640327;
  const off = Math.abs(turns - Math.round(turns));
  const bend = r * Math.cos(t);
  if (off < bend) return -(r - Math.sqrt(r * r - off * off)) * pitchMm;
  if (off > 0.5 - bend) return -(height - r + Math.sqrt(r * r - (0.5 - off) ** 2)) * pitchMm;
  return -(r * (1 - Math.sin(t)) + (off - bend) / Math.tan(t)) * pitchMm;
}

/** Seen square on, a helix shows its section dilated by a parabola of this radius, in pitches. */
const dilation = pitchMm / radiusMm / (2 * Math.PI) ** 2;

function seen(turns: number): number {
  let highest = Number.NEGATIVE_INFINITY;
  for (let d = -0.02; d <= 0.02; d += 0.0005)
    highest = Math.max(highest, whitworth(turns + d) - (d * d * pitchMm) / (2 * dilation));
  return highest;
}

describe('a Whitworth thread fitted', () => {
  const random = seededRandom(4);
  const points = (['left', 'right'] as const).flatMap((side) =>
    Array.from({ length: 300 }, (_, i): OutlinePoint => {
      const s = -7.5 + i * 0.05;
      const r = radiusMm + seen(s / pitchMm + (side === 'left' ? 0 : 0.5));
      return {
        side,
        photo: [0, 0],
        s,
        r: r + 0.005 * random.normal(),
        slope: 0,
        uMm: 0.01,
      };
    }),
  );
  const fitted = (form = anyForm) =>
    fitThread(
      points,
      0,
      {
        pitchMm: 1.81,
        crestS: 0,
        left: [radiusMm - 0.5, 0],
        right: [radiusMm - 0.5, 0],
        amplitudeMm: 0.5,
        explained: 0.9,
      },
      { blurMm: 0.02, form, handed: 1, surfacePitch: null, mmPerPx: 0.15 },
    );

  it('by its own form, the diameter is right; by flat crests it is small', () => {
    const own = likeliest(pitchMm, 2 * radiusMm, 0).form;
    expect(own.rounding).toBeGreaterThan(0);
    expect(Math.abs(fitted(own).crestRadiusMm - radiusMm)).toBeLessThan(0.002 * pitchMm);
    expect(fitted().crestRadiusMm - radiusMm).toBeLessThan(-0.002 * pitchMm);
  });
});
