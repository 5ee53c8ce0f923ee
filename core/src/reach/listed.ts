import { ONE } from '../ratio.ts';
import { Cancelled, type Hooks, type Option, placesIn, type ReachList } from '../search/index.ts';
import { windowInBPerA } from './aPerB.ts';
import { binned } from './bins.ts';
import { LISTED_RATIOS, type Reach, type ReachRatio, type ReachWish } from './figures.ts';

/**
 * What only a list can say of a window: how many ratios, which, and where they are dense.
 *
 * Ratios that were laid out once are kept, so that a window which moves a little asks only for those that come in.
 *
 * @param toRatio what a ratio's first option is told as
 * @returns asked with one window after another; throws Cancelled when asked to stop
 * @source the list
 * @example listedIn(list of 6/7 to 14/3, toRatio)({ low: 1, high: 5, tolerance: 2 %, bins: 40 }, {}).distinct  // 191
 */
export function listedIn(
  list: ReachList,
  toRatio: (option: Option) => ReachRatio,
): (wish: ReachWish, hooks: Hooks) => Pick<Reach, 'distinct' | 'ratios' | 'perBin'> {
  const known = new Map<number, ReachRatio | null>();
  const ratioAt = (index: number): ReachRatio | null => {
    let ratio = known.get(index);
    if (ratio === undefined) {
      const option = list.firstOption(index);
      ratio = option && toRatio(option);
      known.set(index, ratio);
    }
    return ratio;
  };
  return (wish, { progress, cancelled }) => {
    const { from, to } = placesIn(list, windowInBPerA(wish));
    const ratios: ReachRatio[] = [];
    for (let index = to - 1; index >= from && to - from <= LISTED_RATIOS; index--) {
      if (cancelled?.()) throw new Cancelled();
      const ratio = ratioAt(index);
      if (ratio) ratios.push(ratio);
      progress?.(ratios.length / (to - from));
    }
    const { low, high, bins } = wish;
    const perBin = binned(list.log.subarray(from, to), ONE.div(high), ONE.div(low), bins).reverse();
    return { distinct: to - from, ratios: to - from > LISTED_RATIOS ? null : ratios, perBin };
  };
}
