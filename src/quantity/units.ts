import { inches, type Mm, mm, pitchOfTpi } from './length';
import { ok, type Result, refuse } from './result';

/** A length as a bench writes it: `17.2mm`, `17,2 mm`, `0.677in`, `.677"`, `11/16in`, `1 5/16"`,
 *  `1-5/16 in`. A number without a unit is refused: 0.75 and 19 both occur. Decimal comma or point. */
export function parseLength(text: string): Result<Mm, 'not-a-length'> {
  const [number, unit] = split(text);
  const value = parseNumber(number);
  if (value === null || !(value > 0) || !/^(mm|in|"|″)$/.test(unit))
    return refuse('not-a-length', 'Write a length with its unit, like 17.2mm, 0.677in or 11/16in.');
  return ok(unit === 'mm' ? mm(value) : inches(value));
}

/** A pitch as a gauge leaf says it: `16tpi`, `16 tpi`, `11 1/2tpi`, `1.5mm`. */
export function parsePitch(text: string): Result<Mm, 'not-a-pitch'> {
  const [number, unit] = split(text);
  const value = parseNumber(number);
  if (value === null || !(value > 0) || !/^(mm|tpi)$/.test(unit))
    return refuse('not-a-pitch', 'Write the pitch with its unit, like 16tpi or 1.5mm.');
  return ok(unit === 'mm' ? mm(value) : pitchOfTpi(value));
}

function split(text: string): [number: string, unit: string] {
  const match = /^([\d\s.,/-]*?)\s*(mm|in|inch|inches|tpi|"|″)$/i.exec(text.trim());
  const unit = (match?.[2] ?? '').toLowerCase();
  return [match?.[1] ?? '', unit.startsWith('in') ? 'in' : unit];
}

function parseNumber(text: string): number | null {
  const decimal = /^(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;
  if (decimal.test(text)) return Number(text.replace(',', '.'));
  const fraction = /^(?:(\d+)(?:\s+|-))?(\d+)\/(\d+)$/.exec(text);
  if (!fraction) return null;
  const [whole, over, under] = fraction.slice(1).map((part) => Number(part ?? 0));
  return under! > 0 ? whole! + over! / under! : null;
}
