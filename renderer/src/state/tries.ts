import { type Heard, makeLastAsked } from './lastAsked.ts';
import type { SearchRequest, SentNear, SentRatio, TryRequest } from './messages.ts';

export interface Tries {
  /** From now on ratios are tried on this plan; what was asked of the one before is never answered. */
  plan(request: Omit<SearchRequest, 'id'>): void;
  /** Asks what can be built near a ratio; of several that are asked meanwhile only the last is answered. */
  near(wanted: SentRatio, keep: number, on: Heard<readonly SentNear[]>): void;
  stop(): void;
}

export function makeTries(): Tries {
  let plan: Omit<SearchRequest, 'id'> | null = null;
  const tell = (worker: Pick<Worker, 'postMessage'>) => worker.postMessage({ kind: 'plan', ...plan });
  const asked = makeLastAsked<Omit<Extract<TryRequest, { kind: 'try' }>, 'id'>, readonly SentNear[]>(() => {
    const made = new Worker(new URL('./tries.worker.ts', import.meta.url), { type: 'module' });
    tell(made);
    return made;
  });
  return {
    plan(request) {
      plan = request;
      // One that is busy cannot hear of the new plan.
      if (asked.busy()) asked.stop();
      else tell({ postMessage: asked.tell });
    },
    near(wanted, keep, on) {
      if (plan !== null) asked.ask({ kind: 'try', wanted, keep }, on);
    },
    stop: asked.stop,
  };
}
