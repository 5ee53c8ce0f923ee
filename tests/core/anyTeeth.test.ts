import { describe, expect, test } from 'vitest';
import { BLOCKS_ANY_TEETH } from '../../core/src/anyTeeth.ts';
import { optionChecks } from '../../core/src/checks/index.ts';
import { quantity } from '../../core/src/checks/quantity.ts';
import { CHECK_BITS, checksIn, choicesOf } from '../../core/src/choices.ts';
import type { Plan, Pump } from '../../core/src/plan.ts';
import { ratioOf } from '../../core/src/ratio.ts';
import { fewestRelaxations, findOptions } from '../../core/src/search/index.ts';
import { changedBy, given, machines } from './quick/changedPlan.ts';

test('every check that blocks and looks across the stages is asked at the ends of the teeth, but for the one of stock', () => {
  const blocking = optionChecks.filter(({ worst }) => worst === 'blocks').map(({ id }) => id);
  expect([quantity.id, ...Object.keys(BLOCKS_ANY_TEETH)].sort()).toEqual(blocking.sort());
});

/** The same with pumps on side A that want so many turns a minute at least. */
function faster({ sides, ...plan }: Plan, least_rpm: number): Plan {
  const wanting = (pump: Pump): Pump => ({ ...pump, speedFrom_rev_per_s: given(ratioOf(least_rpm, 60)) });
  const [first, ...others] = sides.A.pumps;
  return { ...plan, sides: { ...sides, A: { ...sides.A, pumps: [wanting(first), ...others.map(wanting)] } } };
}

/** The same with both sides working against so many bar. */
function pressedBy({ sides, ...plan }: Plan, pressure_bar: number): Plan {
  const pressure_Pa = given(ratioOf(pressure_bar * 100_000, 1));
  return { ...plan, sides: { A: { ...sides.A, pressure_Pa }, B: { ...sides.B, pressure_Pa } } };
}

describe('what a set of pumps fails whatever the teeth', () => {
  test('every option with it fails, on 40 random changes of each machine [slow twin: the option laid out, every check asked]', () => {
    const blocked = new Map<string, number>();
    for (let seed = 1; seed <= 160; seed++) {
      const { plan: changed, dice } = changedBy(seed);
      const loaded = dice.chance(40) ? pressedBy(changed, dice.between(100, 3000)) : changed;
      const plan = dice.chance(40) ? faster(loaded, dice.between(80, 500)) : loaded;
      const { problem, failures } = choicesOf(plan);
      for (const [pump, { failed }] of problem.pumps.entries()) {
        for (const id of checksIn(failed)) blocked.set(id, (blocked.get(id) ?? 0) + 1);
        for (let i = 0; i < 8; i++) {
          const pairs = problem.stages.map(({ pairs }) => dice.below(pairs.length));
          expect([seed, pump, pairs, failures({ pump, pairs }) & failed]).toEqual([seed, pump, pairs, failed]);
        }
      }
    }
    for (const id of Object.keys(BLOCKS_ANY_TEETH)) expect([id, (blocked.get(id) ?? 0) > 5]).toEqual([id, true]);
  });

  const [, , two] = machines;
  const pressed = (bar: number, limit: number): Plan => {
    const [pump] = two.sides.B.pumps;
    const pumps = [{ ...pump, pressureLimit_Pa: given(ratioOf(limit * 100_000, 1)) }] as const;
    return { ...two, sides: { ...two.sides, B: { ...two.sides.B, pumps, pressure_Pa: given(ratioOf(bar * 100_000, 1)) } } };
  };
  test('what it just stands is not blocked [the definition of a limit]', () => {
    expect(choicesOf(pressed(30, 30)).problem.pumps.map(({ failed }) => checksIn(failed))).toEqual([[]]);
    expect(choicesOf(pressed(31, 30)).problem.pumps.map(({ failed }) => checksIn(failed))).toEqual([['option.pumpPressure']]);
  });
  test('nor what just turns fast enough with the motor at its fastest, 75 rpm', () => {
    expect(choicesOf(faster(two, 75)).problem.pumps.map(({ failed }) => checksIn(failed))).toEqual([[]]);
    expect(choicesOf(faster(two, 76)).problem.pumps.map(({ failed }) => checksIn(failed))).toEqual([['option.pumpSpeed']]);
  });
  test('what refuses every option of thousands is asked of one at most', () => {
    const choices = choicesOf(pressed(31, 30));
    expect(choices.problem.stages.reduce((ways, { pairs }) => ways * pairs.length, 1)).toBeGreaterThan(5000);
    let asked = 0;
    const count = <Answer>(answer: Answer): Answer => {
      asked += 1;
      return answer;
    };
    const rules = { admit: (candidate: Parameters<typeof choices.failures>[0]) => count(choices.rules.admit(candidate)) };
    expect([findOptions(choices.problem, rules, 200).options, asked]).toEqual([[], 0]);
    const { masks, more } = fewestRelaxations(choices.problem, (candidate) => count(choices.failures(candidate)), CHECK_BITS);
    expect([masks.map(checksIn), more]).toEqual([[['option.pumpPressure']], false]);
    expect(asked).toBeLessThan(100);
  });
});
