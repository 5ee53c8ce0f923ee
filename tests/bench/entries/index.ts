import { buying } from './buying.ts';
import { buyingWindow } from './buyingWindow.ts';
import { constrained } from './constrained.ts';
import { doubling } from './doubling.ts';
import type { Entry } from './entry.ts';
import { firstSearch } from './firstSearch.ts';
import { fourGears } from './fourGears.ts';
import { hardTargets } from './hardTargets.ts';
import { ladder } from './ladder.ts';
import { memory } from './memory.ts';
import { perChange } from './perChange.ts';
import { python } from './python.ts';
import { quantity } from './quantity.ts';
import { ratioCheck } from './ratioCheck.ts';
import { reach } from './reach.ts';
import { reachMachine } from './reachMachine.ts';
import { slide } from './slide.ts';
import { whyNot } from './whyNot.ts';

/** In the order of running: the first search of all comes before anything has warmed up. */
export const entries: readonly Entry[] = [
  firstSearch,
  fourGears,
  ...ladder,
  ...hardTargets,
  quantity,
  constrained,
  perChange,
  whyNot,
  slide,
  reach,
  reachMachine,
  buying,
  buyingWindow,
  ratioCheck,
  doubling,
  memory,
  python,
];
