import { createSignal } from 'solid-js';
import type { ThreadMeasurement } from '../../journey/5-measurement/thread-measurement';

export const ends = ['male', 'female'] as const;
export type End = (typeof ends)[number];

const key = 'crestwise.end';

function read(): End {
  try {
    return ends.find((end) => end === localStorage.getItem(key)) ?? 'male';
  } catch {
    return 'male';
  }
}

const [end, setEnd] = createSignal(read());

/** Which end the next photo shows; belongs to the person, not to a sheet. */
export const endChoice = end;

export function chooseEnd(next: End): void {
  setEnd(next);
  try {
    localStorage.setItem(key, next);
  } catch {
    // lasts until reload then
  }
}

/** The end that was measured; sheets older than female ends do not say. */
export const endOf = (measured: Pick<ThreadMeasurement, 'end'> | null | undefined): End =>
  measured?.end ?? 'male';
