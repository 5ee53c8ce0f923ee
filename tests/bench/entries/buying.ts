import { type BuyingTarget, planBuying, targetOf } from '../../../core/src/buying/index.ts';
import { requirementsOf } from '../../../core/src/buying/requirements.ts';
import { shopOf } from '../../../core/src/buying/shop.ts';
import type { Plan } from '../../../core/src/plan.ts';
import { ratioOf } from '../../../core/src/ratio.ts';
import { integerSolver } from '../../core/buying/integerProgram.ts';
import { buyingPlan, rangeOf } from '../buyingShop.ts';
import type { Claim, Row } from '../report.ts';
import { median, timed } from '../timing.ts';
import type { Entry } from './entry.ts';

const MOST = 4;
const HAND = [17, 25, 36];
const TIMES = 5;
/** From the smallest up; the first that the integer program does not finish is the last it is asked. */
const CASES = [
  { sizes: 20, targets: 10, limits: '0.1' },
  { sizes: 30, targets: 10, limits: '0.1' },
  { sizes: 40, targets: 10, limits: '0.1' },
  { sizes: 60, targets: 10, limits: '0.1' },
  { sizes: 60, targets: 30, limits: '0.1' },
] as const;
const MOST_s = { quick: 10, full: 60 } as const;

const { mostServed } = await integerSolver();

/** All plans of up to four parts for a list of targets, beside a general solver that finds one best plan of four. */
export const buying: Entry = {
  name: 'buying',
  run: ({ form }) => {
    const rows: Row[] = [];
    const differences: string[] = [];
    let claim: Claim | null = null;
    let isStopped = false;
    for (const one of CASES) {
      const name = `${one.targets} targets ± ${one.limits} %, up to ${MOST} of ${one.sizes}`;
      const plan = buyingPlan({ sizes: one.sizes, stages: 2, hand: HAND, limits: one.limits }, MOST);
      const targets = targetsOf(plan, one.targets);
      const wish = { teeth: rangeOf(one.sizes), mostPurchases: MOST };
      planBuying(targets, wish);
      const runs = Array.from({ length: TIMES }, () => timed(() => planBuying(targets, wish)));
      const served = runs[0]?.value.levels.at(-1)?.servedCount ?? null;
      const ms = runs.map((run) => run.ms);
      rows.push(rowOf(`${name}, all plans`, ms, `${served} served`));
      if (isStopped) continue;
      // what the options need is given to the solver, and its own time alone is measured
      const shop = shopOf(plan, wish);
      const requirements = requirementsOf(
        targets,
        targets.map(() => shop),
        { most: MOST, isOf: () => true },
        {},
      );
      const solved = timed(() => mostServed(requirements, MOST, MOST_s[form.name]));
      if (solved.value === null) {
        rows.push({ ...rowOf(`${name}, integer program`, [], `stopped after ${MOST_s[form.name]} s`), median_ms: null, max_ms: null });
        isStopped = true;
        continue;
      }
      rows.push(rowOf(`${name}, integer program`, [solved.ms], `one plan of ${MOST}`));
      if (solved.value !== served) differences.push(`${name}: ${served} served, by the integer program ${solved.value}`);
      claim = {
        what: `integer program over ${name}, all plans`,
        figure: solved.ms / median(ms),
        least: 100,
        unit: 'x',
        note: 'the largest case it finished',
      };
    }
    // in a few seconds the solver only finishes cases too small to say anything
    return { rows, claims: claim === null || form.name === 'quick' ? [] : [claim], differences };
  },
};

/** Spread over what the sizes make, and none of them round. */
function targetsOf(plan: Plan, count: number): readonly BuyingTarget[] {
  const own = targetOf(plan);
  if (own === null) throw new Error('no limits');
  return Array.from({ length: count }, (_, i) => ({
    ...own,
    wantedBPerA: ratioOf(Math.round(10_000 * 0.13 * 14 ** ((i + 0.37) / count)), 10_000),
  }));
}

const rowOf = (name: string, times_ms: readonly number[], note: string): Row => ({
  name,
  raw: null,
  median_ms: median(times_ms),
  max_ms: Math.max(...times_ms),
  loops: null,
  twin: null,
  memory_MB: null,
  note,
});
