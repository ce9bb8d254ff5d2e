import { createSignal } from 'solid-js';
import { allTools, usualTools } from '../../journey/7-next-reading/tools';
import { keepText, keptText } from '../widgets/kept-text';
import type { Tool } from './open-sheet';

const key = 'crestwise.tools';

export { allTools };

/** What most benches have; the rest is there to be ticked. */
const usual = usualTools;

function read(): readonly Tool[] {
  const kept = keptText(key);
  return kept === null ? usual : allTools.filter((tool) => kept.split(' ').includes(tool));
}

const [tools, setTools] = createSignal(read());

/** What the person has at hand; belongs to the person, not to a sheet. */
export const toolsAtHand = tools;

export function setToolsAtHand(next: readonly Tool[]): void {
  setTools(next);
  keepText(key, next.join(' '));
}
