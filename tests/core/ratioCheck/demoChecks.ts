import { readFileSync } from 'node:fs';
import type { CatchRow } from '../../../core/src/file/ratioCheckRow.ts';
import { type Plan, readShopFile, resolve, type ShopFile } from '../../../core/src/index.ts';
import { type Evaluation, evaluate } from '../../../core/src/ratioCheck/evaluate.ts';
import { readCheck } from '../../../core/src/ratioCheck/readCheck.ts';
import { termsOf } from '../../../core/src/ratioCheck/terms.ts';
import { fittedPumps, fittedTeeth } from '../../../core/src/train.ts';

/** The three past checks of the invented example: day, then net grams of A and B. */
export const PAST = [
  {
    date: '2026-09-15',
    catches: [
      [244.6, 101.9],
      [244.1, 101.6],
      [244.4, 101.8],
    ],
  },
  {
    date: '2026-10-12',
    catches: [
      [244.3, 101.1],
      [244.8, 101.2],
      [244.0, 100.9],
    ],
  },
  {
    date: '2026-11-09',
    catches: [
      [244.5, 100.4],
      [243.2, 98.6],
      [244.9, 101.3],
    ],
  },
] as const;

const SAY = { decimal: '.', system: 'metric' } as const;

/** The invented example, read anew each time so that a test may change it. */
export function demoFile(): ShopFile {
  const file = readShopFile(readFileSync(new URL('../../examples/demo.ratiowright', import.meta.url), 'utf8'));
  if (!file.ok) throw new RangeError(file.findings[0].what);
  return file.value;
}

/** U40 on Bench 1 of the invented example, as it runs. */
export function demoPlan(): Plan {
  const plan = resolve(demoFile(), { machine: 'bench-1', material: 'u40' }, SAY);
  if (!plan.ok) throw new RangeError(plan.findings[0].what);
  return plan.value;
}

const g = (value: number) => ({ net: { value: String(value), unit: 'g' } });

/** Catches of 20 turns on a scale of 0.1 g that was not tared, judged by the plan as it stands. */
export function evaluated(plan: Plan, catches: readonly (readonly [number, number])[]): Evaluation {
  const rows = catches.map(([a, b]): CatchRow => ({ A: g(a), B: g(b) }));
  const terms = termsOf(plan, { pumps: fittedPumps(plan), teeth: fittedTeeth(plan) });
  const typed = { scale: { step: { value: '0.1', unit: 'g' }, tared: false }, run: { turns: { value: '20', unit: '' } }, catches: rows };
  const check = readCheck(typed, terms, ['ratioChecks', 0]);
  if (!check.ok) throw new RangeError(check.findings[0].what);
  return evaluate(check.value);
}
