import { judge } from '../../../core/src/ratioCheck/judge.ts';
import type { Reply } from './lastAsked.ts';
import type { JudgeRequest, SlowHalf } from './messages.ts';

const reply = (message: Reply<SlowHalf>) => postMessage(message);

/** Looks for causes and for the best option as measured off the window's thread. The page judges the check itself first, so here it can be judged. */
self.onmessage = ({ data }: MessageEvent<JudgeRequest>) => {
  const { id, file, row, say } = data;
  try {
    const judged = judge(file, row, ['ratioChecks'], say);
    if (!judged.ok) throw new RangeError(judged.findings[0].what);
    const { causes, proposal, delivery, offRatio } = judged.value;
    reply({ id, kind: 'answer', answer: { causes, proposal, delivery, offRatio } });
  } catch (error) {
    reply({ id, kind: 'fault', message: error instanceof Error ? error.message : String(error) });
  }
};
