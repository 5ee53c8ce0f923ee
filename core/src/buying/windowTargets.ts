import { type Fraction, float, ONE, ratioOf } from '../ratio.ts';
import { type Candidate, type Hooks, type InsideSearch, insideSearch, type SearchProblem } from '../search/index.ts';
import { madeBPerA } from '../train.ts';
import { type Cap, FLOAT_SLACK, within } from './cap.ts';
import type { Multisets } from './multisets.ts';
import type { Need } from './need.ts';
import type { Shop } from './shop.ts';

/** A wanted ratio that plans are held against. */
export interface WindowTarget {
  /** B per A. */
  readonly wanted: Fraction;
  /** Whether the rules across the stages are asked: without them a plan may seem to serve it better than it does. */
  readonly asked: boolean;
}

/** How far off targets are at best, by what has to be bought for it. */
export interface TargetOffs {
  /**
   * @param cap  what is off by more is left at Infinity
   * @param held 1 for each multiset that is of interest
   * @returns by the number of the multiset that is needed; good until the next call
   */
  readonly of: (target: WindowTarget, cap: Cap, held: Uint8Array, hooks: Hooks) => Float64Array;
  readonly upTo: (purchases: number) => TargetOffs;
}

/** Further off than any ratio of wheels. */
const ANY_OFF = ratioOf(10n ** 15n, 1);

/** @param most parts to buy */
export function targetOffs(shop: Shop, sets: Multisets, most: number): TargetOffs {
  const { problem } = shop.choices;
  const search = insideSearch(problem, (choice) => shop.needs.lacking(choice).length, most);
  return among(shop, sets, {
    search,
    log: logOf(problem),
    ofPairs: surelyNeeded(shop),
    offs: new Float64Array(sets.count),
    purchases: most,
  });
}

interface Known {
  readonly search: InsideSearch;
  readonly log: (candidate: Candidate) => number;
  /** Of each pair of each stage what is surely needed with it; null where bores leave a choice. */
  readonly ofPairs: readonly (readonly (Need | null)[])[];
  readonly offs: Float64Array;
  readonly purchases: number;
}

function among(shop: Shop, sets: Multisets, known: Known): TargetOffs {
  const { choices, needs, plan } = shop;
  const { search, log, ofPairs, offs, purchases } = known;
  /** 1 where a pair lacks nothing that is not held: most candidates are done with by a look at this. */
  const pairsHeld = (held: Uint8Array): readonly Uint8Array[] =>
    ofPairs.map((needs) =>
      Uint8Array.from(needs, (need) => {
        if (need === null) return 1;
        return need.length > purchases ? 0 : (held[sets.places[sets.within(need) - 1] ?? 0] ?? 0);
      }),
    );
  const exactOff = (candidate: Candidate, wanted: Fraction): Fraction =>
    madeBPerA(plan, choices.pumpsOf(candidate), choices.teethOf(candidate)).div(wanted).sub(ONE).abs();
  return {
    upTo: (less) => among(shop, sets, { ...known, search: search.upTo(less), purchases: less }),
    of: ({ wanted, asked }, cap, held, { cancelled }) => {
      offs.fill(Infinity);
      const logWanted = Math.log(float(wanted));
      const beaten = cap.strict && cap.offRatio !== null ? float(cap.offRatio) - FLOAT_SLACK : Infinity;
      const high = cap.offRatio ?? ANY_OFF;
      const limits = { low: high.compare(ONE) < 0 ? high.neg() : ONE.neg(), high };
      const ofStages = pairsHeld(held);
      const take = (candidate: Candidate): boolean => {
        const { pairs } = candidate;
        for (let s = 0; s < pairs.length; s++) if (ofStages[s]?.[pairs[s] ?? -1] === 0) return false;
        const off = Math.abs(Math.expm1(log(candidate) - logWanted));
        let runs: boolean | null = asked ? null : true;
        for (const need of needs.of(candidate, () => choices.teethOf(candidate))) {
          if (need.length > purchases) continue;
          const subsets = sets.within(need);
          const place = sets.places[subsets - 1] ?? 0;
          if (held[place] === 0) continue;
          let known = Infinity;
          for (let k = 0; k < subsets; k++) known = Math.min(known, offs[sets.places[k] ?? 0] ?? Infinity);
          if (known <= off || (off >= beaten && !within(cap, exactOff(candidate, wanted)))) continue;
          // the rules are slow to ask, so only of what would say something new
          runs ??= choices.runs(candidate);
          if (runs) offs[place] = off;
        }
        return false;
      };
      search.each(wanted, limits, take, cancelled === undefined ? {} : { cancelled });
      return offs;
    },
  };
}

const surelyNeeded = ({ choices, needs }: Shop): readonly (readonly (Need | null)[])[] =>
  choices.problem.stages.map(({ pairs }) =>
    pairs.map((pair) => {
      const ways = needs.lacking(pair);
      return ways.some((parts) => parts.length !== 1) ? null : ways.flat().sort((a, b) => a - b);
    }),
  );

/** ln of B per A as a candidate makes it. */
function logOf({ stages, pumps, fixed }: SearchProblem): (candidate: Candidate) => number {
  const ofPumps = pumps.map(({ ratio }) => Math.log(float(ratio.mul(fixed))));
  const ofPairs = stages.map(({ effect, pairs }) => {
    const sign = effect === 'B' ? 1 : effect === 'A' ? -1 : 0;
    return Float64Array.from(pairs, ({ driver, driven }) => sign * Math.log(driver / driven));
  });
  return ({ pump, pairs }) => {
    let sum = ofPumps[pump] ?? 0;
    for (let s = 0; s < pairs.length; s++) sum += ofPairs[s]?.[pairs[s] ?? -1] ?? 0;
    return sum;
  };
}
