import type { Block } from '../../handover/pdf-flow';
import type { Sheet } from '../../journey/8-sheet/sheet-schema';
import { t } from '../language/language';
import { wearOfSheet } from './wear-of-sheet';
import {
  findingLine,
  levelWords,
  openInWords,
  overlapWords,
  reasonsInWords,
  verdictWords,
} from './wear-words';

/** What was found of wear, on the printed page. Nothing while nobody asked. */
export function wearBlocks(sheet: Sheet): Block[] {
  const wear = wearOfSheet(sheet);
  if (!wear) return [];
  const { thread, limits, finding, crest, overlap } = wear;
  const reasons = reasonsInWords(wear);
  return [
    { kind: 'heading', text: t().wear.title },
    {
      kind: 'row',
      label: [thread.designation, limits?.class].filter(Boolean).join(' '),
      value: levelWords(finding.level),
    },
    ...(reasons.length > 0 ? [{ kind: 'list', items: reasons, numbered: false } as const] : []),
    ...(crest
      ? [{ kind: 'row', label: t().wear.crests, value: verdictWords(crest) } as const]
      : []),
    ...(overlap ? [{ kind: 'text', text: overlapWords(overlap) } as const] : []),
    ...(finding.open.length > 0
      ? [{ kind: 'row', label: t().wear.notLooked, value: openInWords(wear) } as const]
      : []),
    { kind: 'text', text: t().wear.confirm },
  ];
}

/** One line for the shared picture. */
export function wearLines(sheet: Sheet): string[] {
  const wear = wearOfSheet(sheet);
  return wear ? [findingLine(wear)] : [];
}
