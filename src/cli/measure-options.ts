import { z } from 'zod';
import { defaultOptions, gendersAsked, type MeasureOptions } from '../journey/identification';
import { referenceKinds } from '../journey/identification-schema';
import { card, uOfBarsMm } from '../scale-card/geometry';
import { readingsFrom, UsageError } from './arguments';

const numbers = (count: number) =>
  z
    .string()
    .transform((text) =>
      text.split(',').map((part) => (part.trim() === '' ? Number.NaN : Number(part))),
    )
    .pipe(z.array(z.number().finite()).length(count));

const ruler = numbers(5)
  .transform(([x1, y1, x2, y2, mm]) => ({ from: [x1, y1] as const, to: [x2, y2] as const, mm }))
  .refine(({ from, to, mm }) => mm > 0 && Math.hypot(to[0] - from[0], to[1] - from[1]) >= 1);

const along = numbers(4)
  .transform(([x1, y1, x2, y2]) => [[x1, y1] as const, [x2, y2] as const] as const)
  .refine(([a, b]) => Math.hypot(b[0] - a[0], b[1] - a[1]) >= 1);

/** A print scaled by more than a tenth is a misreading. */
const isNear = (mm: number, nominalMm: number) => Math.abs(mm / nominalMm - 1) < 0.1;

const bars = z
  .string()
  .transform((text) => ({ text, lengths: text }))
  .pipe(z.object({ text: z.string(), lengths: numbers(2) }))
  .transform(({ text, lengths: [horizontalMm, verticalMm] }) => ({
    horizontalMm,
    verticalMm,
    // Only a caliper gives hundredths.
    uMm: /\.\d{2}/.test(text) ? uOfBarsMm.caliper : uOfBarsMm.rule,
  }))
  .refine(
    ({ horizontalMm, verticalMm }) =>
      isNear(horizontalMm, card.bars.horizontal.lengthMm) &&
      isNear(verticalMm, card.bars.vertical.lengthMm),
  );

export function measureOptions(given: {
  readonly reading?: readonly string[] | undefined;
  readonly reference?: string | undefined;
  readonly ruler?: string | undefined;
  readonly bars?: string | undefined;
  readonly gender?: string | undefined;
  readonly along?: string | undefined;
}): MeasureOptions {
  const wanted = optional(
    given.reference,
    z.enum(['auto', ...referenceKinds]),
    `--reference takes auto, ${referenceKinds.join(', ')}.`,
  );
  if ((wanted === 'rule') !== (given.ruler !== undefined) && wanted !== null && wanted !== 'auto')
    throw new UsageError(
      wanted === 'rule'
        ? 'A rule gives no scale by itself: mark two of its graduations with --ruler x1,y1,x2,y2,MM.'
        : `Give --ruler or --reference ${wanted}, not both.`,
    );
  const axis = optional(
    given.along,
    along,
    '--along takes x1,y1,x2,y2: two points of the axis, from the free end to the last full turn.',
  );
  const gender =
    optional(given.gender, z.enum(gendersAsked), `--gender takes ${gendersAsked.join(', ')}.`) ??
    'auto';
  if (axis && gender === 'female')
    throw new UsageError('--along shows the axis of a thread outside: not with --gender female.');
  return {
    ...defaultOptions,
    corrections: axis && { axis, side: 'both' },
    gender,
    readings: readingsFrom(given.reading ?? []),
    reference: { kind: wanted === null || wanted === 'rule' ? 'auto' : wanted, corners: null },
    ruler: optional(
      given.ruler,
      ruler,
      '--ruler takes x1,y1,x2,y2,MM: two points and their distance.',
    ),
    bars: optional(given.bars, bars, '--bars takes the two lengths in mm, like 149.6,99.8.'),
  };
}

function optional<T>(text: string | undefined, schema: z.ZodType<T>, help: string): T | null {
  if (text === undefined) return null;
  const parsed = schema.safeParse(text);
  if (!parsed.success) throw new UsageError(help);
  return parsed.data;
}
