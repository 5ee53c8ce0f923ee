import type { Mounted, Ranked } from '../../../core/src/index.ts';
import type { SearchReply, SearchRequest } from './messages.ts';

export interface Solver {
  /** Starts a search; one that still runs is stopped, and its answer never arrives. */
  start(request: Omit<SearchRequest, 'id'>, on: SolverEvents): void;
  cancel(): void;
  stop(): void;
}

export interface SolverEvents {
  progress(done: number): void;
  found(ranked: Ranked<Mounted>): void;
  fault(message: string): void;
}

/** A running search cannot hear a message, so it is cancelled by ending its worker; the next search gets a new one. */
export function makeSolver(): Solver {
  let worker: Worker | null = null;
  let running = 0;
  let next = 0;
  const end = () => {
    worker?.terminate();
    worker = null;
    running = 0;
  };
  return {
    start(request, on) {
      if (running !== 0) end();
      worker ??= new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module' });
      next += 1;
      const id = next;
      running = id;
      worker.onmessage = ({ data }: MessageEvent<SearchReply>) => {
        if (data.id !== running) return;
        if (data.kind === 'progress') {
          on.progress(data.done);
          return;
        }
        running = 0;
        if (data.kind === 'found') on.found(data.ranked);
        else on.fault(data.message);
      };
      worker.onerror = (event) => {
        if (running !== id) return;
        end();
        on.fault(event.message);
      };
      worker.postMessage({ ...request, id } satisfies SearchRequest);
    },
    cancel: end,
    stop: end,
  };
}
