import { type TriedRatios, triedRatios } from '../../../core/src/nearRatios.ts';
import { ratioOf } from '../../../core/src/ratio.ts';
import type { SentNear, TryAsked } from './messages.ts';
import { serveJobs } from './serveJobs.ts';

/** A worker of its own: a try never waits behind a search. */
serveJobs<TryAsked, readonly SentNear[]>(({ planFor }) => {
  /** What the plan can do, worked out when the first ratio is tried on it. */
  let known: TriedRatios | null = null;
  return ({ wanted, keep }) => {
    known ??= triedRatios(planFor());
    return known
      .near(ratioOf(...wanted), keep)
      .map(({ bPerA, inside, partsChanged, first }) => ({ bPerA: [bPerA.n, bPerA.d] as const, inside, partsChanged, first }));
  };
});
