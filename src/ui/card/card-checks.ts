import { createSignal } from 'solid-js';
import * as z from 'zod/mini';
import type { MeasureOptions } from '../../journey/identification';
import { keepText, keptText } from '../widgets/kept-text';

/** One print of the card, by the measured lengths of its bars (nominal 150 and 100 mm). */
const cardCheck = z.object({
  name: z.string().check(z.maxLength(80)),
  horizontalMm: z.number().check(z.positive()),
  verticalMm: z.number().check(z.positive()),
  uMm: z.number().check(z.positive()),
});
export type CardCheck = z.infer<typeof cardCheck>;

const stored = z.object({
  checks: z.array(cardCheck).check(z.maxLength(100)),
  used: z.nullable(z.string()),
});
type Stored = z.infer<typeof stored>;

const key = 'crestwise.cards';

function read(): Stored {
  try {
    const parsed = stored.safeParse(JSON.parse(keptText(key) ?? 'null'));
    if (parsed.success) return parsed.data;
  } catch {
    // Spoilt: as if no card had been checked, which is always safe.
  }
  return { checks: [], used: null };
}

const [state, setState] = createSignal(read());

function write(next: Stored): void {
  setState(next);
  keepText(key, JSON.stringify(next));
}

addEventListener('storage', (event) => {
  if (event.key === key) setState(read());
});

export const cardChecks = (): readonly CardCheck[] => state().checks;
export const usedCheck = (): CardCheck | null =>
  state().checks.find((check) => check.name === state().used) ?? null;

export function keepCheck(check: CardCheck): void {
  const others = state().checks.filter((other) => other.name !== check.name);
  write({ checks: [...others, check], used: check.name });
}

export function useCheck(name: string | null): void {
  write({ ...state(), used: name });
}

export function removeCheck(name: string): void {
  const { checks, used } = state();
  write({ checks: checks.filter((c) => c.name !== name), used: used === name ? null : used });
}

export function barsInUse(): MeasureOptions['bars'] {
  const check = usedCheck();
  return (
    check && { horizontalMm: check.horizontalMm, verticalMm: check.verticalMm, uMm: check.uMm }
  );
}
