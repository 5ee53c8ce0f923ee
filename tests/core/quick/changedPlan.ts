import type { Plan } from '../../../core/src/plan.ts';
import { ratioOf } from '../../../core/src/ratio.ts';
import { reachPlan } from '../../bench/reachShop.ts';
import { teethFrom } from '../search/racks.ts';
import { type Dice, diceOf } from '../search/randomProblem.ts';
import { demoPlan } from '../sheet/demoSheet.ts';

const SIZES = [...teethFrom(18, 25), 40];
export const machines: readonly [Plan, Plan, Plan, Plan] = [
  demoPlan({ selection: { machine: 'bench-1', material: 'e12' } }),
  demoPlan({ selection: { machine: 'bench-2', material: 'u40' } }),
  reachPlan(2, SIZES),
  reachPlan(3, SIZES),
];

export const given = <T>(value: T) => ({ known: true, value }) as const;
const NOT_GIVEN = { known: false } as const;

/** Tighter or looser in every way that a rule across the stages looks at. */
function changedPlan(plan: Plan, dice: Dice): Plan {
  const perhaps = <T>(value: T) => (dice.chance(15) ? NOT_GIVEN : given(value));
  const bores = [ratioOf(25, 1000), ratioOf(20, 1000)] as const;
  const bore = () => (dice.chance(20) ? NOT_GIVEN : given(dice.pick([bores[0], ...(dice.chance(50) ? bores : [])])));
  const side = (of: Plan['sides']['A']): Plan['sides']['A'] => {
    const pump = (one: (typeof of.pumps)[0]) => ({
      ...one,
      speedFrom_rev_per_s: perhaps(ratioOf(dice.between(1, 60), 60)),
      speedTo_rev_per_s: perhaps(ratioOf(dice.between(60, 240), 60)),
      pressureLimit_Pa: perhaps(ratioOf(dice.between(15, 200) * 100_000, 1)),
    });
    const [first, ...others] = of.pumps;
    return {
      ...of,
      pumps: [pump(first), ...others.map(pump)],
      pressure_Pa: perhaps(ratioOf(dice.between(5, 300) * 100_000, dice.between(1, 10))),
      mechanicalEfficiency: perhaps(ratioOf(dice.between(6, 10), 10)),
    };
  };
  const slot = (of: Plan['stages'][0]['driver']) => ({ ...of, bore_m: bore() });
  return {
    ...plan,
    motor: { ...plan.motor, ratedTorque_N_m: perhaps(ratioOf(dice.between(1, 80), 1)) },
    serviceFactor: perhaps(ratioOf(dice.between(10, 40), 10)),
    sides: { A: side(plan.sides.A), B: side(plan.sides.B) },
    stages: plan.stages.map((stage) => ({ ...stage, driver: slot(stage.driver), driven: slot(stage.driven) })),
    pieces: plan.pieces.map((piece) => ({ ...piece, quantity: dice.between(0, 2), bore_m: bore() })),
    choice: dice.chance(30) ? { ...plan.choice, wheels: 'rack and purchases', purchases: dice.between(1, 2) } : plan.choice,
  };
}

/** One of the machines after another, each changed by its seed. */
export function changedBy(seed: number): { readonly plan: Plan; readonly dice: Dice } {
  const dice = diceOf(seed);
  return { plan: changedPlan(machines[seed % machines.length] ?? machines[0], dice), dice };
}
