import type { Identification, Measured } from '../../journey/identification';
import { findThread } from '../../standards/threads';
import { type EndScore, endMeasured, endScores } from './end-score';
import type { Truth } from './truth';
import { type WearScore, wearScore } from './wear-score';
import { trueMajorMm } from './zone-middle';

/** Of what was concluded about the thread: an open question counts as asked, whatever is asked. */
export type Verdict = 'right' | 'wrong' | 'asked' | 'unlisted' | 'refused';

/** One photo against its truth. Errors are measured − true, relative where the name says so. */
export interface Score {
  readonly name: string;
  readonly designation: string;
  readonly taperTrue: number;
  /** EXIF present, or tilted by 4° and more: error rows count these only. */
  readonly scaleKnown: boolean;
  readonly strata: Readonly<Record<string, string>>;
  readonly outcome: 'measured' | 'refused';
  readonly refusal: string | null;
  readonly verdict: Verdict;
  readonly concluded: string | null;
  /** The likeliest candidate, whether settled or not, and whether it is the right one. */
  readonly leader: {
    readonly thread: string;
    readonly probability: number;
    readonly right: boolean;
  } | null;
  /** What is asked for. */
  readonly asked: string | null;
  /** Null unless a connection was settled and the truth names one. */
  readonly connectionRight: boolean | null;
  readonly numbers: Numbers | null;
  /** None where the truth does not say what the ends look like. */
  readonly ends: readonly EndScore[];
  readonly wear: WearScore | null;
  readonly notes: readonly string[];
  readonly totalMs: number;
}

export interface Numbers {
  readonly pitchError: number;
  readonly majorError: number;
  readonly ratioError: number;
  readonly taperError: number | null;
  readonly pitchU: number;
  readonly majorU: number;
  readonly ratioU: number;
  readonly pitchZ: number;
  readonly majorZ: number;
  readonly ratioZ: number;
  readonly taperZ: number | null;
  readonly axisHeightError: number | null;
  /** Standard uncertainties by source, relative: [pitch, major diameter]. */
  readonly budget: Readonly<Record<string, readonly [number, number]>>;
}

export function score(truth: Truth, answer: Identification): Score {
  const base = {
    name: truth.name,
    designation: truth.designation,
    taperTrue: truth.taper,
    scaleKnown: truth.exif === 'f35' || truth.tilt_deg >= 4,
    strata: strataOf(truth),
    totalMs: answer.timingsMs.total ?? 0,
  };
  if (answer.outcome === 'refused')
    return {
      ...base,
      outcome: 'refused',
      refusal: answer.refusal.reason,
      verdict: 'refused',
      concluded: null,
      leader: null,
      asked: null,
      connectionRight: null,
      numbers: null,
      ends: endScores(truth, null),
      wear: null,
      notes: [],
    };
  const end = endMeasured(truth, answer);
  const major = trueMajorMm(end, answer);
  return {
    ...base,
    designation: end.designation,
    taperTrue: end.taper,
    outcome: 'measured',
    refusal: null,
    verdict: verdictOf(end, answer),
    concluded: answer.conclusion.decision.thread,
    leader: leaderOf(end, answer),
    asked: answer.conclusion.decision.ask?.reading ?? null,
    connectionRight: connectionRight(end, answer),
    ends: endScores(truth, answer),
    numbers: numbersOf(end, answer, major),
    wear: wearScore(end, answer, major),
    notes: answer.notes,
  };
}

