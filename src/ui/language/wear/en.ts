import type { Widen } from '../widen';

/** What is said of a used thread. The order and what each finding is worth: common practice. */
export const wearEn = {
  title: 'Is this one still good?',
  lead: 'For a used male end: what speaks against it, and which gauge would tell. Nothing here clears a part for pressure.',
  start: 'Check a used thread',
  toSheet: 'To the sheet',
  stop: 'Leave this question out',
  stopped: 'The answers on wear are gone.',
  femaleEnd:
    'The limits here are of male threads. A female end is judged by its seat and by GO and NOT GO plugs.',
  thread: 'Thread it should have',
  threadHint: 'such as 3/4-16 UNF',
  threadEmpty: 'Left empty: the one that the photo finds.',
  threadUnknown: 'No such thread in the tables. Write it like 3/4-16 UNF, M22x1.5 or G1/2.',
  threadMissing: 'First say which thread it should have.',
  found: (name: string) => `As found: ${name}`,
  candidate: (name: string, share: string) => `${name} · ${share}`,
  notFound: 'The thread is not settled. Choose the one that this part should have.',
  class: 'Class',
  beforehand: 'Before you rely on it',
  widthOf: (name: string, width: string, need: string) =>
    `Class ${name} is ${width} mm wide over the crests. Only a measurement surer than ± ${need} mm can find a crest within it. A caliper at three places is (± 0.04 mm); a photo often is not.`,
  photoDecidesNothing: (u: string, width: string, by: string) =>
    `This photo is good to ± ${u} mm, the class is ${width} mm wide: no part could be found within. It can only show crests that lie more than ${by} mm outside.`,
  photoCanDecide: (u: string, width: string) =>
    `This photo is good to ± ${u} mm, the class is ${width} mm wide: it can tell, except near a limit.`,
  wouldDecide:
    'A caliper at three places decides on the crest, GO and NOT GO rings on the thread, a look or a seat gauge on the seat.',
  taperNote:
    'A taper is judged by how far its gauge ring runs on, not by its crests. No photo decides that.',
  noClass: 'The limits of this thread are not in these tables. Its GO and NOT GO rings decide.',
  photoTitle: 'With a photo',
  photoText:
    'Shows the height of every crest. Best large, sharp and from above, on the scale card.',
  readingsTitle: 'With readings alone',
  readingsText:
    'Look, turn it by hand, gauge, and lay a caliper across the crests at three places.',
  goOn: 'Go on with readings',
  finding: 'Finding',
  levels: {
    replace: 'Replace it',
    gauge: 'Gauge it before use',
    none: 'No finding so far',
    nothing: 'Nothing looked at yet',
  },
  levelText: {
    replace: 'The gravest of the reasons below decides.',
    gauge: 'What was seen neither condemns the part nor lets it pass.',
    none: 'Nothing of what was looked at speaks against it. That does not pass the thread, nor clear it for pressure.',
    nothing: 'Answer from the top down: that is the order the trade looks.',
  },
  shortLevels: { replace: 'replace', gauge: 'gauge it', none: 'nothing against it' },
  notLooked: 'Not looked at',
  reasons: {
    'seal-scratched': 'Sealing face scratched: it will not seal again.',
    'turns-torn': 'First turns torn or rolled over: they would cut the mating thread.',
    'turns-burred': 'First turns burred: clear them, then gauge.',
    'first-turns-short':
      'First crests stand lower than the rest on the photo: look for torn or rolled turns.',
    rocks: 'Rocks on its mate: flanks are worn. Rings decide.',
    stiff: 'Runs stiffly: burr, dirt, a bent or another thread. Clean, then gauge.',
    'not-go-beyond': 'NOT GO ring runs on beyond two turns: the pitch diameter is too small.',
    'go-stops': 'GO ring stops: oversize, bent, damaged or another thread.',
    'plane-deep': 'Runs into its gauge ring clearly too deep: worn.',
    'plane-short':
      'Does not reach into its gauge ring as far as it should: oversize, damaged or another thread.',
    'plane-open': 'At the limit of its gauge ring: read it again, clean.',
    'plane-within': 'Gauge ring comes to rest within its limits.',
    'another-thread': 'The photo shows another pitch than this thread has.',
    'crests-short':
      'On the photo, single crests seem lower than the rest: look there for dents or torn places; a highlight can look the same.',
    uneven: 'Uneven: the diameter differs round the part or along it.',
    'crest-below':
      'Crests below their class. The mildest finding: rings decide on strength and fit.',
    'crest-below-rings-pass':
      'Crests below their class, but both rings pass: less of the crest bears.',
    'crest-above': 'Crests above their class: burr, plating or another thread.',
    'crest-open': 'Crests: not decided.',
    'crest-within': 'Crests within their class. This does not pass the thread.',
  },
  questions: {
    seal: {
      name: 'Sealing face',
      how: 'Cone, groove or flat face, in raking light. Run a fingernail across: a scratch that catches across the seal is the end of it.',
      answers: { unmarked: 'unmarked', scratched: 'scratched' },
    },
    firstTurns: {
      name: 'First two or three turns',
      how: 'Whole to their crests, without a rolled edge, a burr or a flat?',
      answers: { whole: 'whole', burred: 'burred', torn: 'torn or rolled over' },
    },
    byHand: {
      name: 'By hand',
      how: 'Clean, run a good mate down by hand over the whole length. Then try to rock it.',
      answers: { free: 'runs free, no rocking', stiff: 'stiff', rocks: 'rocks' },
    },
    goRing: {
      name: 'GO ring',
      how: 'Runs on by hand over the whole thread (ISO 1502, ASME B1.2)?',
      answers: { 'runs-on': 'runs on', stops: 'stops' },
    },
    notGoRing: {
      name: 'NOT GO ring',
      how: 'By hand, without force: it may take two turns at most (ISO 1502).',
      answers: { holds: 'holds within two turns', 'beyond-two': 'runs on beyond two turns' },
    },
  },
  notLookedAt: 'not looked at',
  caliper: 'Caliper across the crests',
  caliperHow: 'Jaws square to the axis, at three places. Largest of three at each.',
  places: { end: 'Free end', middle: 'Middle', last: 'Last full turn' },
  ring: 'Gauge ring of the taper',
  ringHow:
    'Screw the ring on hand-tight. Where does the small end stand, in turns from the ring’s face?',
  ringPast: 'turns past the face',
  ringShort: 'turns short of it',
  ringTurns: 'Turns',
  ringWrong: 'Type a number of turns between 0 and 100, such as 1.5.',
  clear: 'Clear',
  crests: 'Crests',
  verdicts: {
    within: 'Within class. This is said of the crest alone; it does not pass the thread.',
    below: (by: string) => `Below its class by ${by} mm.`,
    above: (by: string) => `Above its class by ${by} mm: burr, plating or another thread.`,
  },
  undecided: {
    'near-limit': 'Not decidable: too near a limit for this uncertainty.',
    'too-uncertain': 'Not decidable: the measurement is less sure than the class is wide.',
    tapered: 'A taper is judged by its gauge ring, not by its crests.',
    'no-class': 'The limits of this thread are not in these tables.',
    'another-pitch': 'Not judged: the photo shows another pitch than this thread has.',
    unresolved: 'The photo does not resolve the diameter.',
    'places-missing': 'What was measured lies within; the other places are still to be measured.',
  },
  by: { photo: 'photo', caliper: 'caliper' },
  rule: 'Decided at 95 % with a guard band of 1.65 u (ISO 14253-1). ± is the 95 % interval.',
  scale: (name: string, from: string, to: string) =>
    `Class ${name}: ${from} to ${to} mm over the crests`,
  pitchDiameterOf: (from: string, to: string) =>
    `Pitch diameter ${from} to ${to} mm: what the rings judge, not the photo.`,
  flank: (seen: string, nominal: string) => `Flank angle ${seen}; by the standard ${nominal}.`,
  flankOpen: 'Flank form: not resolved.',
  chart: 'Height of every crest',
  chartText:
    'Radius of each crest with its ±; thick: what it does not share with the others. Behind it the class.',
  chartFrom:
    'Turns are counted from the free end of the measured stretch. What the photo does not show is not judged.',
  chartName: (count: string, short: string) =>
    `Heights of ${count} crests; ${short} stand lower than the rest`,
  chartNone:
    'No single crests on this sheet: beside a rule, or in a picture from a messenger, they are not measured.',
  alongAxis: 'mm from the free end',
  sides: { left: 'left side', right: 'right side' },
  band: 'class',
  turn: 'Turn',
  side: 'Side',
  at: 'At',
  height: 'Height',
  short: 'Lower than the rest by',
  list: 'As a list',
  marks: 'Marked on the photo',
  markShort: 'lower than the rest: torn, rolled or dented',
  markBelow: 'below class: flattened',
  noMarks: 'No crest is lower than the rest or below its class.',
  bears: 'What still bears',
  overlap: (left: string, limit: string, share: string) =>
    `${left} mm of the crest a side still bear over the widest bore: ${share} of the ${limit} mm at the class limit.`,
  overlapNone: 'Nothing of the crest reaches over the widest bore.',
  overlapNote: 'Strength hangs on the pitch diameter, which the rings judge.',
  overlapName: (name: string) =>
    `Half section of ${name} in its mate, to scale: heavy line, flank that still bears; dashed, crest at the class limit`,
  overlapKeys: {
    internal: 'mate, widest bore',
    external: 'this part',
    limit: 'crest at the class limit',
  },
  round: 'Round the part',
  roundOne: 'One photo shows one diameter. Turn the part by a quarter and take another.',
  roundEven: (apart: string) => `The photos differ by ${apart} mm: no more than chance.`,
  roundUneven: (apart: string) =>
    `The photos differ by ${apart} mm: worn unevenly, or not the same part. The smaller diameter counts.`,
  addQuarter: 'Add a photo, turned by a quarter',
  takeQuarter: 'Take one, turned by a quarter',
  confirm:
    'Depressurise before you loosen anything. Gauge before you pressurise. O-rings are always new.',
  onSheet: (level: string) => `Still good? ${level}`,
};

export type WearWords = Widen<typeof wearEn>;
