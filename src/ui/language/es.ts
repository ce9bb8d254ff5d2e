import type { Dictionary } from './dictionary';
import { en } from './en';

export const es: Dictionary = en;
