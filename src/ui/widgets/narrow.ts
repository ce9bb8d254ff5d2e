import { type Accessor, createSignal } from 'solid-js';

function matching(query: string): Accessor<boolean> {
  const list = matchMedia(query);
  const [matches, setMatches] = createSignal(list.matches);
  list.addEventListener('change', () => setMatches(list.matches));
  return matches;
}

/** The page is as narrow as a telephone: as in shell.css, the places move to the bottom, and pages fold. */
export const narrow = matching('(max-width: 719px)');

/** Too narrow for a table of ten columns in any of the languages: its rows are lists. */
export const narrowForTables = matching('(max-width: 1199px)');
