import { degreesOf } from '../../journey/6-candidates/parse-reading';
import type { Reading } from '../../journey/6-candidates/reading';
import {
  type AskableKind,
  endTypes,
  gaugedCones,
  marks,
} from '../../journey/6-candidates/reading-choices';
import { t } from '../language/language';
import { coneKey, type End } from './reading-text';

interface ReadingChoice {
  readonly words: string;
  readonly reading: Reading;
}

/** Readings that are one of a few words; null for those that are typed or drawn. */
export function readingChoices(kind: AskableKind, end: End): readonly ReadingChoice[] | null {
  const { reading, trade } = t();
  switch (kind) {
    case 'flank':
      return ([60, 55] as const).map((flankDeg) => ({
        words: reading.flank[flankDeg],
        reading: { kind, flankDeg, text: String(flankDeg) },
      }));
    case 'taper':
      return (['straight', 'tapered'] as const).map((taper) => ({
        words:
          end === 'female' ? reading[taper] : `${reading[taper]}: ${reading.taperPicture[taper]}`,
        reading: { kind, taper, text: taper },
      }));
    case 'crest-form':
      return (['rounded', 'flat'] as const).map((crest) => ({
        words: trade.crests[crest],
        reading: { kind, crest, text: crest },
      }));
    case 'hand':
      return (['right', 'left'] as const).map((hand) => ({
        words: trade.hands[hand],
        reading: { kind, hand, text: hand },
      }));
    case 'marking':
      return marks.map((mark) => ({
        words: trade.marks[mark],
        reading: { kind, mark, text: mark },
      }));
    case 'seat-gauge':
      return gaugedCones.map((cone) => ({
        words: trade.cones[coneKey(cone)],
        reading: { kind, cone, text: degreesOf(cone) },
      }));
    case 'end-type':
      return endTypes.map((type) => ({
        words: `${trade.endTypes[type]}: ${trade.endPictures[type]}`,
        reading: { kind, type, text: type },
      }));
    default:
      return null;
  }
}
