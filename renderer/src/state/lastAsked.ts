/** What comes back from a worker that is asked one thing at a time; `id` tells late answers apart. */
export type Reply<Answer> =
  | { readonly id: number; readonly kind: 'answer'; readonly answer: Answer }
  | { readonly id: number; readonly kind: 'fault'; readonly message: string };

export interface Heard<Answer> {
  found(answer: Answer): void;
  fault(message: string): void;
}

/** A worker that is asked one thing at a time. */
export interface LastAsked<Ask, Answer> {
  /**
   * While one is worked on, only the last that is asked waits: a hand that moves on is followed as fast as answers come, and the
   * answer to where it stops always comes.
   */
  ask(ask: Ask, on: Heard<Answer>): void;
  /** Ends what runs and forgets what waits. */
  stop(): void;
  /** Whether something is worked on. */
  busy(): boolean;
  /** Hands a message to the worker if there is one, for it to keep. */
  tell(message: unknown): void;
}

/** @param start  makes the worker and tells it what it has to know; called when something is asked and none runs */
export function makeLastAsked<Ask extends object, Answer>(start: () => Worker): LastAsked<Ask, Answer> {
  let worker: Worker | null = null;
  let running: { readonly id: number; readonly on: Heard<Answer> } | null = null;
  let waiting: { readonly ask: Ask; readonly on: Heard<Answer> } | null = null;
  let last = 0;
  const stop = () => {
    worker?.terminate();
    worker = null;
    running = null;
    waiting = null;
  };
  const hear = ({ data }: MessageEvent<Reply<Answer>>) => {
    if (running === null || data.id !== running.id) return;
    const { on } = running;
    running = null;
    if (data.kind === 'answer') on.found(data.answer);
    else on.fault(data.message);
    const next = waiting;
    waiting = null;
    if (next !== null) send(next.ask, next.on);
  };
  function send(ask: Ask, on: Heard<Answer>): void {
    if (worker === null) {
      worker = start();
      worker.onmessage = hear;
      worker.onerror = ({ message }) => {
        const broken = running?.on;
        stop();
        broken?.fault(message);
      };
    }
    last += 1;
    running = { id: last, on };
    worker.postMessage({ ...ask, id: last });
  }
  return {
    ask(ask, on) {
      if (running === null) send(ask, on);
      else waiting = { ask, on };
    },
    stop,
    busy: () => running !== null,
    tell: (message) => worker?.postMessage(message),
  };
}
