import type { Dictionary } from './dictionary';
import { en } from './en';

export const de: Dictionary = en;
