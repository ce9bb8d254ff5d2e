import { describe, expect, it } from 'vitest';
import { projectPoint } from '../../fixtures/synthetic/camera';
import { drawScene } from '../../fixtures/synthetic/scene';
import { truthOf } from '../../fixtures/synthetic/truth';
import { score } from '../../src/cli/accuracy/score';
import { spread, summarise } from '../../src/cli/accuracy/summary';
import { truthSchema } from '../../src/cli/accuracy/truth';
import { wearText } from '../../src/cli/accuracy/wear-score';
import type { Identification, Measured } from '../../src/journey/identification';
import { card, markers } from '../../src/scale-card/geometry';
import { madeTruth } from './made-truth';

/** The scorer itself: it decides what counts as right, so it is checked on answers made by hand. */

const truth = madeTruth({ hex_af_mm: 24, family: 'ORFS', size: '-6' });

function answer(over: {
  pitch?: number;
  major?: number;
  thread?: string | null;
  state?: Measured['conclusion']['decision']['state'];
  connection?: { family: string; size: string } | null;
}): Measured {
  return {
    outcome: 'measured',
    reference: {
      kind: 'card',
      pxPerMm: 10,
      axisHeightMm: 12.1,
      cameraHeightMm: 290,
      tiltDeg: 1,
      field: 'light',
    },
    measurement: {
      pitchMm: { value: over.pitch ?? 1.5875, u: 0.003 },
      majorDiameterMm: { value: over.major ?? 17.3, u: 0.03 },
      correlation: 0.8,
      taper: { value: 0.001, u: 0.002 },
      flankAngleDeg: null,
      noseHalfAngleDeg: null,
      turns: 7,
      hand: 'right',
      starts: 1,
      middleFromEndMm: 5,
      budget: [{ source: 'focal-length', pitchMm: 0.0015875, majorDiameterMm: 0.0173 }],
    },
    overlay: {
      widthPx: 2000,
      heightPx: 1500,
      markers: [],
      reference: [],
      outline: [],
      axis: null,
      contactLines: [],
      crests: [],
    },
    profile: { axialMm: [], leftMm: [], rightMm: [], leftFitMm: [], rightFitMm: [] },
    crests: [],
    otherEnds: [],
    conclusion: {
      threads: [],
      connections: [],
      decision: {
        state: over.state ?? 'settled',
        thread: over.thread === undefined ? '11/16-16 UN' : over.thread,
        connection: over.connection ? { ...over.connection, ...openEnd } : null,
        ask: null,
        missing: null,
      },
      contradictions: [],
      end: 'male',
      hand: 'right',
      nearest: null,
    },
    notes: [],
    timingsMs: { total: 600 },
  };
}

const openEnd = { end: 'male', form: null, endTypes: ['fixed'] } as const;

const refused: Identification = {
  outcome: 'refused',
  refusal: { reason: 'no-thread', advice: 'Turn it.' },
  field: null,
  overlay: null,
  timingsMs: { total: 1 },
};

