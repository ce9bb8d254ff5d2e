import type { CrestHeight } from './crest-heights';
import type { Verdict } from './verdict';
import { type WearQuestion, wearQuestions } from './wear-answers';
import type { WearReadings } from './wear-readings';

/** `none` is no clearance: nothing of what was looked at speaks against the part. Null: nothing looked at. */
export type WearLevel = 'replace' | 'gauge' | 'none';

export type WearReason =
  | 'seal-scratched'
  | 'turns-torn'
  | 'turns-burred'
  | 'first-turns-short'
  | 'rocks'
  | 'stiff'
  | 'not-go-beyond'
  | 'go-stops'
  | 'plane-deep'
  | 'plane-short'
  | 'plane-open'
  | 'plane-within'
  | 'another-thread'
  | 'crests-short'
  | 'uneven'
  | 'crest-below'
  | 'crest-below-rings-pass'
  | 'crest-above'
  | 'crest-open'
  | 'crest-within';

/** What each is worth, in the trade's order (common practice): what seals, what starts the thread, how it runs,
 *  what the rings say of the pitch diameter, the crest last. */
const worth: Readonly<Record<WearReason, WearLevel>> = {
  'seal-scratched': 'replace',
  'turns-torn': 'replace',
  'turns-burred': 'gauge',
  'first-turns-short': 'gauge',
  rocks: 'gauge',
  stiff: 'gauge',
  'not-go-beyond': 'replace',
  'go-stops': 'replace',
  'plane-deep': 'replace',
  'plane-short': 'gauge',
  'plane-open': 'gauge',
  'plane-within': 'none',
  'another-thread': 'gauge',
  'crests-short': 'gauge',
  uneven: 'gauge',
  'crest-below': 'gauge',
  'crest-below-rings-pass': 'gauge',
  'crest-above': 'gauge',
  'crest-open': 'gauge',
  'crest-within': 'none',
};
const order = Object.keys(worth) as WearReason[];

export interface WearFinding {
  readonly level: WearLevel | null;
  /** In the trade's order, whatever their level. */
  readonly reasons: readonly { readonly level: WearLevel; readonly reason: WearReason }[];
  /** Questions without an answer: a finding does not speak of them. */
  readonly open: readonly WearQuestion[];
}

export interface WearEvidence {
  readonly readings: WearReadings;
  /** Of a taper, by its ring. */
  readonly plane: Verdict | null;
  /** Of a straight thread, by caliper or photo; null when neither was there. */
  readonly crest: Verdict | null;
  readonly uneven: boolean;
  readonly shortCrests: readonly CrestHeight[];
  readonly tapered: boolean;
}

/** The first two turns start the thread; what is short behind them is a dent. */
const startingTurns = 2;

/** One finding out of everything that was seen: the gravest reason counts. */
export function foldFinding(evidence: WearEvidence): WearFinding {
  const { readings, tapered } = evidence;
  const found = new Set(reasonsOf(evidence));
  const reasons = order
    .filter((reason) => found.has(reason))
    .map((reason) => ({ reason, level: worth[reason] }));
  // GO and NOT GO rings are for straight threads.
  const asked = wearQuestions.filter((q) => !(tapered && (q === 'goRing' || q === 'notGoRing')));
  const open = asked.filter((question) => readings[question] === null);
  const looked = open.length < asked.length || reasons.length > 0;
  const gravest = (['replace', 'gauge'] as const).find((level) =>
    reasons.some((one) => one.level === level),
  );
  return { level: gravest ?? (looked ? 'none' : null), reasons, open };
}

function reasonsOf(evidence: WearEvidence): WearReason[] {
  const { readings, plane, crest, uneven, shortCrests } = evidence;
  const ringsPass = readings.goRing === 'runs-on' && readings.notGoRing === 'holds';
  const when = (so: boolean, reason: WearReason) => (so ? [reason] : []);
  return [
    ...when(readings.seal === 'scratched', 'seal-scratched'),
    ...when(readings.firstTurns === 'torn', 'turns-torn'),
    ...when(readings.firstTurns === 'burred', 'turns-burred'),
    // A person who looked closely knows better than the photo.
    ...when(
      readings.firstTurns === null && shortCrests.some(({ turn }) => turn <= startingTurns),
      'first-turns-short',
    ),
    // What is low may be a highlight; where both rings pass, a dent does no harm.
    ...when(!ringsPass && shortCrests.some(({ turn }) => turn > startingTurns), 'crests-short'),
    ...when(readings.byHand === 'rocks', 'rocks'),
    ...when(readings.byHand === 'stiff', 'stiff'),
    ...when(readings.notGoRing === 'beyond-two', 'not-go-beyond'),
    ...when(readings.goRing === 'stops', 'go-stops'),
    ...when(uneven, 'uneven'),
    ...(plane ? [planeReason(plane)] : []),
    ...(crest ? crestReason(crest, ringsPass) : []),
  ];
}

function planeReason({ state }: Verdict): WearReason {
  const reasons = {
    below: 'plane-deep',
    above: 'plane-short',
    within: 'plane-within',
    'not-decidable': 'plane-open',
  } as const;
  return reasons[state];
}

function crestReason(crest: Verdict, ringsPass: boolean): WearReason[] {
  switch (crest.state) {
    case 'within':
      return ['crest-within'];
    case 'above':
      return ['crest-above'];
    case 'below':
      return [ringsPass ? 'crest-below-rings-pass' : 'crest-below'];
    case 'not-decidable':
      if (crest.why === 'another-pitch') return ['another-thread'];
      // Rings have said what the crest was to stand in for.
      return ringsPass ? [] : ['crest-open'];
  }
}
