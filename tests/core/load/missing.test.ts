import { describe, expect, test } from 'vitest';
import { motorTorque } from '../../../core/src/checks/motorTorque.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import type { Say } from '../../../core/src/format.ts';
import { lacking, lackingServiceFactor, type Missing, missingText } from '../../../core/src/load/missing.ts';
import { type Torque, torquesOf } from '../../../core/src/load/torque.ts';
import type { Plan } from '../../../core/src/plan.ts';
import { fittedPumps, fittedTeeth } from '../../../core/src/train.ts';
import { expectNotMade, inLine, judgeOption, only, pair, planOf, rpm, say, shopOf, stageRow } from '../planFixture.ts';

const comma: Say = { decimal: ',', system: 'metric' };
const named = (missing: readonly Missing[]) => missing.map(({ where, what }) => [where.join(' '), what(say)]);

/** What may be lacking, in the order in which it is named: field of a side, and the name of it in a sentence. */
const FIELDS = [
  ['A', 'pressure', 'pressure of A'],
  ['A', 'mechanicalEfficiency', 'mechanical efficiency of A'],
  ['B', 'pressure', 'pressure of B'],
  ['B', 'mechanicalEfficiency', 'mechanical efficiency of B'],
] as const;
type Field = (typeof FIELDS)[number];

const SUBSETS: readonly (readonly Field[])[] = Array.from({ length: 2 ** FIELDS.length }, (_, bits) =>
  FIELDS.filter((_, index) => (bits >> index) % 2 === 1),
);

/** A on the motor and B behind 20 to 20 teeth, without these fields. */
function fileWithout(left: readonly Field[], more: Partial<MachineRow> = {}) {
  const machine = inLine([stageRow(20, 20)]);
  const given = (side: 'A' | 'B') => {
    const has = (field: Field[1]) => !left.some(([whose, one]) => whose === side && one === field);
    return {
      ...machine[side],
      ...(has('pressure') && { pressure: { value: '100', unit: 'bar' } }),
      ...(has('mechanicalEfficiency') && { mechanicalEfficiency: { value: '90', unit: '%' } }),
    };
  };
  return shopOf({ ...machine, A: given('A'), B: given('B'), ...more });
}
const load = (plan: Plan) => torquesOf(plan, { pumps: fittedPumps(plan), teeth: fittedTeeth(plan) });
const missingOf = (torque: Torque) => (torque.known ? [] : named(torque.missing));
const expected = (fields: readonly Field[]) => fields.map(([side, field, what]) => [`machines 0 ${side} ${field}`, what]);

describe('a torque that an input is lacking for', () => {
  test.each(SUBSETS.map((left) => [left.map(([, , what]) => what).join(', ') || 'nothing', left] as const))('without %s', (_, left) => {
    const { pumps, stages, motor } = load(planOf(fileWithout(left)));
    const of = (side: 'A' | 'B') => left.filter(([whose]) => whose === side);
    // Each names what it lacks itself, the motor what both lack; what lacks nothing is known.
    expect(missingOf(pumps.A)).toEqual(expected(of('A')));
    expect(missingOf(pumps.B)).toEqual(expected(of('B')));
    expect(stages.map(({ torque }) => missingOf(torque))).toEqual([expected(of('B'))]);
    expect(missingOf(motor)).toEqual(expected(left));
    expect([pumps.A.known, pumps.B.known, motor.known]).toEqual([of('A').length === 0, of('B').length === 0, left.length === 0]);
  });

  test('a pressure of 0 is given: it asks no torque', () => {
    const machine = inLine([stageRow(20, 20)]);
    const at0 = { pressure: { value: '0', unit: 'bar' }, mechanicalEfficiency: { value: '90', unit: '%' } };
    const { motor } = load(planOf(shopOf({ ...machine, A: { ...machine.A, ...at0 }, B: { ...machine.B, ...at0 } })));
    expect(motor).toMatchObject({ known: true, value: { value: 0 } });
  });

  test.each(FIELDS)('%s %s: the check of the motor is noted as not made, at a field of the file', (side, field, what) => {
    const left = FIELDS.filter(([whose, one]) => whose === side && one === field);
    const rated = { motor: { speed: rpm('60'), ratedTorque: { value: '45', unit: 'N m' } } };
    const file = fileWithout(left, rated);
    const found = only(judgeOption(motorTorque, planOf(file), [pair(20, 20)]));
    expectNotMade(found, file, ['machines', 0, side, field]);
    expect(found.what).toBe(`Not given: ${what}; so the load of the motor was not checked.`);
  });
});

describe('what is lacking', () => {
  test('each field at its place, with its name and whose it is', () => {
    expect(named(lacking(['machines', 0, 'motor'], ['ratedTorque', 'dialStep'], 'the motor'))).toEqual([
      ['machines 0 motor ratedTorque', 'rated torque of the motor'],
      ['machines 0 motor dialStep', 'dial step of the motor'],
    ]);
    expect(lacking(['machines', 0, 'A'], [], 'A')).toEqual([]);
  });

  test('the service factor, with what is usual: 1.0, 1.3 and 1.5 [asme-b29.1, supplementary information, from memory]', () => {
    const plan = planOf(fileWithout([]));
    const [factor, ...others] = lackingServiceFactor(plan);
    expect(others).toEqual([]);
    expect(factor?.where).toEqual(['machines', 0, 'serviceFactor']);
    const usual = 'usual with an electric motor: 1.0 for an even load, 1.3 for moderate shock, 1.5 for heavy shock';
    expect(factor?.what(say)).toBe(`service factor (${usual})`);
    expect(factor?.what(comma)).toContain('1,3 for moderate shock');
  });
  test('a service factor that is given is not lacking, 1 neither', () => {
    for (const value of ['1', '1.5']) {
      expect(lackingServiceFactor(planOf(fileWithout([], { serviceFactor: { value, unit: '' } })))).toEqual([]);
    }
  });
});

describe('the sentence', () => {
  const pressure = lacking(['machines', 0, 'A'], ['pressure'], 'A');

  test('names each field once', () => {
    expect(missingText([...pressure, ...pressure], 'the motor was not checked', say)).toBe(
      'Not given: pressure of A; so the motor was not checked.',
    );
  });
  test('keeps the order in which they were found, and the pressures of A and B apart', () => {
    const both = [...lacking(['machines', 0, 'B'], ['pressure'], 'B'), ...pressure];
    expect(missingText(both, 'nothing was checked', say)).toBe('Not given: pressure of B, pressure of A; so nothing was checked.');
  });
  test('writes numbers as the shop reads them', () => {
    expect(missingText(lackingServiceFactor(planOf(fileWithout([]))), 'the pull was not checked', comma)).toMatch(/1,5 for heavy shock\)/);
  });
});
