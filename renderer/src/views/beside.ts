import { later } from './later.ts';

export const beside = () => import('./beside/index.ts');

/** What no page shows. */
export const Around = later(async () => (await beside()).Around);
export const RecentFiles = later(async () => (await beside()).RecentFiles);
export const AtHand = later(async () => (await beside()).AtHand);
