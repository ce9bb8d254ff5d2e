import type { Dictionary } from './dictionary';
import { en } from './en';

export const fr: Dictionary = en;
