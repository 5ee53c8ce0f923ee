export { bestPerChange, type LevelHooks } from './bestPerChange.ts';
export { type Counts, countOptions } from './count.ts';
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
  type Rules,
  type SearchProblem,
  withoutFailures,
} from './problem.ts';
export { type Slide, type SlidRatio, slideOf } from './slide.ts';
export { tradeOff } from './tradeOff.ts';
export { fewestRelaxations, type ReasonHooks } from './whyNot.ts';
