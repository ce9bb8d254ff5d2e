import { createSignal } from 'solid-js';

/** As in shell.css: below this the places move to the bottom, and pages fold. */
const query = matchMedia('(max-width: 719px)');
const [matches, setMatches] = createSignal(query.matches);
query.addEventListener('change', () => setMatches(query.matches));

/** The page is as narrow as a telephone. */
export const narrow = matches;
