import type { SearchRequest, SentNear, SentRatio, TryReply, TryRequest } from './messages.ts';

export interface Tries {
  /** From now on ratios are tried on this plan; what was asked of the one before is never answered. */
  plan(request: Omit<SearchRequest, 'id'>): void;
  /**
   * Asks what can be built near a ratio. While one is worked on, only the last that is asked waits: a slide that moves on is
   * followed as fast as answers come, and the answer to where it stops always comes.
   */
  near(wanted: SentRatio, keep: number, on: TriesEvents): void;
  stop(): void;
}

export interface TriesEvents {
  found(near: readonly SentNear[]): void;
  fault(message: string): void;
}

interface Asked {
  readonly wanted: SentRatio;
  readonly keep: number;
  readonly on: TriesEvents;
}

export function makeTries(): Tries {
  let worker: Worker | null = null;
  let plan: Omit<SearchRequest, 'id'> | null = null;
  let running: (Asked & { readonly id: number }) | null = null;
  let waiting: Asked | null = null;
  let next = 0;
  const end = () => {
    worker?.terminate();
    worker = null;
    running = null;
    waiting = null;
  };
  const post = (request: TryRequest) => worker?.postMessage(request);
  const settle = (tell: (on: TriesEvents) => void) => {
    const done = running;
    running = null;
    if (done !== null) tell(done.on);
    const following = waiting;
    waiting = null;
    if (following !== null) send(following);
  };
  function start(): Worker {
    const made = new Worker(new URL('./tries.worker.ts', import.meta.url), { type: 'module' });
    made.onmessage = ({ data }: MessageEvent<TryReply>) => {
      if (data.id !== running?.id) return;
      settle((on) => (data.kind === 'near' ? on.found(data.near) : on.fault(data.message)));
    };
    made.onerror = ({ message }) => {
      const on = running?.on;
      end();
      on?.fault(message);
    };
    return made;
  }
  function send(asked: Asked): void {
    if (plan === null) return;
    if (worker === null) {
      worker = start();
      post({ kind: 'plan', ...plan });
    }
    next += 1;
    running = { ...asked, id: next };
    post({ kind: 'try', id: next, wanted: asked.wanted, keep: asked.keep });
  }
  return {
    plan(request) {
      plan = request;
      // One that is busy cannot hear of the new plan.
      if (running !== null) end();
      else post({ kind: 'plan', ...request });
    },
    near(wanted, keep, on) {
      const asked = { wanted, keep, on };
      if (running === null) send(asked);
      else waiting = asked;
    },
    stop: end,
  };
}
