import { en } from './en.ts';
import type { Mounted, Ranked } from './layOut.ts';
import { ENDS, type Plan } from './plan.ts';
import { byCloseness, byWork, standingOf, type TimedStanding, timedStandingOf } from './standing.ts';
import { fittedPumps } from './train.ts';

export const ORDERS = ['closest', 'least work', 'trade-off'] as const;
export type Order = (typeof ORDERS)[number];

/** One line of the list. */
export interface ListedOption {
  readonly mounted: Mounted;
  /** Place among the closest; null for what a check blocks, and for what stands behind all the closest that are kept. */
  readonly rank: number | null;
  readonly blocked: boolean;
  /** What this one dominates of all that were found, closest first; the trade-off folds it away. */
  readonly dominated: readonly ListedOption[];
}

/** How many of the listed options are inside the limits; more may exist where all of them are and the list is cut. */
export interface InsideCount {
  readonly inside: number;
  readonly atLeast: boolean;
}

const line = (mounted: Mounted, rank: number | null): ListedOption => ({ mounted, rank, blocked: false, dominated: [] });
const blockedLine = (mounted: Mounted): ListedOption => ({ mounted, rank: null, blocked: true, dominated: [] });

/**
 * The options that were found, in the order somebody asks for.
 *
 * @param plan    the plan that was searched
 * @param ranked  what was found on it
 * @param order   `closest`: each blocked one where it would rank. `least work` and `trade-off`: inside before outside, then least work
 *   first, the blocked ones last; the trade-off lists what nothing dominates and holds the rest under it
 * @returns every listed and every blocked option once
 * @source closest: the order of the search; the other two: our choice
 * @example orderedOptions(plan, ranked, 'trade-off')[0]?.dominated.length  // 12
 */
export function orderedOptions(plan: Plan, ranked: Omit<Ranked<Mounted>, 'counts' | 'more'>, order: Order): readonly ListedOption[] {
  if (order === 'closest') return listedOptions(plan, ranked);
  const found = everyFound(plan, ranked);
  const lines = order === 'least work' ? [...found].sort(byWork).map((one) => one.line) : tradeOffLines(found, ranked.tradeOff);
  return [...lines, ...ranked.blocked.options.map(blockedLine)];
}

/** The options in the order of the search, each blocked one where it would rank. */
export function listedOptions(plan: Plan, { options, blocked }: Pick<Ranked<Mounted>, 'options' | 'blocked'>): readonly ListedOption[] {
  const lines: ListedOption[] = [];
  const waiting = blocked.options.map((mounted) => ({ mounted, standing: standingOf(plan, mounted) }));
  let next = 0;
  for (const [index, mounted] of options.entries()) {
    const standing = standingOf(plan, mounted);
    for (let one = waiting[next]; one !== undefined && byCloseness(one.standing, standing) < 0; one = waiting[next]) {
      lines.push(blockedLine(one.mounted));
      next += 1;
    }
    lines.push(line(mounted, index + 1));
  }
  return [...lines, ...waiting.slice(next).map(({ mounted }) => blockedLine(mounted))];
}

interface Found extends TimedStanding {
  readonly line: ListedOption;
}

/** The closest, the best for each number of parts and the trade-off, each option once, in the order of the search. */
function everyFound(plan: Plan, { options, best, tradeOff }: Pick<Ranked<Mounted>, 'options' | 'best' | 'tradeOff'>): readonly Found[] {
  const ranks = new Map(options.map((mounted, index) => [mountKey(mounted), index + 1]));
  const every = [...options, ...best.map(({ option }) => option), ...tradeOff];
  const once = new Map(every.map((mounted) => [mountKey(mounted), mounted]));
  return [...once]
    .map(([key, mounted]) => ({ ...timedStandingOf(plan, mounted), line: line(mounted, ranks.get(key) ?? null) }))
    .sort(byCloseness);
}

/** Whatever is dominated is so by the best placed of all that take no longer: it stands under that one. */
function tradeOffLines(found: readonly Found[], tradeOff: readonly Mounted[]): readonly ListedOption[] {
  const keys = new Set(tradeOff.map(mountKey));
  const front = found.filter((one) => keys.has(mountKey(one.line.mounted)));
  const under = new Map(front.map((one): [Found, ListedOption[]] => [one, []]));
  for (const one of found) {
    // the front comes closest first, so that the first which takes no longer is the best placed
    const above = front.find((other) => other.work_s.compare(one.work_s) <= 0);
    if (above !== undefined && above !== one) under.get(above)?.push(one.line);
  }
  return [...front].sort(byWork).map((one) => ({ ...one.line, dominated: under.get(one) ?? [] }));
}

/** What has to be said beside an order: what folding away means, and how far the list is exact where it is cut. */
export function orderNote(order: Order, more: boolean): string | null {
  if (order === 'least work') {
    return more ? en`The list is cut: all of the trade-off are in it, but others that take little time may be missing.` : null;
  }
  if (order === 'closest') return null;
  const meaning = en`Dominated, and so folded away, is an option beside which another takes no longer and ranks no worse: inside the limits before outside, then by off-ratio.`;
  return more ? en`${meaning} Whatever is not listed is dominated too.` : meaning;
}

/** How many of the options found are inside the limits. */
export function insideCount(plan: Plan, { options, more }: Pick<Ranked<Mounted>, 'options' | 'more'>): InsideCount {
  const inside = options.filter((mounted) => standingOf(plan, mounted).inside === true).length;
  return { inside, atLeast: more && inside === options.length };
}

/** What is fitted now, as the search names options. */
export function fittedMount(plan: Plan): Mounted {
  const pumps = fittedPumps(plan);
  return {
    pumps: { A: pumps.A.id, B: pumps.B.id },
    teeth: plan.stages.map(({ driver, driven }) => ({ driver: driver.teeth, driven: driven.teeth })),
  };
}

/** Two options that mount the same are the same option. */
export const sameMount = (a: Mounted, b: Mounted): boolean => mountKey(a) === mountKey(b);

const mountKey = ({ pumps, teeth }: Mounted): string =>
  JSON.stringify([pumps.A, pumps.B, ...teeth.flatMap((pair) => ENDS.map((end) => pair[end]))]);
