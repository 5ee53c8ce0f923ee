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
import { changedBy, given, machines } from './changedPlan.ts';

test('every check that blocks and looks across the stages is asked quickly too, stock by its table', () => {
  const blocking = optionChecks.filter(({ worst }) => worst === 'blocks').map(({ id }) => id);
  expect([quantity.id, ...Object.keys(PASSES)].sort()).toEqual(blocking.sort());
});

describe('what the rules say of an option quickly [slow twin: the option laid out, every check asked]', () => {
  test('the same on 50 random changes of each machine, and mostly without laying it out', () => {
    const told = new Map<boolean | null, number>();
    let beyond = 0;
    for (let seed = 1; seed <= 200; seed++) {
      const { plan, dice } = changedBy(seed);
      const choices = choicesOf(plan);
      const { stages, pumps } = choices.problem;
      const buildable = stages.map(({ pairs }) => [...pairs.keys()].filter((pair) => pairs[pair]?.failed === 0));
      if (buildable.some((pairs) => pairs.length === 0)) continue;
      const open = plan.stages.filter((stage) => stage.open).map((stage, s) => ({ stage, pairs: stages[s]?.pairs ?? [] }));
      const sets = pumps.map((_, pump) => choices.pumpsOf({ pump, pairs: [] }));
      const quick = quickRules(plan, open, sets);
      const { admit } = quickChoices(plan).rules;
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
      }
    }
    expect(beyond).toBeGreaterThan(100);
    expect(told.get(true)).toBeGreaterThan(300);
    expect(told.get(false)).toBeGreaterThan(300);
    expect(told.get(null)).toBeGreaterThan(300);
  });
  test('at the very edge of a pump speed and of a torque the option is laid out, and passes', () => {
    const [, , plan] = machines;
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
    expect(quickChoices(at(fastest)).rules.admit(candidate)).toBe(0);
    expect(quickChoices(at(under)).rules.admit(candidate)).toBeNull();
  });
});
