import { describe, expect, test } from 'vitest';
import { optionChecks } from '../../../core/src/checks/index.ts';
import { quantity } from '../../../core/src/checks/quantity.ts';
import { choicesOf } from '../../../core/src/choices.ts';
import type { Plan } from '../../../core/src/plan.ts';
import { PASSES } from '../../../core/src/quick/passes.ts';
import { quickChoices } from '../../../core/src/quick/quickChoices.ts';
import { quickRules } from '../../../core/src/quick/quickRules.ts';
import { Fraction, float, ratioOf } from '../../../core/src/ratio.ts';
import type { Candidate } from '../../../core/src/search/index.ts';
import { madeBPerA } from '../../../core/src/train.ts';
import { reachPlan } from '../../bench/reachShop.ts';
import { teethFrom } from '../search/racks.ts';
import { type Dice, diceOf } from '../search/randomProblem.ts';
import { demoPlan } from '../sheet/demoSheet.ts';

const SIZES = [...teethFrom(18, 25), 40];
const machines: readonly Plan[] = [
  demoPlan({ selection: { machine: 'bench-1', material: 'e12' } }),
  demoPlan({ selection: { machine: 'bench-2', material: 'u40' } }),
  reachPlan(2, SIZES),
  reachPlan(3, SIZES),
];

const given = <T>(value: T) => ({ known: true, value }) as const;
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

test('every check that blocks and looks across the stages is asked quickly too, stock by its table', () => {
  const blocking = optionChecks.filter(({ worst }) => worst === 'blocks').map(({ id }) => id);
  expect([quantity.id, ...Object.keys(PASSES)].sort()).toEqual(blocking.sort());
});

describe('what the rules say of an option quickly [slow twin: the option laid out, every check asked]', () => {
  test('the same on 50 random changes of each machine, and mostly without laying it out', () => {
    const told = new Map<boolean | null, number>();
    let beyond = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const dice = diceOf(seed);
      const machine = machines[seed % machines.length];
      if (machine === undefined) throw new Error('no machine');
      const plan = changedPlan(machine, dice);
      const choices = choicesOf(plan);
      const { stages, pumps } = choices.problem;
      const buildable = stages.map(({ pairs }) => [...pairs.keys()].filter((pair) => pairs[pair]?.failed === 0));
      if (buildable.some((pairs) => pairs.length === 0)) continue;
      const open = plan.stages.filter((stage) => stage.open).map((stage, s) => ({ stage, pairs: stages[s]?.pairs ?? [] }));
      const sets = pumps.map((_, pump) => choices.pumpsOf({ pump, pairs: [] }));
      const quick = quickRules(plan, open, sets);
      const { admit } = quickChoices(plan).rules(0);
      const relaxed = quickChoices(plan).rules(-1);
      for (let i = 0; i < 40; i++) {
        const candidate: Candidate = {
          pump: dice.below(pumps.length),
          pairs: buildable.map((pairs) => pairs[dice.below(pairs.length)] ?? 0),
        };
        const passes = choices.failures(candidate) === 0;
        const answer = quick.told(candidate);
        told.set(answer, (told.get(answer) ?? 0) + 1);
        if (answer !== null) expect([seed, i, answer]).toEqual([seed, i, passes]);
        if (answer === true) expect(choices.purchases(candidate)).toBe(0);
        const made = float(madeBPerA(plan, choices.pumpsOf(candidate), choices.teethOf(candidate)));
        const isWithin = quick.span.low <= made && made <= quick.span.high;
        beyond += Number(!isWithin);
        if (passes) expect([seed, i, isWithin]).toEqual([seed, i, true]);
        expect(admit(candidate)).toBe(passes ? choices.purchases(candidate) : null);
        expect(relaxed.admit(candidate)).toBe(choices.purchases(candidate));
      }
    }
    expect(beyond).toBeGreaterThan(100);
    expect(told.get(true)).toBeGreaterThan(300);
    expect(told.get(false)).toBeGreaterThan(300);
    expect(told.get(null)).toBeGreaterThan(300);
  });
  test('at the very edge of a pump speed and of a torque the option is laid out, and passes', () => {
    const [, , plan] = machines;
    if (plan === undefined) throw new Error('no machine');
    const choices = choicesOf(plan);
    const [first, second] = choices.problem.stages.map(({ pairs }) =>
      pairs.findIndex(({ driver, driven }) => driver === 40 && driven === 25),
    );
    const candidate = { pump: 0, pairs: [first ?? 0, second ?? 0] };
    const turns = ratioOf(40 * 40, 25 * 25);
    // at the slowest setting, 7.5 rpm at the motor, pump B turns exactly as fast as it may
    const fastest = turns.mul(new Fraction('7.5')).div(60);
    const [pump] = plan.sides.B.pumps;
    const at = (speedTo_rev_per_s: Fraction): Plan => ({
      ...plan,
      pieces: plan.pieces.map((piece) => ({ ...piece, quantity: 2 })),
      sides: { ...plan.sides, B: { ...plan.sides.B, pumps: [{ ...pump, speedTo_rev_per_s: given(speedTo_rev_per_s) }] } },
    });
    const under = fastest.mul(ratioOf(999_999_999_999_999, 10 ** 15));
    expect(quickChoices(at(fastest)).rules(0).admit(candidate)).toBe(0);
    expect(quickChoices(at(under)).rules(0).admit(candidate)).toBeNull();
  });
});
