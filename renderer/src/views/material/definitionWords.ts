import { en } from '../../../../core/src/en.ts';
import type { LimitDefinition } from '../../../../core/src/mixRatio.ts';

/** What limits are of, as people read it; the shop file and lists keep the name of each. */
export const DEFINITION: Readonly<Record<LimitDefinition, string>> = {
  '% of B per A': en`% of B per A`,
  '% of A per B': en`% of A per B`,
  'points of B in the total': en`points of B in the total`,
  'parts of B': en`parts of B`,
  'index points': en`index points`,
};
