export { bestPerChange, type LevelHooks } from './bestPerChange.ts';
export { type Counts, countOptions } from './count.ts';
export { extremes } from './extremes.ts';
export { type Found, findOptions } from './findOptions.ts';
export { type InsideSearch, insideSearch, type OffLimits } from './insideSearch.ts';
export { partOf } from './pace.ts';
export {
  Cancelled,
  type Candidate,
  type Effect,
  type Hooks,
  type OpenStage,
  type Option,
  type Pair,
  type PumpPair,
  type RatioSpan,
  type Rules,
  type SearchProblem,
  withoutFailures,
} from './problem.ts';
export { type Gap, gapBetween, type ReachWindow } from './reachGap.ts';
export { listReach, type ReachList } from './reachList.ts';
export { type SweptReach, sweepReach } from './reachSweep.ts';
export { placesIn, reachWithin, type Served } from './reachWithin.ts';
export { type Slide, type SlidRatio, slideOf } from './slide.ts';
export { tradeOff } from './tradeOff.ts';
export { fewestRelaxations, type ReasonEffort, type ReasonHooks, type Relaxations } from './whyNot.ts';
