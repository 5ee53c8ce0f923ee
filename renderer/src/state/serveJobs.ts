import { type Plan, resolve } from '../../../core/src/index.ts';
import type { JobReply, JobRequest, PlanRequest } from './messages.ts';

/** What a worker knows of the plan it is asked about. */
export interface Asks {
  readonly request: PlanRequest;
  /** The plan with other things chosen, as another material. */
  readonly planFor: (other?: PlanRequest['selection']) => Plan;
}

/**
 * The worker's side of the jobs.
 *
 * @param begin  called for each plan; what it answers then does one job after another, and may keep what it has worked out
 */
export function serveJobs<Asked, Answer>(begin: (asks: Asks) => Work<Asked, Answer>): void {
  let work: Work<Asked, Answer> = () => {
    throw new RangeError('no plan');
  };
  serve<Asked, Answer>(
    (asked, progress) => work(asked, progress),
    (plan) => {
      work = begin({ request: plan, planFor: (other) => planFor(plan, other) });
    },
  );
}

/** The same where each question says all there is to know. */
export const serveQuestions = <Asked, Answer>(work: Work<Asked, Answer>): void => serve(work, () => undefined);

type Work<Asked, Answer> = (asked: Asked, progress: (done: number) => void) => Answer;

function serve<Asked, Answer>(work: Work<Asked, Answer>, planned: (plan: PlanRequest) => void): void {
  const reply = (message: JobReply<Answer>) => postMessage(message);
  self.onmessage = ({ data }: MessageEvent<JobRequest<Asked>>) => {
    if (data.kind === 'plan') {
      planned(data.plan);
      return;
    }
    const { id, asked } = data;
    let shown = -1;
    try {
      const answer = work(asked, (done) => {
        const percent = Math.floor(100 * done);
        if (percent === shown) return;
        shown = percent;
        reply({ id, kind: 'progress', done });
      });
      reply({ id, kind: 'found', answer });
    } catch (error) {
      reply({ id, kind: 'fault', message: error instanceof Error ? error.message : String(error) });
    }
  };
}

function planFor({ file, selection, say }: PlanRequest, other: PlanRequest['selection'] = {}): Plan {
  const plan = resolve(file, { ...selection, ...other }, say);
  if (!plan.ok) throw new RangeError('no plan');
  return plan.value;
}
