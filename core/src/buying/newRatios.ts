import { type Fraction, ONE } from '../ratio.ts';
import { type Candidate, type Hooks, insideSearch, type SearchProblem } from '../search/index.ts';
import type { Need } from './need.ts';
import type { Shop } from './shop.ts';

/** Ratios that purchases bring, each by its place in one ascending list. */
export interface NewRatios {
  /** B per A, ascending, each once. */
  readonly allRatios: readonly Fraction[];
  /** What just these wheels bring together, not fewer of them; as places in `allRatios`, ascending. */
  readonly of: (need: Need) => readonly number[];
  /** Every choice of wheels that brings any. */
  readonly needs: readonly Need[];
}

/**
 * Every ratio strictly between two that becomes buildable with up to so many wheels bought.
 *
 * @param most    wheels that may be bought
 * @param between B per A, 0 < low < high
 * @throws Cancelled when asked to stop
 * @source the search's own candidates and rules, by what each lacks
 */
export function newRatios(
  { choices, needs }: Shop,
  most: number,
  { low, high }: { readonly low: Fraction; readonly high: Fraction },
  hooks: Hooks,
): NewRatios {
  const found = new Map<string, { readonly need: Need; readonly ratios: Map<string, Fraction> }>();
  const take = (candidate: Candidate): boolean => {
    const ratio = ratioMade(choices.problem, candidate);
    if (ratio.compare(low) <= 0 || ratio.compare(high) >= 0) return false;
    const name = ratio.toFraction();
    const fresh = needs
      .of(candidate, () => choices.teethOf(candidate))
      .filter((need) => need.length > 0 && need.length <= most && found.get(need.join())?.ratios.has(name) !== true);
    // the rules are slow to ask, so only of what would say something new
    if (fresh.length === 0 || !choices.runs(candidate)) return false;
    for (const need of fresh) {
      const known = found.get(need.join()) ?? { need, ratios: new Map<string, Fraction>() };
      found.set(need.join(), known);
      known.ratios.set(name, ratio);
    }
    return false;
  };
  insideSearch(choices.problem, (choice) => needs.lacking(choice).length, most).each(
    low,
    { low: low.sub(low), high: high.div(low).sub(ONE) },
    take,
    hooks,
  );
  const all = [...found.values()];
  const ratios = [...new Map(all.flatMap((one) => [...one.ratios])).values()].sort((a, b) => a.compare(b));
  const places = new Map(ratios.map((ratio, place) => [ratio.toFraction(), place]));
  const of = new Map(
    all.map((one) => [one.need.join(), [...one.ratios.keys()].flatMap((name) => places.get(name) ?? []).sort((a, b) => a - b)]),
  );
  return { allRatios: ratios, of: (need) => of.get(need.join()) ?? [], needs: all.map(({ need }) => need) };
}

function ratioMade({ fixed, pumps, stages }: SearchProblem, { pump, pairs }: Candidate): Fraction {
  const pumped = fixed.mul(pumps[pump]?.ratio ?? ONE);
  return stages.reduce((product, { effect, pairs: all }, s) => {
    const pair = all[pairs[s] ?? -1];
    if (pair === undefined || effect === 'none') return product;
    return effect === 'B' ? product.mul(pair.driver).div(pair.driven) : product.mul(pair.driven).div(pair.driver);
  }, pumped);
}
