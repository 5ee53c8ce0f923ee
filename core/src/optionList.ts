import type { Mounted, Ranked } from './answer.ts';
import { offRatio } from './mixRatio.ts';
import { insideLimits } from './option.ts';
import { ENDS, type Plan, type SideName } from './plan.ts';
import { assignPieces } from './rack.ts';
import type { Fraction } from './ratio.ts';
import { fittedPumps, madeBPerA } from './train.ts';

/** One line of the list; what a check blocks has no rank. */
export interface ListedOption {
  readonly mounted: Mounted;
  readonly rank: number | null;
}

/** How many of the listed options are inside the limits; more may exist where all of them are and the list is cut. */
export interface InsideCount {
  readonly inside: number;
  readonly atLeast: boolean;
}

/** What the order of the search looks at, in its order. */
interface Standing {
  readonly inside: boolean | null;
  readonly off: Fraction;
  readonly numbers: readonly number[];
}

/**
 * The options in their order, each blocked one where it would rank.
 *
 * @param plan    the plan that was searched
 * @param ranked  what was found on it
 * @returns every listed and every blocked option once
 * @source the order of the search: inside first, then the smaller off-ratio, fewer parts, fewer purchases, pumps and teeth as in the file
 */
export function listedOptions(plan: Plan, { options, blocked }: Pick<Ranked<Mounted>, 'options' | 'blocked'>): readonly ListedOption[] {
  const lines: ListedOption[] = [];
  const waiting = blocked.options.map((mounted) => ({ mounted, standing: standingOf(plan, mounted) }));
  let next = 0;
  for (const [index, mounted] of options.entries()) {
    const standing = standingOf(plan, mounted);
    for (let one = waiting[next]; one !== undefined && order(one.standing, standing) < 0; one = waiting[next]) {
      lines.push({ mounted: one.mounted, rank: null });
      next += 1;
    }
    lines.push({ mounted, rank: index + 1 });
  }
  return [...lines, ...waiting.slice(next).map(({ mounted }) => ({ mounted, rank: null }))];
}

/** How many of the options found are inside the limits. */
export function insideCount(plan: Plan, { options, more }: Pick<Ranked<Mounted>, 'options' | 'more'>): InsideCount {
  const inside = options.filter((mounted) => insideOf(plan, mounted).inside === true).length;
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
export function sameMount(a: Mounted, b: Mounted): boolean {
  return (
    a.pumps.A === b.pumps.A &&
    a.pumps.B === b.pumps.B &&
    a.teeth.length === b.teeth.length &&
    a.teeth.every((pair, index) => ENDS.every((end) => pair[end] === b.teeth[index]?.[end]))
  );
}

function order(a: Standing, b: Standing): number {
  if (a.inside !== b.inside) return a.inside === true ? -1 : 1;
  const closer = a.off.compare(b.off);
  if (closer !== 0) return closer;
  const apart = a.numbers.findIndex((number, index) => number !== b.numbers[index]);
  return apart < 0 ? 0 : (a.numbers[apart] ?? 0) - (b.numbers[apart] ?? 0);
}

function standingOf(plan: Plan, mounted: Mounted): Standing {
  const { teeth, pumps } = mounted;
  const { inside, e } = insideOf(plan, mounted);
  const fitted = fittedMount(plan);
  const changedPumps = Number(pumps.A !== fitted.pumps.A) + Number(pumps.B !== fitted.pumps.B);
  const changed = teeth.reduce(
    (sum, pair, index) => sum + ENDS.filter((end) => pair[end] !== fitted.teeth[index]?.[end]).length,
    changedPumps,
  );
  return {
    inside,
    off: e.abs(),
    numbers: [
      changed,
      assignPieces(plan, teeth).purchases,
      pumpIndex(plan, 'A', pumps.A),
      pumpIndex(plan, 'B', pumps.B),
      ...teeth.flatMap((pair) => ENDS.map((end) => pair[end])),
    ],
  };
}

const pumpIndex = (plan: Plan, side: SideName, id: string): number => plan.sides[side].pumps.findIndex((pump) => pump.id === id);

function insideOf(plan: Plan, { pumps, teeth }: Mounted): { readonly e: Fraction; readonly inside: boolean | null } {
  const pump = (side: SideName) => {
    const found = plan.sides[side].pumps[pumpIndex(plan, side, pumps[side])];
    if (found === undefined) throw new RangeError(`listedOptions: side ${side} has no pump ${pumps[side]}`);
    return found;
  };
  const e = offRatio(madeBPerA(plan, { A: pump('A'), B: pump('B') }, teeth), plan.mix.wantedBPerA);
  return { e, inside: insideLimits(e, plan.mix.limits) };
}
