import type {
  EarlierMeasurement,
  PrintCheckUsed,
  Sheet,
  Shot,
} from '../journey/8-sheet/sheet-schema';
import type { WearPart } from '../journey/wear/wear-schema';
import { foldMeasurement, unfoldMeasurement } from './coded-measurement';
import { foldOverlay, foldPoint, unfoldOverlay, unfoldPoints } from './coded-overlay';
import type { Coded } from './coded-schema';
import { digits, foldEstimate, given, unfoldEstimate } from './coded-values';

export interface PhotoInPicture {
  readonly widthPx: number;
  readonly heightPx: number;
  readonly pictureWidthPx: number;
}

/** How much goes along when the code gets too large, from everything to the numbers alone. Who opens it works candidates
 *  and question out again: of them only the beginning goes along, and no budget of uncertainty, before the drawing stays
 *  behind. */
export const details = [
  'all',
  'no-crests',
  'drawing-first',
  'no-drawing',
  'short-text',
  'numbers',
] as const;
export type Detail = (typeof details)[number];

export function foldSheet(sheet: Sheet, photo: PhotoInPicture, detail: Detail): Coded {
  const shot = sheet.shots[0];
  const brief = detail === 'short-text' || detail === 'numbers';
  const text = (value: string, short: number) => (brief ? value.slice(0, short) : value);
  const ample = detail === 'all' || detail === 'no-crests';
  const drawn = ample || detail === 'drawing-first';
  const candidates = ample ? 8 : 3;
  const parts = { budget: ample, taper: detail !== 'numbers' };
  const { decision, contradictions, end, hand, nearest, connections } = sheet.conclusion;
  const shownConnections = connections.slice(0, candidates);
  const { ask } = decision;
  return {
    v: 1,
    id: sheet.id,
    t: [seconds(sheet.createdAt), seconds(sheet.updatedAt)],
    a: sheet.appVersion.slice(0, 40),
    ...given('n', text(sheet.title, 60)),
    ...given('r', detail === 'numbers' ? '' : text(sheet.remarks, 120)),
    p: [photo.widthPx, photo.heightPx, photo.pictureWidthPx],
    ...given('f', shot?.photo.focal35Mm),
    ...given('i', shot?.photo.flashFired ? (1 as const) : undefined),
    ...given('s', shot && foldReference(shot, photo)),
    ...given('m', sheet.measurement && foldMeasurement(sheet.measurement, parts)),
    ...given(
      'o',
      detail !== 'numbers' && shot && shot.otherEnds.length > 0
        ? shot.otherEnds.map(({ measurement, axis }) => ({
            m: foldMeasurement(measurement, parts),
            a: axis.flatMap((at) => foldPoint(at, uprightWidth(shot))),
          }))
        : undefined,
    ),
    ...given('l', drawn && shot?.overlay ? foldOverlay(shot.overlay, detail === 'all') : undefined),
    g: sheet.readings.map((reading) => ({ ...reading, text: text(reading.text, 40) })),
    c: {
      t: sheet.conclusion.threads
        .slice(0, candidates)
        .map((c) =>
          c.system === null
            ? [digits(c.probability, 4)]
            : [
                c.system,
                c.designation,
                c.basicMajorMm,
                digits(c.pitchMm, 7),
                digits(c.probability, 4),
              ],
        ),
      c: shownConnections.map((c) => [c.family, c.size, digits(c.probability, 4)]),
      w: shownConnections.map((c) => [c.end, c.form, c.endTypes]),
      ...given('h', hand),
      ...given('n', nearest),
      // What each outcome would mean is worked out again from the numbers.
      d: {
        ...decision,
        ask: ask && { ...ask, why: ample ? ask.why : ask.why.slice(0, 120), fits: undefined },
      },
      ...given('e', end),
      ...given('x', contradictions.length > 0 ? [...contradictions] : undefined),
    },
    ...given(
      'k',
      sheet.counter && {
        ...sheet.counter,
        remarks: text(sheet.counter.remarks, 160),
        parts: brief ? sheet.counter.parts.slice(0, 4) : sheet.counter.parts,
        identified: sheet.counter.identified ?? undefined,
        by: sheet.counter.by || undefined,
      },
    ),
    ...given(
      'w',
      sheet.measuredAt && sheet.earlier.length > 0
        ? ([seconds(sheet.measuredAt), sheet.measuredBy === 'counter' ? 1 : 0] as [number, number])
        : undefined,
    ),
    ...given('y', sheet.earlier.length > 0 ? sheet.earlier.slice(-3).map(foldEarlier) : undefined),
    ...given('j', sheet.handedOver ? (1 as const) : undefined),
    ...given('z', sheet.wear && foldWear(sheet.wear)),
  };
}

