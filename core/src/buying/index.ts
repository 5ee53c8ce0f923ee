export type { CheapestPlans } from './cheapest.ts';
export { type GapCloser, type GapClosers, gapClosers } from './gapClosers.ts';
export type { RatioWindow } from './openRatios.ts';
export { type BoughtOption, type LaidPlan, layPlan, optionsWith } from './optionsWith.ts';
export { type Buying, type BuyingLevel, bestLevel, planBuying } from './planBuying.ts';
export { planWindow, type WindowBuying } from './planWindow.ts';
export type { Purchase, PurchasePlan } from './purchasePlan.ts';
export { type BuyingTarget, type BuyingWish, targetOf } from './target.ts';
export type { Wheel } from './wheels.ts';
