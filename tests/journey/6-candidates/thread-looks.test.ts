import { describe, expect, test } from 'vitest';
import type { ThreadShows } from '../../../src/journey/5-measurement/thread-measurement';
import type { MeasuredThread } from '../../../src/journey/6-candidates/photo-likelihood';
import { weigh } from '../../../src/journey/6-candidates/weigh';

/** 14 to the inch on 26.3 mm, invented: R3/4 and G3/4 (26.441 mm, ISO 7-1 and ISO 228-1) and 3/4 NPT (26.67 mm pipe,
 *  ASME B1.20.1) share them as far as a photo tells. */
const photo: MeasuredThread = {
  pitchMm: { value: 25.4 / 14, u: 0.006 },
  majorDiameterMm: { value: 26.3, u: 0.25 },
  correlation: 0.2,
  taper: null,
  flankAngleDeg: null,
  noseHalfAngleDeg: null,
  middleFromEndMm: 8,
  turns: 8,
};

const shareOf = (measured: MeasuredThread, designation: string) => {
  const { threads, total } = weigh({ photo: measured, readings: [] }, {});
  const found = threads.find(({ hypothesis }) => hypothesis.thread.designation === designation);
  return (found?.weight ?? 0) / total;
};

const shows = (
  profile: keyof ThreadShows['profile'],
  taper: keyof ThreadShows['taper'],
  sure = 0.9,
): ThreadShows => {
  const rest = (1 - sure) / 2;
  return {
    profile: { '60': rest, '55': rest, npt: rest, [profile]: sure },
    taper: { straight: 1 - sure, tapered: 1 - sure, [taper]: sure },
  };
};

describe('what the thread looks like', () => {
  test('tells a pipe thread of one standard from those of the others', () => {
    const led = (threadShows: ThreadShows) => {
      const each = ['R3/4', 'G3/4', '3/4 NPT'].map((d) => shareOf({ ...photo, threadShows }, d));
      return ['R3/4', 'G3/4', '3/4 NPT'][each.indexOf(Math.max(...each))];
    };
    expect(led(shows('55', 'tapered'))).toBe('R3/4');
    expect(led(shows('npt', 'tapered'))).toBe('3/4 NPT');
    expect(led(shows('55', 'straight'))).toBe('G3/4');
  });

  test('shares that say nothing change nothing', () => {
    const even: ThreadShows = {
      profile: { '60': 1 / 3, '55': 1 / 3, npt: 1 / 3 },
      taper: { straight: 0.5, tapered: 0.5 },
    };
    for (const d of ['R3/4', 'G3/4', '3/4 NPT'])
      expect(shareOf({ ...photo, threadShows: even }, d)).toBeCloseTo(shareOf(photo, d), 9);
  });
});