/** The raw sheet that a code stands for, for the photo as it arrived (px). Not yet checked. */
export function unfoldSheet(coded: Coded, arrived: { widthPx: number; heightPx: number }): unknown {
  const measurement = coded.m ? unfoldMeasurement(coded.m) : null;
  const shot = coded.s &&
    measurement && {
      photo: {
        ...arrived,
        orientation: 1,
        focal35Mm: coded.f ?? null,
        flashFired: coded.i === 1,
        recompressed: true,
      },
      reference: {
        kind: coded.s.k,
        pxPerMm: (coded.s.q[0] * arrived.widthPx) / coded.p[0],
        axisHeightMm: coded.s.q[1],
        cameraHeightMm: coded.s.q[2],
        tiltDeg: coded.s.q[3],
        field: coded.s.d ?? null,
      },
      measurement,
      overlay: coded.l ? unfoldOverlay(coded.l, arrived) : null,
      profile: null,
      crests: [],
      otherEnds: (coded.o ?? []).map(({ m, a }) => ({
        measurement: unfoldMeasurement(m),
        axis: unfoldPoints(a, arrived.widthPx),
      })),
      notes: coded.s.o ?? [],
      bars: coded.s.b
        ? {
            horizontalMm: coded.s.b[0],
            verticalMm: coded.s.b[1],
            uMm: coded.s.b[2],
            name: coded.s.b[3],
          }
        : null,
      ruler: null,
      corrections: null,
    };
  return {
    format: 'crestwise-sheet',
    version: 1,
    id: coded.id,
    createdAt: isoTime(coded.t[0]),
    updatedAt: isoTime(coded.t[1]),
    appVersion: coded.a,
    title: coded.n ?? '',
    remarks: coded.r ?? '',
    shots: shot ? [shot] : [],
    measurement,
    measuredAt: measurement ? isoTime(coded.w?.[0] ?? coded.t[0]) : null,
    measuredBy: coded.w?.[1] === 1 ? 'counter' : 'sender',
    earlier: (coded.y ?? []).map(([at, by, pitch, diameter]) => ({
      at: isoTime(at),
      by: by === 1 ? 'counter' : 'sender',
      pitchMm: unfoldEstimate(pitch),
      majorDiameterMm: unfoldEstimate(diameter),
    })),
    readings: coded.g,
    conclusion: {
      threads: coded.c.t.map((c) =>
        c.length === 1
          ? { system: null, probability: c[0] }
          : {
              system: c[0],
              designation: c[1],
              basicMajorMm: c[2],
              pitchMm: c[3],
              probability: c[4],
            },
      ),
      connections: coded.c.c.map(([family, size, probability], i) => {
        const [end = null, form = null, endTypes = []] = coded.c.w?.[i] ?? [];
        return { family, size, probability, end, form, endTypes };
      }),
      decision: coded.c.d,
      contradictions: coded.c.x ?? [],
      end: coded.c.e ?? null,
      hand: coded.c.h ?? null,
      nearest: coded.c.n ?? null,
    },
    counter: coded.k ?? null,
    handedOver: coded.j === 1,
    wear: coded.z
      ? { thread: coded.z.t ?? null, class: coded.z.c ?? null, readings: coded.z.r }
      : null,
  };
}

function foldEarlier(one: EarlierMeasurement): NonNullable<Coded['y']>[number] {
  return [
    seconds(one.at),
    one.by === 'counter' ? 1 : 0,
    foldEstimate(one.pitchMm),
    foldEstimate(one.majorDiameterMm),
  ];
}

function foldReference(shot: Shot, photo: PhotoInPicture): NonNullable<Coded['s']> {
  const { kind, pxPerMm, axisHeightMm, cameraHeightMm, tiltDeg, field } = shot.reference;
  const { bars } = shot;
  return {
    k: kind,
    q: [
      digits((pxPerMm * photo.widthPx) / uprightWidth(shot), 5),
      axisHeightMm === null ? null : digits(axisHeightMm, 4),
      cameraHeightMm === null ? null : digits(cameraHeightMm, 4),
      tiltDeg === null ? null : digits(tiltDeg, 3),
    ],
    ...given('d', field),
    ...given('o', shot.notes.length > 0 ? [...shot.notes] : undefined),
    ...given('b', bars && foldBars(bars)),
  };
}

const foldBars = (bars: PrintCheckUsed): NonNullable<NonNullable<Coded['s']>['b']> => [
  bars.horizontalMm,
  bars.verticalMm,
  bars.uMm,
  bars.name,
];

function foldWear({ thread, class: className, readings }: WearPart): NonNullable<Coded['z']> {
  const { caliper, ...answers } = readings;
  const answered = (of: object) =>
    Object.fromEntries(Object.entries(of).filter(([, value]) => value !== null));
  const places = answered(caliper);
  return {
    ...given('t', thread),
    ...given('c', className),
    r: {
      ...answered(answers),
      ...(Object.keys(places).length > 0 && { caliper: places }),
    },
  };
}

const uprightWidth = ({ photo }: Shot): number =>
  photo.orientation >= 5 ? photo.heightPx : photo.widthPx;

const seconds = (iso: string) => Math.floor(Date.parse(iso) / 1000);

/** Null, which no schema takes, where there is no such time. */
function isoTime(second: number): string | null {
  const date = new Date(second * 1000);
  return Number.isNaN(date.getTime()) ? null : date.toISOString();
}
