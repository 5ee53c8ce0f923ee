import { optionChecks } from './checks/index.ts';
import { quantity } from './checks/quantity.ts';
import { driveKind } from './drives/index.ts';
import type { Build, Plan, SideName, Stage, Teeth } from './plan.ts';
import { type OpenPairs, quickStock } from './quickStock.ts';
import { float } from './ratio.ts';
import type { Candidate, Pair } from './search/index.ts';

/** The checks across the stages beside the one of stock. */
const OTHERS = optionChecks.filter((check) => check.worst === 'blocks' && check !== quantity);

/**
 * Tells of most options whether a check across the stages blocks them, without laying them out: from the turns of both pumps and from tables of
 * single pairs.
 *
 * @param open   every open stage, in the order of the problem
 * @param pumps  every set of pumps, likewise
 * @returns asked with a candidate: true, nothing blocks it and nothing has to be bought; false, something does; null, it has to be laid out
 * @source the checks themselves
 * @example quickRules(Bench 1 of the demo, its stage, its pumps)(23 driving 25 teeth)  // true
 */
export function quickRules(
  plan: Plan,
  open: readonly OpenPairs[],
  pumps: readonly Build['pumps'][],
): (candidate: Candidate) => boolean | null {
  const steepest = plan.stages.map((stage) => steepestOf(stage, open.find((one) => one.stage === stage)?.pairs ?? []));
  const sets = pumps.map((of) => OTHERS.map(({ passes }) => passes?.({ plan, pumps: of, steepest }) ?? (() => null)));
  const turnsOfA = turnsOf(plan, 'A', open);
  const turnsOfB = turnsOf(plan, 'B', open);
  const isStocked = quickStock(plan, open);
  return ({ pump, pairs }) => {
    const [a, b] = [turnsOfA(pairs), turnsOfB(pairs)];
    let sure = true;
    for (const passes of sets[pump] ?? []) {
      const passed = passes(a, b);
      if (passed === false) return false;
      sure &&= passed === true;
    }
    const stocked = isStocked(pairs);
    return stocked === false || sure ? stocked : null;
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

/** Turns of a pump for one of the motor, as a float. */
function turnsOf({ stages, sides }: Plan, side: SideName, open: readonly OpenPairs[]): (pairs: readonly number[]) => number {
  const { train } = sides[side];
  const isOfTrain = (stage: Stage): boolean => train.includes(stages.indexOf(stage));
  const turns = ({ kind }: Stage, driver: number, driven: number): number => float(driveKind(kind).turns(driver, driven));
  const fixed = stages
    .filter((stage) => isOfTrain(stage) && !stage.open)
    .reduce((product, stage) => product * turns(stage, stage.driver.teeth, stage.driven.teeth), 1);
  const tables = open.map(({ stage, pairs }) =>
    isOfTrain(stage) ? Float64Array.from(pairs, ({ driver, driven }) => turns(stage, driver, driven)) : null,
  );
  return (pairs) => {
    let product = fixed;
    for (let s = 0; s < tables.length; s++) product *= tables[s]?.[pairs[s] ?? 0] ?? 1;
    return product;
  };
}
