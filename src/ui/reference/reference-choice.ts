import { createSignal } from 'solid-js';
import type { ReferenceAsked } from '../../journey/identification';
import { endChoice } from '../end/end-choice';
import { keepText, keptText } from '../widgets/kept-text';

export const choices = ['card', 'id1', 'sheet', 'rule'] as const;
export type Choice = (typeof choices)[number];
export type Paper = 'a4' | 'letter';

/** US Letter where it is the common paper (common practice); anyone can choose the other. */
export const usualPaper = (): Paper => (/-(US|CA|MX)\b/.test(navigator.language) ? 'letter' : 'a4');

const key = 'crestwise.reference';

function read(): { choice: Choice; paper: Paper } {
  const kept = keptText(key)?.split(' ') ?? [];
  return {
    choice: choices.find((choice) => kept.includes(choice)) ?? 'card',
    paper: (['a4', 'letter'] as const).find((paper) => kept.includes(paper)) ?? usualPaper(),
  };
}

const [state, setState] = createSignal(read());

/** What the person has to lay beside a fitting; belongs to the person, not to a sheet. A female end has only been
 *  measured on the printed card. */
export const referenceChoice = (): Choice => (endChoice() === 'female' ? 'card' : state().choice);
export const paperChoice = () => state().paper;

export function chooseReference(part: { choice?: Choice; paper?: Paper }): void {
  const next = { ...state(), ...part };
  setState(next);
  keepText(key, `${next.choice} ${next.paper}`);
}

/** Whose outline the live view looks for. */
export function outlineAsked(): 'id1' | Paper | null {
  const choice = referenceChoice();
  return choice === 'id1' ? 'id1' : choice === 'sheet' ? paperChoice() : null;
}

/** What a new photo is searched for. The printed card is found whatever is asked for, and with it chosen
 *  anything else that is sure will do. */
export function askedReference(): ReferenceAsked {
  return { kind: outlineAsked() ?? 'auto', corners: null };
}
