import { type JobEvents, makeJobs } from './jobs.ts';
import type { PlanRequest, SentNear, SentRatio, TryAsked } from './messages.ts';

export interface Tries {
  /** From now on ratios are tried on this plan; what was asked of the one before is never answered. */
  plan(request: PlanRequest): void;
  /**
   * Asks what can be built near a ratio. While one is worked on, only the last that is asked waits: a slide that moves on is
   * followed as fast as answers come, and the answer to where it stops always comes.
   */
  near(wanted: SentRatio, keep: number, on: JobEvents<readonly SentNear[]>): void;
  stop(): void;
}

export function makeTries(): Tries {
  const jobs = makeJobs<TryAsked, readonly SentNear[]>(() => new Worker(new URL('./tries.worker.ts', import.meta.url), { type: 'module' }));
  return {
    plan: jobs.plan,
    near: (wanted, keep, on) => jobs.ask({ asked: { wanted, keep }, on, rank: 0, latest: true }),
    stop: jobs.end,
  };
}
