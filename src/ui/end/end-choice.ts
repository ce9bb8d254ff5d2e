import { createSignal } from 'solid-js';
import type { ThreadMeasurement } from '../../journey/5-measurement/thread-measurement';
import { keepText, keptText } from '../widgets/kept-text';

export type End = 'male' | 'female';

/** What a person says of the next photo: one of both ends, or nothing, and the likelier of both is measured. */
export const endChoices = ['auto', 'male', 'female'] as const;
export type EndChoice = (typeof endChoices)[number];

const key = 'crestwise.end';

const [end, setEnd] = createSignal(endChoices.find((one) => one === keptText(key)) ?? 'auto');

/** Which end the next photo shows; belongs to the person, not to a sheet. */
export const endChoice = end;

/** How the camera is guided: down a bore only for who says that there is one. */
export const guidedEnd = (): End => (end() === 'female' ? 'female' : 'male');

export function chooseEnd(next: EndChoice): void {
  setEnd(next);
  keepText(key, next);
}

/** The end that was measured; sheets older than female ends do not say. */
export const endOf = (measured: Pick<ThreadMeasurement, 'end'> | null | undefined): End =>
  measured?.end ?? 'male';
