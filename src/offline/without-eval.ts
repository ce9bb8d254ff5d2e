import { config } from 'zod/v4/core';

/** Imported first of all: zod would otherwise try whether it may compile parsers with eval, which
 *  the page's policy answers with a reported violation. */
config({ jitless: true });
