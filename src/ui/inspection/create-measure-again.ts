import { createSignal } from 'solid-js';
import { defaultOptions } from '../../journey/identification';
import { endOf } from '../end/end-choice';
import { shownIn } from '../measuring/next-steps';
import { noChangeWords } from '../measuring/refusal-words';
import { addPhoto, type Help, type NoChange, remeasure } from '../work/remeasure';
import { openSheet } from '../work/sheets';
import type { ShownShot } from './create-shown-shot';

/** Measures the shown photo again, or one more; `problem` says why the sheet stayed as it was. */
export function createMeasureAgain({ shot, showLast }: ShownShot) {
  const [problem, setProblem] = createSignal<string | null>(null);
  const settle = async (work: Promise<NoChange | null>, help: Partial<Help> = {}) => {
    setProblem(null);
    const kept = await work;
    if (kept !== null) {
      const options = { ...defaultOptions, gender: endOf(shot().measurement), ...help };
      setProblem(noChangeWords(kept, shownIn(options)));
    }
    return kept === null;
  };
  return {
    problem,
    again: (help: Help) => settle(remeasure(openSheet()!.sheet.shots.indexOf(shot()), help), help),
    another: async (file: File) => {
      if (await settle(addPhoto(file))) showLast();
    },
  };
}
