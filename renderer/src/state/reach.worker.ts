import { beginWorker } from './beginWorker.ts';

beginWorker(() => import('./reachJobs.ts'));
