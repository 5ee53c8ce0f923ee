import type { JobReply, JobRequest } from '../../renderer/src/state/messages.ts';
import { demoFile } from '../core/sheet/demoSheet.ts';

/** A worker that answers when the test says so. */
export class HeldWorker<Asked, Answer> {
  onmessage: ((event: { readonly data: JobReply<Answer> }) => void) | null = null;
  onerror: ((event: { readonly message: string }) => void) | null = null;
  readonly heard: JobRequest<Asked>[] = [];
  ended = false;
  postMessage(request: JobRequest<Asked>) {
    this.heard.push(request);
  }
  terminate() {
    this.ended = true;
  }
  asked(): readonly Asked[] {
    return this.heard.flatMap((request) => (request.kind === 'job' ? [request.asked] : []));
  }
  /** Of the job that it heard last. */
  id(): number {
    const last = this.heard.at(-1);
    if (last?.kind !== 'job') throw new Error('nothing was asked');
    return last.id;
  }
  answer(answer: Answer) {
    this.onmessage?.({ data: { id: this.id(), kind: 'found', answer } });
  }
}

export const heldPlan = { file: demoFile(), selection: {}, say: { decimal: '.', system: 'metric' } } as const;
