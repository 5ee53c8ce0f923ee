import type { JobReply, JobRequest, PlanRequest } from './messages.ts';

export interface JobEvents<Answer> {
  progress?(done: number): void;
  found(answer: Answer): void;
  fault(message: string): void;
}

export interface Job<Asked, Answer> {
  readonly asked: Asked;
  readonly on: JobEvents<Answer>;
  /** Of what waits the least goes first; those of one rank in their turn. */
  readonly rank: number;
  /** Takes the place of what waits in its rank: whoever follows a hand wants only where it stops. */
  readonly latest: boolean;
}

/** One worker and what waits for it. */
export interface Jobs<Asked, Answer> {
  /** From now on this plan is asked; what was asked of the one before is never answered. */
  plan(request: PlanRequest): void;
  ask(job: Job<Asked, Answer>): void;
  /** Ends what runs and forgets what waits. */
  cancel(): void;
  /** The same, and the worker goes even where it is idle. */
  end(): void;
}

/**
 * @param make   starts the worker; it is called when there is work, and again after one was ended
 * @param about  whether jobs wait for a plan, or each says all there is to know
 */
export function makeJobs<Asked, Answer>(make: () => Worker, about: 'a plan' | 'itself' = 'a plan'): Jobs<Asked, Answer> {
  let worker: Worker | null = null;
  let plan: PlanRequest | null = null;
  let running: Job<Asked, Answer> | null = null;
  let waiting: readonly Job<Asked, Answer>[] = [];
  let id = 0;
  const post = (request: JobRequest<Asked>) => worker?.postMessage(request);
  /** One that is busy cannot hear, so it is ended. */
  const dismiss = () => {
    worker?.terminate();
    worker = null;
    running = null;
  };
  const cancel = () => {
    waiting = [];
    if (running !== null) dismiss();
  };
  function start(): Worker {
    const made = make();
    made.onmessage = ({ data }: MessageEvent<JobReply<Answer>>) => {
      const job = running;
      if (data.id !== id || job === null) return;
      if (data.kind === 'progress') {
        job.on.progress?.(data.done);
        return;
      }
      running = null;
      if (data.kind === 'found') job.on.found(data.answer);
      else job.on.fault(data.message);
      next();
    };
    made.onerror = ({ message }) => {
      const job = running;
      dismiss();
      job?.on.fault(message);
    };
    return made;
  }
  function next(): void {
    if (running !== null || (plan === null && about === 'a plan')) return;
    const [first, ...others] = waiting;
    if (first === undefined) return;
    const job = others.reduce((best, other) => (other.rank < best.rank ? other : best), first);
    waiting = waiting.filter((other) => other !== job);
    if (worker === null) {
      worker = start();
      if (plan !== null) post({ kind: 'plan', plan });
    }
    running = job;
    id += 1;
    post({ kind: 'job', id, asked: job.asked });
  }
  return {
    plan(request) {
      cancel();
      plan = request;
      post({ kind: 'plan', plan: request });
    },
    ask(job) {
      waiting = [...waiting.filter(({ rank }) => !job.latest || rank !== job.rank), job];
      next();
    },
    cancel,
    end() {
      waiting = [];
      dismiss();
    },
  };
}