describe('score of one photo', () => {
  it('gives errors, z and the budget in the measurement’s own terms', () => {
    const n = score(truth, answer({ pitch: 1.5935, major: 17.27 })).numbers!;
    expect(n.pitchError).toBeCloseTo(0.006 / 1.5875, 9);
    expect(n.pitchZ).toBeCloseTo(2, 9);
    expect(n.majorZ).toBeCloseTo(-1, 9);
    expect(n.taperError).toBeCloseTo(0.001, 9);
    expect(n.taperZ).toBeCloseTo(0.5, 9);
    expect(n.axisHeightError).toBeCloseTo(0.1, 9);
    expect(n.budget['focal-length']![1]).toBeCloseTo(0.001, 4);
    const [p, d] = [0.003 / 1.5935, 0.03 / 17.27];
    expect(n.ratioU).toBeCloseTo(Math.sqrt(p * p + d * d - 1.6 * p * d), 9);
  });

  it('tells right, wrong, asked, unlisted and refused apart', () => {
    expect(score(truth, answer({})).verdict).toBe('right');
    expect(score(truth, answer({ thread: 'M18x1.5' })).verdict).toBe('wrong');
    // A name that no table knows is no right answer either.
    expect(score(truth, answer({ thread: 'nonsense' })).verdict).toBe('wrong');
    expect(score(truth, answer({ thread: null, state: 'needs-reading' })).verdict).toBe('asked');
    expect(score(truth, answer({ thread: null, state: 'unlisted' })).verdict).toBe('unlisted');
    expect(score(truth, refused)).toMatchObject({ verdict: 'refused', refusal: 'no-thread' });
  });

  // 11/16-16 UN 2A: 17.185 to 17.424 over the crests (ASME B1.1, 5.8.1, computed).
  it('tells what is said of the crests from what is true', () => {
    const worn = { ...truth, crest_major_at_start_mm: 16.9, crest_major_at_end_mm: 16.9 };
    expect(score(truth, answer({})).wear).toMatchObject({ said: 'within', truly: 'within' });
    expect(score(truth, answer({ major: 17 })).wear).toMatchObject({
      said: 'below',
      truly: 'within',
    });
    const missed = score(worn, answer({})).wear!;
    expect(missed).toMatchObject({ said: 'within', truly: 'below' });
    expect(missed.belowMm).toBeCloseTo(0.285, 2);
    expect(wearText([missed])).toContain('within and below by more than U: 1 ');
    expect(wearText([missed])).toContain('0 of 1 found below');
    expect(score({ ...truth, taper: 0.0625 }, answer({})).wear).toBeNull();
  });

  it('says whether the right thread leads, settled or not', () => {
    const open = answer({ thread: null, state: 'needs-reading' });
    const listed = { system: 'UN', basicMajorMm: 17.4625, pitchMm: 1.5875 } as const;
    const led = (designation: string) => {
      const threads = [{ ...listed, designation, probability: 0.6 }];
      return score(truth, { ...open, conclusion: { ...open.conclusion, threads } }).leader;
    };
    expect(led('11/16-16 UN')).toEqual({ thread: '11/16-16 UN', probability: 0.6, right: true });
    expect(led('M18x1.5')!.right).toBe(false);
    expect(score(truth, open).leader).toBeNull();
  });

  it('judges the connection only where both name one', () => {
    const right = { family: 'ISO 8434-3', size: '-6' };
    expect(score(truth, answer({ connection: right })).connectionRight).toBe(true);
    expect(score(truth, answer({ connection: { ...right, size: '-8' } })).connectionRight).toBe(
      false,
    );
    expect(score(truth, answer({})).connectionRight).toBeNull();
  });

  it('knows the scale by EXIF or by tilt', () => {
    expect(score(truth, answer({})).scaleKnown).toBe(true);
    expect(score({ ...truth, exif: 'none' }, answer({})).scaleKnown).toBe(false);
    expect(score({ ...truth, exif: 'none', tilt_deg: 4 }, answer({})).scaleKnown).toBe(true);
  });

  // Looking straight down from 200 mm over the world's origin, lens's centre 5 px to the right of the photo's.
  it('takes it there without markers too, where the truth states the camera', () => {
    const tapered = truthSchema.parse({
      ...truth,
      taper: 0.0625,
      crest_major_at_start_mm: 16,
      crest_major_at_end_mm: 16.75,
      f_px: 2000,
      camera: [
        [1, 0, 0, 0],
        [0, 1, 0, 0],
        [0, 0, 1, 200],
      ],
      cxcy: [5, 0],
    });
    // At a height of 12 mm, 2000 / 188 px per mm: the axis' first and eighth millimetre.
    const at = (mm: number) => [(2000 / 188) * mm + 999.5 + 5, 749.5] as const;
    const made = answer({ major: 16 + 0.0625 * 4.5 });
    const overlay = { ...made.overlay, axis: [at(1), at(8)] } as const;
    const n = score(tapered, { ...made, overlay: { ...overlay, axis: [...overlay.axis] } })
      .numbers!;
    expect(n.majorError).toBeCloseTo(0, 9);
  });

  it('takes a tapered thread’s true diameter at the middle of the zone that was measured', () => {
    const scene = Array.from({ length: 60 }, (_, i) => drawScene(9, i)).find(
      (s) => s.fitting.thread.taper > 0 && s.tiltRad > 0.2,
    )!;
    const flat = { ...scene, printScale: [1, 1] as const };
    const tapered = truthSchema.parse(truthOf(flat));
    const { camera } = scene;
    const along = (k: number) =>
      projectPoint(camera, [
        tapered.axis_p0[0] + k * (tapered.axis_p1[0] - tapered.axis_p0[0]),
        tapered.axis_p0[1] + k * (tapered.axis_p1[1] - tapered.axis_p0[1]),
        tapered.axis_p0[2],
      ]);
    const seen = markers.map(({ id, xMm, yMm }) => ({
      id,
      corners: [
        [-6, 6],
        [6, 6],
        [6, -6],
        [-6, -6],
      ].map(([dx, dy]) =>
        projectPoint(camera, [xMm - card.widthMm / 2 + dx!, card.heightMm / 2 - yMm + dy!, 0]),
      ),
    }));
    const start = tapered.crest_major_at_start_mm;
    const expected = start + 0.35 * (tapered.crest_major_at_end_mm - start);
    const made = answer({ major: expected });
    const n = score(tapered, {
      ...made,
      overlay: {
        ...made.overlay,
        widthPx: camera.widthPx,
        heightPx: camera.heightPx,
        markers: seen,
        axis: [along(0.1), along(0.6)],
      },
    }).numbers!;
    expect(Math.abs(n.majorError)).toBeLessThan(0.0004);
  });
});

describe('summary', () => {
  it('counts coverage over all, errors over those with known scale', () => {
    const scores = [
      score(truth, answer({ pitch: 1.5875 })),
      score(truth, answer({ pitch: 1.5875 + 0.003 * 1.9 })),
      score(truth, answer({ pitch: 1.5875 + 0.003 * 4.2, thread: 'M18x1.5' })),
      score({ ...truth, exif: 'none' }, answer({ pitch: 1.5875 - 0.003 * 1.99 })),
      score(truth, refused),
    ];
    const s = summarise(scores);
    expect(s.measured).toBe(4);
    expect(s.pitch.n).toBe(3);
    expect(s.pitch.median).toBeCloseTo((0.003 * 1.9) / 1.5875, 9);
    expect(s.coverage.pitch).toBe(0.5);
    expect(s.coverage.major).toBe(1);
    expect(s.beyondFourU).toEqual(['x01']);
    expect(s.verdicts).toEqual({ right: 3, wrong: 1, asked: 0, unlisted: 0, refused: 1 });
    expect(s.refusals).toEqual({ 'no-thread': 1 });
  });

  it('interpolates quantiles', () => {
    expect(spread([3, 1, 2, 4]).median).toBe(2.5);
    expect(spread([0, 10]).p95).toBeCloseTo(9.5, 9);
  });
});
