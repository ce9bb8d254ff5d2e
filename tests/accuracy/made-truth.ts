import { type Truth, truthSchema } from '../../src/cli/accuracy/truth';

/** The truth of a photo that was never taken, for tests of whoever reads truths. */
export const madeTruth = (own: object = {}): Truth =>
  truthSchema.parse({
    name: 'x01',
    designation: '11/16-16',
    system: 'UN',
    basic_major_mm: 17.4625,
    pitch_mm: 1.5875,
    taper: 0,
    crest_major_at_start_mm: 17.3,
    crest_major_at_end_mm: 17.3,
    axis_p0: [0, 0, 12],
    axis_p1: [12, 0, 12],
    f_px: 3000,
    k1: 0,
    distance_mm: 290,
    tilt_deg: 1,
    exif: 'f35',
    field: 'light',
    finish: 'zinc',
    ...own,
  });
