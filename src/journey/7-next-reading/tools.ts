import type { AskableKind } from '../6-candidates/reading-choices';

export const allTools = ['rule', 'caliper', 'pitch-gauge', 'form-gauge', 'seat-gauge'] as const;
export type Tool = (typeof allTools)[number];

/** What most benches have. */
export const usualTools: readonly Tool[] = ['rule', 'caliper', 'pitch-gauge'];

/** Tools of each reading, any of which will do (none: looking is enough), and its trouble in units
 *  of one look at the part (judgement). */
export const readingEffort: Record<
  AskableKind,
  { readonly tools: readonly Tool[]; readonly effort: number }
> = {
  seat: { tools: [], effort: 1 },
  taper: { tools: [], effort: 1.1 },
  'end-type': { tools: [], effort: 1.05 },
  'pitch-gauge': { tools: ['pitch-gauge'], effort: 1.1 },
  'turns-over': { tools: ['rule', 'caliper'], effort: 1.4 },
  'caliper-od': { tools: ['caliper'], effort: 1 },
  'caliper-id': { tools: ['caliper'], effort: 1.05 },
  'rule-od': { tools: ['rule'], effort: 1 },
  'tube-od': { tools: ['caliper', 'rule'], effort: 2 },
  'nose-od': { tools: ['caliper', 'rule'], effort: 2.1 },
  'crest-form': { tools: [], effort: 1.6 },
  // Pitch gauges are cut for 55° or for 60°, and marked so (common practice).
  flank: { tools: ['form-gauge', 'pitch-gauge'], effort: 2 },
  'seat-gauge': { tools: ['seat-gauge'], effort: 1.2 },
  'cone-size': { tools: ['caliper'], effort: 2.4 },
  'flange-thickness': { tools: ['caliper', 'rule'], effort: 1 },
  'bolt-spacing': { tools: ['caliper', 'rule'], effort: 1.2 },
  marking: { tools: [], effort: 2 },
  hand: { tools: [], effort: 1 },
  hex: { tools: ['caliper', 'rule'], effort: 3 },
};
