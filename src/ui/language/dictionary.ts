import type { en } from './en';
import type { Widen } from './widen';

/** Every language has exactly the English keys: a missing one fails the type check. */
export type Dictionary = Widen<typeof en>;
