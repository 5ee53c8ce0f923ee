export { type BoughtOption, optionsWith } from './optionsWith.ts';
export { type Buying, type BuyingLevel, type Purchase, type PurchasePlan, planBuying } from './planBuying.ts';
export { type BuyingTarget, type BuyingWish, targetOf } from './target.ts';
export type { Wheel } from './wheels.ts';
