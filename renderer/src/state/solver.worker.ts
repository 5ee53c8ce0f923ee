import { beginWorker } from './beginWorker.ts';

beginWorker(() => import('./solverJobs.ts'));
