import fc from 'fast-check';
import type { MachineRow, SlotRow } from '../../core/src/file/machine.ts';
import type { MaterialRow } from '../../core/src/file/material.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { ENDS } from '../../core/src/plan.ts';
import { shopFiles } from '../file/arbitraries.ts';

/** Random shop files with what a plan cannot do without filled in, and ranges the right way round: most of them give a plan. */

const MOST_OPEN = 3;

const inOrder = ({ from, to }: { readonly from: number; readonly to: number }) => ({ from: Math.min(from, to), to: Math.max(from, to) });

function slotOf({ teeth = 20, teethFrom = 12, teethTo = 40, ...slot }: SlotRow, shut: boolean): SlotRow {
  const range = inOrder({ from: teethFrom, to: teethTo });
  return { ...slot, teeth, teethFrom: range.from, teethTo: range.to, ...(shut && { mayChange: false }) };
}

function withDisplacements({ pumps, ...side }: MachineRow['A']): MachineRow['A'] {
  const complete = pumps.map(({ speedFrom, speedTo, displacement = { value: '10', unit: 'cc/rev' }, ...pump }) => ({
    ...pump,
    displacement,
    ...(speedFrom !== undefined && speedTo === undefined && { speedFrom }),
    ...(speedTo !== undefined && { speedTo }),
  }));
  return { ...side, pumps: complete };
}

function completeMachine({ motor, stages, A, B, search = {}, ...machine }: MachineRow): MachineRow {
  const { usable: _usable, speed = { value: '1400', unit: 'rpm' }, ...rest } = motor;
  return {
    ...machine,
    motor: { ...rest, speed },
    stages: stages.map(({ centre, ...stage }, index) => {
      const slots = Object.fromEntries(ENDS.map((end) => [end, slotOf(stage[end], index >= MOST_OPEN)]));
      return { ...stage, ...(centre !== undefined && 'fixed' in centre && { centre }), ...slots };
    }),
    A: withDisplacements(A),
    B: withDisplacements(B),
    search: { ...search, ...(search.teeth && { teeth: inOrder(search.teeth) }) },
  };
}

const DENSITY = { value: { value: '1.1', unit: 'g/cm3' }, at: { value: '25', unit: '°C' } };

function completeMaterial(
  { chemistry, limits: _limits, otherRatio: _other, ...row }: MaterialRow,
  limits: MaterialRow['limits'],
): MaterialRow {
  const asked = row.ratio ?? {};
  const positive = asked.perHundredA === undefined || !/^(?:0|-)/.test(asked.perHundredA);
  const sound = positive && (asked.parts !== undefined || asked.perHundredA !== undefined) && asked.thirdInto === undefined;
  const twoParts = sound && (asked.parts ?? '').split(':').length <= 2;
  const ratio = twoParts ? { ...asked, basis: asked.basis ?? ('weight' as const) } : { basis: 'weight' as const, parts: '100 : 38.9' };
  const part = (of: MaterialRow['A']) => {
    const { density = DENSITY, secondDensity: _second, expansion: _expansion, ...rest } = of;
    return { ...rest, density };
  };
  const { third: _third, premix: _premix, ...plain } = row;
  return { ...plain, ratio, ...(limits && { limits }), A: part(row.A), B: part(row.B) };
}

const limits = fc.option(
  fc.constantFrom<MaterialRow['limits']>(
    { definition: '% of B per A', low: '-2', high: '2' },
    { definition: '% of B per A', low: '-0.0001', high: '0' },
    { definition: '% of A per B', low: '-50', high: '99' },
  ),
  { nil: undefined },
);

export const planFiles: fc.Arbitrary<ShopFile> = fc
  .tuple(shopFiles, limits)
  .filter(([{ machines, materials }]) => machines.length > 0 && materials.length > 0)
  .map(([file, allowed]) => ({
    ...file,
    machines: file.machines.map(completeMachine),
    materials: file.materials.map((row) => completeMaterial(row, allowed)),
  }));
