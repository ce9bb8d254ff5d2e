import type { Sheet } from './open-sheet';

type Words = Pick<Sheet, 'title' | 'remarks' | 'readings'>;

/** What the other side says in words, where a picture's code had room for only the beginning of what stands
 *  here, or for nothing: then what stands here. */
export function uncut(here: Words, arrived: Words): Words {
  return {
    title: longer(here.title, arrived.title),
    remarks: longer(here.remarks, arrived.remarks),
    readings: arrived.readings.map((reading) => {
      const whole = here.readings.find(
        (one) => one.text.startsWith(reading.text) && isSame(one, reading),
      );
      return whole ?? reading;
    }),
  };
}

function longer(here: string, arrived: string): string {
  return here.startsWith(arrived) ? here : arrived;
}

function isSame(one: Sheet['readings'][number], other: Sheet['readings'][number]): boolean {
  return JSON.stringify({ ...one, text: '' }) === JSON.stringify({ ...other, text: '' });
}
