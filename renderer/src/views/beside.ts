import { later } from './later.ts';

export const beside = () => import('./beside/index.ts');

/** What no page shows: questions, which seldom stop the way, the mark of what was measured, drops, the native menu. */
export const Around = later(async () => (await beside()).Around);
