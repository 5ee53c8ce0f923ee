import { describe, expect, test } from 'vitest';
import type { MachineRow } from '../../core/src/file/machine.ts';
import { resolve } from '../../core/src/file/resolve.ts';
import { exactText, type Fraction } from '../../core/src/ratio.ts';
import { fromSI } from '../../core/src/units.ts';
import { type Input, isWorked } from '../../core/src/working.ts';
import { inLine, planOf, say, shopOf, stageRow } from '../core/planFixture.ts';
import { expectPrinted } from '../core/printedFormula.ts';

const LIQUIDS = {
  A: { density: { value: { value: '1.1', unit: 'g/cm3' } } },
  B: { density: { value: { value: '0.8', unit: 'g/cm3' } } },
};
const fileOf = (more: Partial<MachineRow>, liquids: Parameters<typeof shopOf>[2] = LIQUIDS) =>
  shopOf(inLine([stageRow(17, 34)], more), [], liquids);
const shot = (value: string, unit: string, seconds: string): Partial<MachineRow> => ({
  wantedShot: { amount: { value, unit }, time: { value: seconds, unit: 's' } },
});

function flowOf(more: Partial<MachineRow>): Input<Fraction> {
  const { wantedFlow } = planOf(fileOf(more));
  if (!wantedFlow.known) throw new Error('no flow is wanted');
  return wantedFlow.value;
}
const inCc = ({ value }: Input<Fraction>): string => exactText(fromSI('flow', value, 'cc/min'));

describe('the flow wanted', () => {
  test('as typed: 1000 cc/min', () => {
    const flow = flowOf({ wantedFlow: { value: '1', unit: 'L/min' } });
    expect([inCc(flow), isWorked(flow)]).toEqual(['1000/1', false]);
  });
  test('a shot of 250 cc in 15 s is 1000 cc/min [arithmetic]', () => {
    const flow = flowOf(shot('250', 'cc', '15'));
    expect(inCc(flow)).toBe('1000/1');
    if (!isWorked(flow)) throw new Error('no working');
    expectPrinted(flow);
  });
  test('a shot of 300 g in 20 s of 2 : 1 with 1.1 and 0.8 g/cm³, which mix to 1 g/cm³, is 900 cc/min [arithmetic]', () => {
    const flow = flowOf(shot('300', 'g', '20'));
    expect(inCc(flow)).toBe('900/1');
    if (!isWorked(flow)) throw new Error('no working');
    expectPrinted(flow);
  });
  test('a shot by mass without a density is not given, one by volume is', () => {
    const wanted = (more: Partial<MachineRow>) => planOf(fileOf(more, { A: LIQUIDS.A })).wantedFlow.known;
    expect([wanted(shot('300', 'g', '20')), wanted(shot('300', 'cc', '20')), wanted({})]).toEqual([false, true, false]);
  });
  test('both a flow and a shot: refused at the shot', () => {
    const refused = resolve(fileOf({ ...shot('250', 'cc', '15'), wantedFlow: { value: '1', unit: 'L/min' } }), {}, say);
    expect(refused.ok).toBe(false);
    expect(refused.findings.map(({ where, severity }) => [where.join(' '), severity])).toEqual([['machines 0 wantedShot', 'blocks']]);
    expect(refused.findings[0]?.what).toContain('keep one of them');
  });
});

describe('a batch', () => {
  const batchOf = (value: string, unit: string) => {
    const { batch } = planOf(fileOf({ batch: { of: 'A', amount: { value, unit } } }));
    if (!batch.known) throw new Error('no batch');
    return batch.value;
  };
  test('is by mass or by volume, as its unit says [NIST SP 811]', () => {
    const byMass = batchOf('10', 'lb');
    expect(byMass).toMatchObject({ of: 'A', place: ['machines', 0, 'batch'], amount: { kind: 'mass' } });
    if (byMass.amount.kind === 'mass') expect(exactText(byMass.amount.mass_kg)).toBe('45359237/10000000');
    const byVolume = batchOf('5', 'L');
    expect(byVolume.amount.kind).toBe('volume');
    if (byVolume.amount.kind === 'volume') expect(exactText(byVolume.amount.volume_m3)).toBe('1/200');
  });
  test('none is asked for: not given', () => {
    expect(planOf(fileOf({})).batch.known).toBe(false);
  });
});
