import { describe, expect, test } from 'vitest';
import { type MachinePart, machineTrouble } from '../../core/src/file/machineTrouble.ts';

const of = (value: string, unit: string) => ({ value, unit });

describe('figures the file would refuse [limits of the file, our choice]', () => {
  test('machineTrouble example: a motor that stands still', () => {
    expect(machineTrouble({ motor: { speed: of('0', 'rpm') } })).toBe('0 rpm is out of range: it must be above 0 rpm');
  });

  test.each<[MachinePart, MachinePart]>([
    [{ motor: { dialStep: of('100', '%') } }, { motor: { dialStep: of('101', '%') } }],
    [{ motor: { usable: { from: of('0', '%'), to: of('100', '%') } } }, { motor: { usable: { from: of('-1', '%'), to: of('100', '%') } } }],
    [{ slot: { bore: of('20', 'm') } }, { slot: { bore: of('20.001', 'm') } }],
    [{ stage: { takeUp: of('0', 'pitches') } }, { stage: { takeUp: of('-0.5', 'pitches') } }],
    [{ stage: { centre: { fixed: of('1', 'mm') } } }, { stage: { centre: { fixed: of('0', 'mm') } } }],
    [{ pump: { displacement: of('0.01', 'cc/rev') } }, { pump: { displacement: of('0', 'cc/rev') } }],
    [{ pump: { tolerance: of('99.9', '%') } }, { pump: { tolerance: of('100', '%') } }],
  ])('%j is kept, %j is not', (inside, outside) => {
    expect(machineTrouble(inside)).toBeNull();
    expect(machineTrouble(outside)).toContain('out of range');
  });
});
