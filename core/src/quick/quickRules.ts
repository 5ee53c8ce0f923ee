import { driveKind } from '../drives/index.ts';
import type { Build, Plan, SideName, Stage, Teeth } from '../plan.ts';
import { float } from '../ratio.ts';
import type { Candidate, Pair, RatioSpan } from '../search/index.ts';
import { pumpRatio } from '../train.ts';
import { PASSES } from './passes.ts';
import { type OpenPairs, quickStock } from './quickStock.ts';
import { ratioSpan } from './ratioSpan.ts';

/** What can be said of options without laying them out. */
export interface QuickRules {
  /** True: nothing blocks it and nothing has to be bought. False: something blocks it. Null: it has to be laid out. */
  readonly told: (candidate: Candidate) => boolean | null;
  /** B per A: whatever is made beyond is blocked. */
  readonly span: RatioSpan;
}

/**
 * Tells of most options whether a check across the stages blocks them, without laying them out: from the turns of both pumps and from
 * tables of single pairs.
 *
 * @param open   every open stage, in the order of the problem
 * @param pumps  every set of pumps, likewise; at least one
 * @source the checks themselves
 * @example quickRules(Bench 1 of the demo, its stage, its pumps).told(23 driving 25 teeth)  // true
 */
export function quickRules(plan: Plan, open: readonly OpenPairs[], pumps: readonly Build['pumps'][]): QuickRules {
  const steepest = plan.stages.map((stage) => steepestOf(stage, open.find((one) => one.stage === stage)?.pairs ?? []));
  const sets = pumps.map((of) => Object.values(PASSES).map((passes) => passes({ plan, pumps: of, steepest })));
  const [A, B] = [turnsOf(plan, 'A', open), turnsOf(plan, 'B', open)];
  const isStocked = quickStock(plan, open);
  const spans = sets.map((checks, set) => {
    const mayPass = (a: number, b: number): boolean => checks.every((passes) => passes(a, b) !== false);
    const of = pumps[set];
    return ratioSpan(mayPass, A.range, B.range, of ? float(pumpRatio(of)) : 1);
  });
  return {
    told: ({ pump, pairs }) => {
      const [a, b] = [A.turns(pairs), B.turns(pairs)];
      let sure = true;
      for (const passes of sets[pump] ?? []) {
        const passed = passes(a, b);
        if (passed === false) return false;
        sure &&= passed === true;
      }
      const stocked = isStocked(pairs);
      return stocked === false || sure ? stocked : null;
    },
    span: { low: Math.min(...spans.map(({ low }) => low)), high: Math.max(...spans.map(({ high }) => high)) },
  };
}

/** A stage whose choices all fail takes no part in any option. */
function steepestOf({ driver, driven }: Stage, pairs: readonly Pair[]): Teeth {
  const buildable = pairs.filter(({ failed }) => failed === 0);
  if (buildable.length === 0) return { driver: driver.teeth, driven: driven.teeth };
  return {
    driver: buildable.reduce((most, pair) => Math.max(most, pair.driver), 0),
    driven: buildable.reduce((least, pair) => Math.min(least, pair.driven), Infinity),
  };
}

interface Turns {
  readonly turns: (pairs: readonly number[]) => number;
  /** Of all pairs that can be built. */
  readonly range: RatioSpan;
}

/** Turns of a pump for one of the motor, as floats. */
function turnsOf({ stages, sides }: Plan, side: SideName, open: readonly OpenPairs[]): Turns {
  const { train } = sides[side];
  const isOfTrain = (stage: Stage): boolean => train.includes(stages.indexOf(stage));
  const turns = ({ kind }: Stage, driver: number, driven: number): number => float(driveKind(kind).turns(driver, driven));
  const fixed = stages
    .filter((stage) => isOfTrain(stage) && !stage.open)
    .reduce((product, stage) => product * turns(stage, stage.driver.teeth, stage.driven.teeth), 1);
  const tables = open.map(({ stage, pairs }) =>
    isOfTrain(stage) ? Float64Array.from(pairs, ({ driver, driven }) => turns(stage, driver, driven)) : null,
  );
  const range = { low: fixed, high: fixed };
  for (const [s, table] of tables.entries()) {
    const built = table?.filter((_, pair) => open[s]?.pairs[pair]?.failed === 0) ?? new Float64Array(0);
    if (built.length === 0) continue;
    range.low *= built.reduce((least, one) => Math.min(least, one), Infinity);
    range.high *= built.reduce((most, one) => Math.max(most, one), 0);
  }
  return {
    range,
    turns: (pairs) => {
      let product = fixed;
      for (let s = 0; s < tables.length; s++) product *= tables[s]?.[pairs[s] ?? 0] ?? 1;
      return product;
    },
  };
}
