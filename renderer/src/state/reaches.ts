import type { Mounted } from '../../../core/src/index.ts';
import type { Reach } from '../../../core/src/reach/figures.ts';
import type { AskedReach, ReachReply, ReachRequest, SearchRequest } from './messages.ts';
import { revived } from './revive.ts';

export interface Reaches {
  /** From now on this plan is asked; what was asked of the one before is never answered. */
  plan(request: Omit<SearchRequest, 'id'>): void;
  /** The reach of a window. While one is worked on, only the last that is asked waits. */
  reach(asked: AskedReach, on: ReachEvents): void;
  /** The best option for a material; these wait their turn, and every reach goes before them. */
  best(material: string, on: BestEvents): void;
  /** What might be added to the rack for these materials, in sentences; it goes last. */
  add(materials: readonly string[], on: AddEvents): void;
  /** Ends what runs and forgets what waits. */
  cancel(): void;
}

interface Fault {
  fault(message: string): void;
}
export interface ReachEvents extends Fault {
  progress(done: number): void;
  found(reach: Reach): void;
}
export interface BestEvents extends Fault {
  found(best: Mounted | null): void;
}
export interface AddEvents extends Fault {
  found(words: readonly string[]): void;
}

type Job =
  | { readonly kind: 'reach'; readonly asked: AskedReach; readonly on: ReachEvents }
  | { readonly kind: 'best'; readonly material: string; readonly on: BestEvents }
  | { readonly kind: 'add'; readonly materials: readonly string[]; readonly on: AddEvents };

export function makeReaches(): Reaches {
  let worker: Worker | null = null;
  let plan: Omit<SearchRequest, 'id'> | null = null;
  let running: Job | null = null;
  let id = 0;
  let reach: Job | null = null;
  let bests: Job[] = [];
  let add: Job | null = null;
  const post = (request: ReachRequest) => worker?.postMessage(request);
  /** One that is busy cannot hear, so it is ended; the next is started when there is work. */
  const end = () => {
    worker?.terminate();
    worker = null;
    running = null;
  };
  const forget = () => {
    reach = null;
    bests = [];
    add = null;
    if (running !== null) end();
  };
  function start(): Worker {
    const made = new Worker(new URL('./reach.worker.ts', import.meta.url), { type: 'module' });
    made.onmessage = ({ data }: MessageEvent<ReachReply>) => {
      const job = running;
      if (data.id !== id || job === null) return;
      if (data.kind === 'progress') {
        if (job.kind === 'reach') job.on.progress(data.done);
        return;
      }
      running = null;
      if (data.kind === 'fault') job.on.fault(data.message);
      else if (data.kind === 'reach' && job.kind === 'reach') job.on.found(revived(data.reach));
      else if (data.kind === 'best' && job.kind === 'best') job.on.found(data.best);
      else if (data.kind === 'add' && job.kind === 'add') job.on.found(data.words);
      next();
    };
    made.onerror = ({ message }) => {
      const job = running;
      end();
      job?.on.fault(message);
    };
    return made;
  }
  function next(): void {
    if (running !== null || plan === null) return;
    const job = reach ?? bests.shift() ?? add;
    if (job === null) return;
    if (job === reach) reach = null;
    if (job === add) add = null;
    if (worker === null) {
      worker = start();
      post({ kind: 'plan', ...plan });
    }
    running = job;
    id += 1;
    post(requestOf(job, id));
  }
  return {
    plan(request) {
      forget();
      plan = request;
      post({ kind: 'plan', ...request });
    },
    reach(asked, on) {
      reach = { kind: 'reach', asked, on };
      next();
    },
    best(material, on) {
      bests.push({ kind: 'best', material, on });
      next();
    },
    add(materials, on) {
      add = { kind: 'add', materials, on };
      next();
    },
    cancel: forget,
  };
}

function requestOf(job: Job, id: number): ReachRequest {
  switch (job.kind) {
    case 'reach':
      return { kind: 'reach', id, ...job.asked };
    case 'best':
      return { kind: 'best', id, material: job.material };
    case 'add':
      return { kind: 'add', id, materials: job.materials };
  }
}
