// What a quote page takes for granted; the words are our choice.
import { expect, test } from 'vitest';
import type { Plan, SideName } from '../../../core/src/plan.ts';
import { assumptions } from '../../../core/src/quote/assumptions.ts';
import { demoPlan, metric } from '../sheet/demoSheet.ts';

const plan = demoPlan({ selection: { machine: 'bench-1', material: 'e12' } });
const said = (of: Plan): readonly string[] => assumptions(of, [], [], metric);
const AS_NEW = 'Delivery as new: wear and slip are not counted in the ratios.';
const AS_MEASURED = 'Delivery as measured: wear and slip are not counted in the ratios.';

/** The same with the fitted pump of a side counted as it was measured. */
function measured(side: SideName): Plan {
  const of = plan.sides[side];
  const [first, ...others] = of.pumps;
  const pump = (one: typeof first) => ({ ...one, asMeasured: true });
  return { ...plan, sides: { ...plan.sides, [side]: { ...of, pumps: [pump(first), ...others.map(pump)] } } };
}

test('whether the delivery is that of a new pump or the measured one of either side', () => {
  expect(said(plan).filter((line) => line.startsWith('Delivery'))).toEqual([AS_NEW]);
  for (const side of ['A', 'B'] as const) expect(said(measured(side)).filter((line) => line.startsWith('Delivery'))).toEqual([AS_MEASURED]);
});

test('which pumps, wheels and stages count', () => {
  const of = (more: Partial<Plan['choice']>) => said({ ...plan, choice: { ...plan.choice, ...more } });
  expect(of({ anyPump: false })[0]).toMatch(/^Pumps as fitted: /);
  expect(of({ anyPump: true })[0]).toMatch(/^Pumps fitted or any a side may carry; fitted: /);
  const wheels = (more: Partial<Plan['choice']>) => of(more).find((line) => line.startsWith('Wheels: '));
  const bought = { wheels: 'rack and purchases', purchases: 3, teeth: { from: 13, to: 28 } } as const;
  expect(wheels(bought)).toMatch(/, at most 3, 13 to 28 teeth\.$/);
  expect(wheels({ ...bought, teeth: null })).toMatch(/, at most 3\.$/);
  expect(wheels({ wheels: 'rack', teeth: null })).not.toMatch(/at most|teeth/);
  const closed = { ...plan, stages: plan.stages.map((stage) => ({ ...stage, open: false })) };
  expect(said(plan)).toContain('Stages that may change: s1, 08B.');
  expect(said(closed)).toContain('No stage may change.');
});
