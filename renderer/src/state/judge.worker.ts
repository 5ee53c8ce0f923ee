import { type Judged, judge } from '../../../core/src/ratioCheck/judge.ts';
import type { Reply } from './lastAsked.ts';
import type { JudgeRequest } from './messages.ts';

const reply = (message: Reply<Judged>) => postMessage(message);

/** Looks for causes and for the best option as measured off the window's thread. The page reads the check itself first, so here it can be judged. */
self.onmessage = ({ data }: MessageEvent<JudgeRequest>) => {
  const { id, file, row, say } = data;
  try {
    const judged = judge(file, row, ['ratioChecks'], say);
    if (!judged.ok) throw new RangeError(judged.findings[0].what);
    reply({ id, kind: 'answer', answer: judged.value });
  } catch (error) {
    reply({ id, kind: 'fault', message: error instanceof Error ? error.message : String(error) });
  }
};
