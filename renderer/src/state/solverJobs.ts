import { type Mounted, type Ranked, search } from '../../../core/src/index.ts';
import { serveJobs } from './serveJobs.ts';

/** Searches off the window's thread. The page resolves the plan itself first, so here it always resolves. */
serveJobs<null, Ranked<Mounted>>(
  ({ planFor }) =>
    (_asked, progress) =>
      search(planFor(), { hooks: { progress } }),
);
