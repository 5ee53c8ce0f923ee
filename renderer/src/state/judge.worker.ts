import { beginWorker } from './beginWorker.ts';

beginWorker(() => import('./judgeJobs.ts'));
