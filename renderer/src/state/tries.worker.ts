import { beginWorker } from './beginWorker.ts';

beginWorker(() => import('./triesJobs.ts'));
