import type { PeriodStart } from '../../../src/journey/5-measurement/start-period';
import { anyForm } from '../../../src/journey/5-measurement/thread-form';

/** A thread drawn as points of its outline, seen from afar: what its fits begin with. */
export const drawnThread = { pitchMm: 1.5, radiusMm: 8, flat: 0.14 };

export const startAt = (pitchMm: number, crestS: number): PeriodStart => ({
  pitchMm,
  crestS,
  left: [drawnThread.radiusMm - 0.4, 0],
  right: [drawnThread.radiusMm - 0.4, 0],
  amplitudeMm: 0.4,
  explained: 0.9,
});

export const drawnPriors = {
  blurMm: 0.02,
  form: anyForm,
  handed: 1 as const,
  surfacePitch: null,
  mmPerPx: 0.1,
};
