import type { Corrections } from '../../journey/identification';
import type { PhotoPoint } from '../../journey/overlay';
import type { Shot } from '../work/open-sheet';

/** What a person shows by hand: two points, and what they mean. Photo frame, px. */
export interface Hand {
  readonly mode: 'axis' | 'ruler';
  readonly a: PhotoPoint;
  readonly b: PhotoPoint;
  readonly side: Corrections['side'];
  /** As typed; only in ruler mode. */
  readonly distance: string;
}

/** What was shown before; else the axis that was found, else a place in the middle. */
export function startingHand({ overlay, corrections, ruler }: Shot): Hand {
  const width = overlay?.widthPx ?? 1000;
  const height = overlay?.heightPx ?? 1000;
  const somewhere: readonly [PhotoPoint, PhotoPoint] = [
    [width * 0.45, height / 2],
    [width * 0.55, height / 2],
  ];
  const [a, b] =
    corrections?.axis ?? (ruler ? [ruler.from, ruler.to] : null) ?? overlay?.axis ?? somewhere;
  return {
    mode: ruler ? 'ruler' : 'axis',
    a,
    b,
    side: corrections?.side ?? 'both',
    distance: ruler ? String(ruler.mm) : '',
  };
}