function numbersOf(truth: Truth, answer: Measured, major: number): Numbers {
  const { pitchMm, majorDiameterMm, correlation, taper, budget } = answer.measurement;
  const pitchError = pitchMm.value / truth.pitch_mm - 1;
  const majorError = majorDiameterMm.value / major - 1;
  const ratioError = (1 + majorError) / (1 + pitchError) - 1;
  const pitchU = pitchMm.u / pitchMm.value;
  const majorU = majorDiameterMm.u / majorDiameterMm.value;
  const ratioU = Math.sqrt(
    Math.max(0, pitchU ** 2 + majorU ** 2 - 2 * correlation * pitchU * majorU),
  );
  const height = answer.reference.axisHeightMm;
  return {
    pitchError,
    majorError,
    ratioError,
    taperError: taper && taper.value - truth.taper,
    pitchU,
    majorU,
    ratioU,
    pitchZ: (pitchMm.value - truth.pitch_mm) / pitchMm.u,
    majorZ: (majorDiameterMm.value - major) / majorDiameterMm.u,
    ratioZ: ratioError / ratioU,
    taperZ: taper && (taper.value - truth.taper) / taper.u,
    axisHeightError: height === null ? null : height - truth.axis_p0[2],
    budget: Object.fromEntries(
      budget.map((row) => [
        row.source,
        [row.pitchMm / pitchMm.value, row.majorDiameterMm / majorDiameterMm.value],
      ]),
    ),
  };
}

function verdictOf(truth: Truth, { conclusion }: Measured): Verdict {
  const { thread, state } = conclusion.decision;
  if (state === 'unlisted') return 'unlisted';
  if (thread === null) return 'asked';
  return isTrue(truth, thread) ? 'right' : 'wrong';
}

function leaderOf(truth: Truth, { conclusion }: Measured): Score['leader'] {
  const [first] = conclusion.threads;
  if (!first || first.system === null) return null;
  const { designation, probability } = first;
  return { thread: designation, probability, right: isTrue(truth, designation) };
}

function isTrue(truth: Truth, designation: string): boolean {
  const row = findThread(designation);
  return (
    row !== null &&
    row.system === truth.system &&
    Math.abs(row.pitchMm - truth.pitch_mm) < 1e-3 &&
    Math.abs(row.basicMajorMm - truth.basic_major_mm) < 0.05
  );
}

/** The truth files' words for families, as the tables name them. */
const families: Readonly<Record<string, string>> = {
  ORFS: 'ISO 8434-3',
  '37 flare': 'ISO 8434-2',
  '45 flare': 'SAE J512',
  'JIS 30 cone': 'JIS B 8363',
  'O-ring stud': 'ISO 11926',
  '24 cone': 'ISO 8434-1',
  'ISO 6149 stud': 'ISO 6149',
  'ISO 9974 stud': 'ISO 9974',
  BSPP: 'ISO 1179',
  BSPT: 'ISO 7-1',
  NPT: 'ASME B1.20.1',
};

function connectionRight(truth: Truth, { conclusion }: Measured): boolean | null {
  const { connection } = conclusion.decision;
  if (!connection || truth.family === undefined) return null;
  const expected = families[truth.family] ?? truth.family;
  return connection.family === expected && (!truth.size || connection.size === truth.size);
}

function strataOf(truth: Truth): Record<string, string> {
  const pxPerPitch = (truth.f_px / truth.distance_mm) * truth.pitch_mm;
  const height = truth.camera_height_mm ?? truth.distance_mm * Math.cos(radians(truth.tilt_deg));
  const bright = ['zinc', 'yellow', 'stainless', 'brass'].includes(truth.finish);
  return {
    tilt: band(truth.tilt_deg, [4, 15], '°'),
    cameraHeight: band(height, [230, 320], ' mm'),
    pxPerPitch: band(pxPerPitch, [11, 15], ''),
    field: truth.field,
    finish: bright ? 'bright' : 'dull',
    ...(truth.light_kind && { light: truth.light_kind }),
    ...(truth.iso && { noise: band(truth.iso, [0.6, 1.3], '') }),
    exif: truth.exif,
    form: truth.taper > 0 ? 'tapered' : 'parallel',
    print: truth.bars ? 'bars measured' : 'unchecked',
  };
}

function band(value: number, limits: readonly [number, number], unit: string): string {
  const [low, high] = limits;
  if (value < low) return `< ${low}${unit}`;
  return value < high ? `${low}–${high}${unit}` : `≥ ${high}${unit}`;
}

const radians = (deg: number) => (deg * Math.PI) / 180;
