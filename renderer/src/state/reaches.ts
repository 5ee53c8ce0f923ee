import type { Mounted } from '../../../core/src/index.ts';
import type { Reach } from '../../../core/src/reach/figures.ts';
import { type JobEvents, makeJobs } from './jobs.ts';
import type { AskedReach, PlanRequest, ReachAnswer, ReachAsked } from './messages.ts';
import { revived } from './revive.ts';

export interface Reaches {
  /** From now on this plan is asked; what was asked of the one before is never answered. */
  plan(request: PlanRequest): void;
  /** The reach of a window. While one is worked on, only the last that is asked waits. */
  reach(asked: AskedReach, on: JobEvents<Reach>): void;
  /** The best option for a material; these wait their turn, and every reach goes before them. */
  best(material: string, on: JobEvents<Mounted | null>): void;
  /** What might be added to the rack for these materials, in sentences; it goes last. */
  add(materials: readonly string[], on: JobEvents<readonly string[]>): void;
  /** Ends what runs and forgets what waits. */
  cancel(): void;
  /** The same, and the worker goes. */
  stop(): void;
}

export function makeReaches(): Reaches {
  const jobs = makeJobs<ReachAsked, ReachAnswer>(() => new Worker(new URL('./reach.worker.ts', import.meta.url), { type: 'module' }));
  /** Hears only answers of its kind. */
  const hear = <T>(on: JobEvents<T>, of: (answer: ReachAnswer) => { readonly is: T } | null): JobEvents<ReachAnswer> => ({
    ...on,
    found(answer) {
      const mine = of(answer);
      if (mine !== null) on.found(mine.is);
    },
  });
  return {
    plan: jobs.plan,
    reach: (asked, on) =>
      jobs.ask({
        asked: { kind: 'reach', ...asked },
        on: hear(on, (answer) => (answer.kind === 'reach' ? { is: revived(answer.reach) } : null)),
        rank: 0,
        latest: true,
      }),
    best: (material, on) =>
      jobs.ask({
        asked: { kind: 'best', material },
        on: hear(on, (answer) => (answer.kind === 'best' ? { is: answer.best } : null)),
        rank: 1,
        latest: false,
      }),
    add: (materials, on) =>
      jobs.ask({
        asked: { kind: 'add', materials },
        on: hear(on, (answer) => (answer.kind === 'add' ? { is: answer.words } : null)),
        rank: 2,
        latest: true,
      }),
    cancel: jobs.cancel,
    stop: jobs.end,
  };
}
