import type { Mounted, Ranked } from '../../../core/src/index.ts';
import type { JobReply, JobRequest, PlanRequest } from './messages.ts';

export interface Solver {
  /** Has a worker started by the time the first search comes. */
  ready(): void;
  /** Starts a search; one that still runs is stopped, and its answer never arrives. */
  start(request: PlanRequest, on: SolverEvents): void;
  cancel(): void;
  stop(): void;
}

export interface SolverEvents {
  progress(done: number): void;
  found(ranked: Ranked<Mounted>): void;
  fault(message: string): void;
}

/** A running search cannot hear a message, so it is cancelled by ending its worker; a new one starts at once, since starting takes a while. */
export function makeSolver(): Solver {
  let worker: Worker | null = null;
  let running = 0;
  let next = 0;
  const end = () => {
    worker?.terminate();
    worker = null;
    running = 0;
  };
  const started = (): Worker => {
    if (worker !== null) return worker;
    const made = new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module' });
    // one that never got to run is tried anew with the next search, which then says what is wrong
    made.onerror = () => {
      if (worker === made) worker = null;
    };
    worker = made;
    return made;
  };
  const cancel = () => {
    if (running === 0) return;
    end();
    started();
  };
  return {
    ready: () => void started(),
    start(request, on) {
      cancel();
      const asked = started();
      next += 1;
      const id = next;
      running = id;
      asked.onmessage = ({ data }: MessageEvent<JobReply<Ranked<Mounted>>>) => {
        if (data.id !== running) return;
        if (data.kind === 'progress') {
          on.progress(data.done);
          return;
        }
        running = 0;
        if (data.kind === 'found') on.found(data.answer);
        else on.fault(data.message);
      };
      asked.onerror = (event) => {
        if (running !== id) return;
        end();
        on.fault(event.message);
      };
      asked.postMessage({ kind: 'plan', plan: request } satisfies JobRequest<null>);
      asked.postMessage({ kind: 'job', id, asked: null } satisfies JobRequest<null>);
    },
    cancel,
    stop: end,
  };
}
