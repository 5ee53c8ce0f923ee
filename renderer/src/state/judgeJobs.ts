import { type Judged, judge } from '../../../core/src/ratioCheck/judge.ts';
import type { JudgeAsked } from './messages.ts';
import { serveQuestions } from './serveJobs.ts';

/** Looks for causes and for the best option as measured off the window's thread. The page reads the check itself first, so here it can be judged. */
serveQuestions<JudgeAsked, Judged>(({ file, row, say }) => {
  const judged = judge(file, row, ['ratioChecks'], say);
  if (!judged.ok) throw new RangeError(judged.findings[0].what);
  return judged.value;
});
