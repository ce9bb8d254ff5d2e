import { parseReading } from '../../journey/6-candidates/parse-reading';
import { parseLength } from '../../quantity/units';

export type LengthUnit = 'mm' | 'in';
export type PitchUnit = 'tpi' | 'mm';
/** Kinds that are typed as one value with a unit. */
export type ValueKind =
  | 'pitch-gauge'
  | 'caliper-od'
  | 'caliper-id'
  | 'rule-od'
  | 'tube-od'
  | 'nose-od'
  | 'flange-thickness'
  | 'bolt-spacing'
  | 'hex';

/** What was typed with its unit: the one it names, else the one chosen beside the field.
 *  A fraction is inches whatever is chosen: nobody writes fractions of a millimetre. */
function withUnit(typed: string, unit: LengthUnit | PitchUnit): string {
  const text = typed.trim().replace(/[”″]/g, '"');
  if (/(mm|in|inch|inches|tpi|")$/i.test(text)) return text;
  if (text.includes('/') && unit === 'mm') return `${text}in`;
  return `${text}${unit}`;
}

export function typedReading(kind: ValueKind, typed: string, unit: LengthUnit | PitchUnit) {
  return parseReading(`${kind}=${withUnit(typed, unit)}`);
}

/** So many turns in a length. */
export function typedTurns(turns: string, over: string, unit: LengthUnit) {
  return parseReading(`turns-over=${turns.trim()} in ${withUnit(over, unit)}`);
}

/** A cone's diameters and the length between them. */
export function typedCone(wide: string, narrow: string, over: string, unit: LengthUnit) {
  const [w, n, o] = [wide, narrow, over].map((typed) => withUnit(typed, unit));
  return parseReading(`cone-size=${w} to ${n} over ${o}`);
}

/** mm, or null when it cannot be read. */
export function typedLengthMm(typed: string, unit: LengthUnit): number | null {
  const length = parseLength(withUnit(typed, unit));
  return length.ok ? length.value : null;
}
