import type { Evidence } from '../6-candidates/weigh';

/** Left-hand threads among the parts somebody asks about, and how often each source mistakes the
 *  hand (judgement). The tables hold no hand: it is weighed apart from the thread. */
const leftShare = 0.01;
const mistaken = { photo: 0.005, reading: 0.004, mark: 0.0005 };
/** How many left-hand parts carry their mark. */
const marked = 0.6;

export interface Hand {
  readonly hand: 'right' | 'left' | null;
  /** Neither is sure enough to name a thread by. */
  readonly doubtful: boolean;
}

/** Which way the thread winds. Most photos and benches say nothing: it is right-hand then, unsaid. */
export function handOf({ photo, readings }: Evidence): Hand {
  let left = leftShare;
  let right = 1 - leftShare;
  let said = false;
  const take = (says: 'left' | 'right', wrong: number) => {
    said = true;
    left *= says === 'left' ? 1 - wrong : wrong;
    right *= says === 'left' ? wrong : 1 - wrong;
  };
  if (photo?.hand) take(photo.hand, mistaken.photo);
  let looked = false;
  for (const reading of readings) {
    if (reading.kind === 'hand') {
      take(reading.hand, mistaken.reading);
      looked = true;
    }
    if (reading.kind !== 'marking') continue;
    if (reading.mark === 'left-hand') {
      take('left', mistaken.mark);
      looked = true;
    } else left *= 1 - marked;
  }
  const share = left / (left + right);
  if (!said) return { hand: null, doubtful: false };
  return {
    hand: share > 0.5 ? 'left' : 'right',
    doubtful: !looked && share > 0.02,
  };
}
