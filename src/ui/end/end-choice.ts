import { createSignal } from 'solid-js';
import type { ThreadMeasurement } from '../../journey/5-measurement/thread-measurement';
import { keepText, keptText } from '../widgets/kept-text';

export const ends = ['male', 'female'] as const;
export type End = (typeof ends)[number];

const key = 'crestwise.end';

const [end, setEnd] = createSignal(ends.find((one) => one === keptText(key)) ?? 'male');

/** Which end the next photo shows; belongs to the person, not to a sheet. */
export const endChoice = end;

export function chooseEnd(next: End): void {
  setEnd(next);
  keepText(key, next);
}

/** The end that was measured; sheets older than female ends do not say. */
export const endOf = (measured: Pick<ThreadMeasurement, 'end'> | null | undefined): End =>
  measured?.end ?? 'male';
