import type { Connection } from '../../standards/connections/connection';
import { connections } from '../../standards/connections/connections';
import type { Thread } from '../../standards/thread';
import { threads } from '../../standards/threads';
import { type DiameterDensity, femaleDensity, maleDensity } from './diameter-density';
import { flangeHeads } from './flange-heads';
import {
  connectionPrior,
  endShare,
  otherUseShare,
  type PriorOptions,
  plainThreadPrior,
  plainThreadShare,
} from './priors';

/** What a thread is used for: one listed connection, or something else (null). */
export interface Use {
  readonly connection: Connection | null;
  readonly prior: number;
}

/** One listed thread as a male or female end. Priors of all uses of all hypotheses sum to 1. */
export interface Hypothesis {
  readonly thread: Thread;
  readonly end: 'male' | 'female';
  readonly density: DiameterDensity;
  readonly uses: readonly Use[];
}

const cache = new Map<string, Hypotheses>();
const densities = new Map<string, DiameterDensity>();

export interface Hypotheses {
  readonly threads: readonly Hypothesis[];
  /** Flange heads: connections without a thread. */
  readonly heads: readonly { readonly connection: Connection; readonly prior: number }[];
}

export function hypotheses(options: PriorOptions): Hypotheses {
  const key = `${options.region ?? ''}/${options.trade ?? ''}`;
  const cached = cache.get(key);
  if (cached) return cached;
  const built = build(options);
  cache.set(key, built);
  return built;
}

function build(options: PriorOptions): Hypotheses {
  const carried = carriedBy();
  const matched = threads.filter((t) => t.separable);
  const ends = ['male', 'female'] as const;
  const plain = matched.filter((t) => !ends.some((e) => carried.has(`${t.designation}/${e}`)));
  const plainTotal = plain.reduce((sum, t) => sum + plainThreadPrior(t), 0);

  const list = matched.flatMap((thread) =>
    ends.flatMap((end) => {
      // NPSM is the thread of swivel nuts only, and the metric taper of studs, in parallel holes.
      if (thread.series === 'NPSM' && end === 'male') return [];
      if (thread.series === 'taper' && end === 'female') return [];
      const own = carried.get(`${thread.designation}/${end}`) ?? [];
      const uses: Use[] = own.map((c) => ({
        connection: c,
        prior: endShare[end] * connectionPrior(c, options),
      }));
      return [{ thread, end, density: densityOf(thread, end), uses }];
    }),
  );
  const heads = flangeHeads.map((c) => ({
    connection: c,
    prior: endShare.male * connectionPrior(c, options),
  }));
  const listedTotal = [...list.flatMap((h) => h.uses), ...heads].reduce(
    (sum, u) => sum + u.prior,
    0,
  );
  const share = (prior: number) => (prior / listedTotal) * (1 - plainThreadShare);
  const withPriors = list.map((h) => {
    const uses = h.uses.map((u) => ({
      connection: u.connection,
      prior: share(u.prior),
    }));
    const carriedHere = uses.reduce((sum, u) => sum + u.prior, 0);
    const asPlain = (plainThreadShare * endShare[h.end] * plainThreadPrior(h.thread)) / plainTotal;
    const other = carriedHere > 0 ? otherUseShare * carriedHere : asPlain;
    return { ...h, uses: [...uses, { connection: null, prior: other }] };
  });
  return {
    threads: withPriors,
    heads: heads.map(({ connection, prior }) => ({ connection, prior: share(prior) })),
  };
}

function carriedBy(): Map<string, Connection[]> {
  const map = new Map<string, Connection[]>();
  for (const c of connections) {
    if (c.thread === null) continue;
    const key = `${c.thread}/${c.end}`;
    map.set(key, [...(map.get(key) ?? []), c]);
  }
  return map;
}

function densityOf(thread: Thread, end: 'male' | 'female'): DiameterDensity {
  const key = `${thread.designation}/${end}`;
  const known = densities.get(key);
  if (known) return known;
  const density = end === 'male' ? maleDensity(thread) : femaleDensity(thread);
  densities.set(key, density);
  return density;
}
