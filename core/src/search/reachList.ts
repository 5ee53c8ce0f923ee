import { type Fraction, ONE } from '../ratio.ts';
import { expander } from './expand.ts';
import { optionsOf } from './findOptions.ts';
import { pacedAdmit, paceOf } from './pace.ts';
import type { Hooks, Option, Rules, SearchProblem } from './problem.ts';
import { type AllRatios, allRatios, MOST_PRODUCTS, type MostProducts, type Take } from './reachProducts.ts';
import { shortlist } from './shortlist.ts';
import { buildableSpace, exactY, type Space } from './space.ts';
import { type Admit, offerTo } from './tiedOptions.ts';
import { DEFAULT_TUNING } from './tuning.ts';

/** Every ratio that can be built, each once, ascending. */
export interface ReachList {
  /** ln of B per A, as computed; true within `slack` */
  readonly log: Float64Array;
  readonly slack: number;
  /** B per A, exact */
  readonly ratio: (index: number) => Fraction;
  /** the first option that makes it, in the order of the ranking */
  readonly firstOption: (index: number) => Option | null;
}

/** The space of a reach: the wanted ratio is 1, so that y is B per A. Null where a factor has no buildable choice. */
export const reachSpace = (problem: SearchProblem): Space | null =>
  buildableSpace({ ...problem, wanted: ONE, limits: null }, DEFAULT_TUNING);

const NOTHING: ReachList = { log: new Float64Array(0), slack: 0, ratio: () => ONE, firstOption: () => null };

/**
 * Lists every ratio that can be built.
 *
 * @param problem only choices whose `failed` is 0 take part; what is wanted, and its limits, play no part
 * @param rules   asked for options of every ratio until one may be listed
 * @param hooks   progress and cancelling
 * @returns null where there are too many
 * @throws Cancelled as `findOptions`
 * @source plain enumeration, gathered by exact ratio
 * @example listReach(problem, { admit: () => 0 })?.log.length  // 4
 */
export function listReach(problem: SearchProblem, rules: Rules, hooks: Hooks = {}, most: MostProducts = MOST_PRODUCTS): ReachList | null {
  const space = reachSpace(problem);
  if (space === null) return NOTHING;
  const pace = paceOf(hooks);
  const all = allRatios(space, most, pace);
  if (all === null) return null;
  const admit = pacedAdmit(rules, pace.check);
  const { low, high } = logSpan(rules, space.slack);
  const isBuildable = buildableOf(space, admit);
  const pass = pace.pass();
  const places = new Int32Array(all.log.length);
  let size = 0;
  for (let index = 0; index < all.log.length; index++) {
    if (index % 1024 === 0) pass(index / all.log.length);
    const log = all.log[index] ?? 0;
    if (log < low || log > high) continue;
    if (isBuildable((take) => all.every(index, take))) places[size++] = index;
  }
  pass(1);
  return listOf(space, all, places.slice(0, size), (candidate) => rules.admit(candidate));
}

function listOf(space: Space, all: AllRatios, places: Int32Array, admit: Admit): ReachList {
  const log = new Float64Array(places.length);
  for (let i = 0; i < places.length; i++) log[i] = all.log[places[i] ?? 0] ?? 0;
  const known = new Map<number, Fraction>();
  const ratio = (index: number): Fraction => {
    let exact = known.get(index);
    if (exact === undefined) {
      let groups = new Int32Array(0);
      all.every(places[index] ?? 0, (one) => {
        groups = one.slice();
        return true;
      });
      exact = exactY(space, groups);
      known.set(index, exact);
    }
    return exact;
  };
  const toOption = optionsOf(space.problem);
  return {
    log,
    slack: space.slack,
    ratio,
    firstOption: (index) => {
      const first = shortlist(space, 1);
      const offer = offerTo(first, space, { y: () => ratio(index), inside: true }, admit);
      all.every(places[index] ?? 0, (groups) => {
        offer(groups);
        return false;
      });
      const [entry] = first.entries();
      return entry ? toOption(entry) : null;
    },
  };
}

/** Logarithms beyond which the rules let nothing through. */
export const logSpan = ({ span }: Rules, slack: number) =>
  span ? { low: Math.log(span.low) - 4 * slack, high: Math.log(span.high) + 4 * slack } : { low: -Infinity, high: Infinity };

/** Whether the rules across stages let any option of a ratio through; `every` gives its ways one after another. */
export type Buildable = (every: (take: Take) => boolean) => boolean;

export function buildableOf(space: Space, admit: Admit): Buildable {
  let found = false;
  const expand = expander(space, {
    // fewer than none: no more are wanted
    mostChanged: () => (found ? -1 : Infinity),
    take: (candidate) => {
      if (!found) found = admit(candidate) !== null;
    },
  });
  const take: Take = (groups) => {
    expand(groups);
    return found;
  };
  return (every) => {
    found = false;
    every(take);
    return found;
  };
}
