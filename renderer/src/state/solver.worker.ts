import { resolve, search } from '../../../core/src/index.ts';
import type { SearchReply, SearchRequest } from './messages.ts';

const reply = (message: SearchReply) => postMessage(message);

/** Searches off the window's thread. The page resolves the plan itself first, so here it always resolves. */
self.onmessage = ({ data }: MessageEvent<SearchRequest>) => {
  const { id, file, selection, say } = data;
  try {
    const plan = resolve(file, selection, say);
    if (!plan.ok) throw new RangeError('the plan does not resolve');
    let shown = -1;
    const progress = (done: number) => {
      const percent = Math.floor(100 * done);
      if (percent === shown) return;
      shown = percent;
      reply({ id, kind: 'progress', done });
    };
    reply({ id, kind: 'found', ranked: search(plan.value, { hooks: { progress } }) });
  } catch (error) {
    reply({ id, kind: 'fault', message: error instanceof Error ? error.message : String(error) });
  }
};
