import { z } from 'zod';

// Compiled parsers need eval, which the page's content security policy forbids; without this,
// zod tries once and the browser reports a violation.
z.config({ jitless: true });

/** Limits are far above what the program writes, and low enough that a hostile file is cheap. */
export const word = z.string().max(120);
export const line = z.string().max(400);
export const text = z.string().max(4000);
export const time = z.iso.datetime();
const pixel = z.number().min(-1e6).max(1e6);
export const point = z.tuple([pixel, pixel]);
export const mm = z.number().min(-1e5).max(1e5);
export const share = z.number().min(0).max(1);
