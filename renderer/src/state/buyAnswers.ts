import { gapClosers, layBuying, planBuying, pricesOf, targetOf } from '../../../core/src/buying/index.ts';
import { ONE } from '../../../core/src/ratio.ts';
import { partOf } from '../../../core/src/search/index.ts';
import { windowPlans } from '../../../core/src/windowPlans.ts';
import type { BuyAnswer, BuyAsked, BuyWish, MaterialPlans } from './messages.ts';
import { revived } from './revive.ts';
import type { Asks } from './serveJobs.ts';

/** So many plans are told with what every material gets. */
const LAID = 8;

type Progress = (done: number) => void;

/** What a worker answers to a question of purchases. */
export function answerBuy(asks: Asks, asked: BuyAsked, progress: Progress): BuyAnswer {
  switch (asked.kind) {
    case 'closers':
      return { kind: 'closers', closers: closersOf(asks, revived(asked), progress) };
    case 'materials':
      return { kind: 'materials', plans: materialPlans(asks, asked, progress) };
    case 'window':
      return { kind: 'window', plans: plansFor(asks, revived(asked), progress) };
  }
}

const planOf = ({ planFor }: Asks, { most, teeth }: BuyWish, material?: string) =>
  planFor({ purchases: most, ...(teeth !== null && { teeth }), ...(material !== undefined && { material }) });

function closersOf(asks: Asks, { gap, window, wish }: Extract<BuyAsked, { kind: 'closers' }>, progress: Progress) {
  const plan = planOf(asks, wish);
  // The search counts B per A, so what is low here is high there.
  const neighbours = { below: gap.high && ONE.div(gap.high), above: gap.low && ONE.div(gap.low) };
  const targets = { low: ONE.div(window.high), high: ONE.div(window.low), tolerance: window.tolerance };
  return gapClosers(plan, neighbours, targets, plan.choice.teeth, { progress });
}

function materialPlans(asks: Asks, { materials, wish }: Extract<BuyAsked, { kind: 'materials' }>, progress: Progress): MaterialPlans {
  const targets = materials.flatMap((material) => targetOf(planOf(asks, wish, material)) ?? []);
  const [plan] = targets.map((target) => target.plan);
  if (plan === undefined) throw new RangeError('purchases for no material');
  const priceOf = pricesOf(plan);
  const asked = { teeth: plan.choice.teeth, mostPurchases: wish.most, pumps: wish.pumps, ...(priceOf !== undefined && { priceOf }) };
  const found = planBuying(targets, asked, partOf({ progress }, 0, 0.8));
  return { found, ...layBuying(targets, found, LAID, partOf({ progress }, 0.8, 0.2)) };
}

function plansFor(asks: Asks, { window, wish }: Extract<BuyAsked, { kind: 'window' }>, progress: Progress) {
  const plan = planOf(asks, wish);
  return windowPlans(plan, window, { teeth: plan.choice.teeth, mostPurchases: wish.most, pumps: wish.pumps }, LAID, { progress });
}
