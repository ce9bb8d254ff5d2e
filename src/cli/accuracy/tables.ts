import type { Score } from './score';
import { byStratum, type Coverage, type Spread, summarise } from './summary';

const percent = (value: number, digits = 2) =>
  Number.isFinite(value) ? `${(100 * value).toFixed(digits)} %` : '–';
const signed = (value: number | null, digits: number, factor = 1) =>
  value === null || !Number.isFinite(value)
    ? '–'
    : `${value < 0 ? '−' : '+'}${Math.abs(factor * value).toFixed(digits)}`;

/** One line a photo. Errors of pitch, diameter and ratio in %, taper in mm per mm. */
export function photoTable(scores: readonly Score[]): string {
  const rows = scores.map((s) => {
    const n = s.numbers;
    const result = s.outcome === 'refused' ? `refused: ${s.refusal}` : s.verdict;
    const connection =
      s.connectionRight === null
        ? ''
        : s.connectionRight
          ? ', connection right'
          : ', connection WRONG';
    return [
      s.name + (s.scaleKnown ? '' : '*'),
      s.designation,
      ...(n
        ? [
            signed(n.pitchError, 3, 100),
            signed(n.majorError, 3, 100),
            signed(n.ratioError, 3, 100),
            signed(n.taperError, 4),
            signed(n.pitchZ, 1),
            signed(n.majorZ, 1),
            signed(n.ratioZ, 1),
            (100 * n.pitchU).toFixed(2),
            (100 * n.majorU).toFixed(2),
            signed(n.axisHeightError, 2),
          ]
        : Array.from({ length: 10 }, () => '')),
      `${Math.round(s.totalMs)}`,
      `${s.verdict === 'wrong' ? `WRONG (${s.concluded})` : result}${connection}`,
    ];
  });
  const head = 'photo,thread,p %,D %,D/p %,taper,z p,z D,z D/p,u p %,u D %,Δh mm,ms,decision';
  return `${aligned([head.split(','), ...rows])}\n* no EXIF and tilt under 4°: not in the error rows`;
}

export function summaryTable(scores: readonly Score[]): string {
  const s = summarise(scores);
  const row = (name: string, { n, median, p95 }: Spread, target: string) => [
    name,
    `${n}`,
    percent(median, 3),
    percent(p95, 3),
    target,
  ];
  const taper = [s.taper.median, s.taper.p95].map((v) => (Number.isFinite(v) ? v.toFixed(4) : '–'));
  const refusals = Object.entries(s.refusals).map(([reason, n]) => `${reason} ${n}`);
  const { right, wrong, asked, unlisted } = s.verdicts;
  return [
    `measured ${s.measured} of ${s.photos} (${percent(s.measured / s.photos, 1)}; target ≥ 88 %)` +
      (refusals.length > 0 ? `; refused: ${refusals.join(', ')}` : ''),
    aligned([
      ['', 'n', 'median', '95 %', 'target'],
      row('pitch error', s.pitch, '≤ 0.15 %, ≤ 0.5 %'),
      row('diameter error', s.major, '≤ 0.2 %, ≤ 0.7 %'),
      row('ratio error', s.ratio, '≤ 0.12 %'),
      row('stated u of pitch', s.pitchU, '≤ 0.3 %'),
      row('stated u of diameter', s.majorU, ''),
      ['taper error, mm/mm', `${s.taper.n}`, ...taper, '≤ 0.008 in 95 %'],
    ]),
    `of all photos: pitch within 0.6 % on ${percent(s.pitchWithin / s.photos, 0)}, diameter within 1 % on ${percent(s.majorWithin / s.photos, 0)}; pitch off by a factor on ${s.byFactor}`,
    `straight and 1:16 confused: ${s.taperConfused} (target 0)`,
    `95 % intervals cover: ${coverageText(s.coverage)}`,
    `beyond 4 u: ${s.beyondFourU.length === 0 ? 'none' : s.beyondFourU.join(', ')} (target none)`,
    `thread settled right ${right}, settled wrong ${wrong}, asked ${asked}, unlisted ${unlisted}, refused ${s.verdicts.refused}; right thread leads on ${percent(s.led / s.photos, 0)}`,
    `connection settled right ${s.connectionsRight}, wrong ${s.connectionsWrong}`,
  ].join('\n');
}

export function strataTable(scores: readonly Score[], only: string | null): string {
  return aligned([
    [
      'stratum',
      'photos',
      'measured',
      'p median',
      'D median',
      'covers p',
      'D',
      'D/p',
      'rms z p',
      'D',
      'wrong',
    ],
    ...byStratum(scores, only).map((r) => [
      r.stratum,
      `${r.photos}`,
      percent(r.measured / r.photos, 0),
      percent(r.pitchMedian, 3),
      percent(r.majorMedian, 3),
      percent(r.coverage.pitch, 0),
      percent(r.coverage.major, 0),
      percent(r.coverage.ratio, 0),
      r.rmsZ.pitch.toFixed(2),
      r.rmsZ.major.toFixed(2),
      `${r.wrong}`,
    ]),
  ]);
}

/** Relative standard uncertainties by source, %: pitch / diameter. */
export function budgetTable(scores: readonly Score[]): string {
  const measured = scores.filter((s) => s.numbers !== null);
  const sources = [...new Set(measured.flatMap((s) => Object.keys(s.numbers!.budget)))];
  const cell = (pair: readonly [number, number] | undefined) =>
    pair ? `${(100 * pair[0]).toFixed(3)} / ${(100 * pair[1]).toFixed(3)}` : '';
  return aligned([
    ['photo', ...sources],
    ...measured.map((s) => [s.name, ...sources.map((name) => cell(s.numbers!.budget[name]))]),
  ]);
}

/** What changed against an earlier run of the same photos. */
export function comparisonTable(before: readonly Score[], after: readonly Score[]): string {
  const old = new Map(before.map((s) => [s.name, s]));
  const rows = after.flatMap((s) => {
    const was = old.get(s.name);
    if (!was) return [];
    const arrow = (get: (score: Score) => string) =>
      get(was) === get(s) ? get(s) : `${get(was)} → ${get(s)}`;
    return [
      [
        s.name,
        arrow((x) => signed(x.numbers?.pitchError ?? null, 3, 100)),
        arrow((x) => signed(x.numbers?.majorError ?? null, 3, 100)),
        arrow((x) => signed(x.numbers?.pitchZ ?? null, 1)),
        arrow((x) => signed(x.numbers?.majorZ ?? null, 1)),
        arrow((x) => x.refusal ?? x.verdict),
      ],
    ];
  });
  return aligned([['photo', 'p %', 'D %', 'z p', 'z D', 'decision'], ...rows]);
}

function coverageText({ n, pitch, major, ratio }: Coverage): string {
  return `pitch ${percent(pitch, 1)}, diameter ${percent(major, 1)}, ratio ${percent(ratio, 1)} of ${n}`;
}

function aligned(rows: readonly (readonly string[])[]): string {
  const widths = rows[0]!.map((_, c) => Math.max(...rows.map((row) => [...row[c]!].length)));
  return rows
    .map((row) =>
      row
        .map((cell, c) => {
          const pad = ' '.repeat(widths[c]! - [...cell].length);
          return c === 0 || c === row.length - 1 ? cell + pad : pad + cell;
        })
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
