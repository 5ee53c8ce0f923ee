import { type Budget, budgetOf } from '../budget.ts';
import type { Contribution } from '../contributions.ts';
import { percentOf } from '../dial.ts';
import { type Say, signed } from '../format.ts';
import type { Build, Plan } from '../plan.ts';
import { amountText } from '../shown.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

const SENSE = '+ is B-rich';

/** How far off a build may be: the verdict, both ends of the worst case, and every contribution. */
export function budgetFacts(plan: Plan, build: Build, say: Say): FactGroup {
  const budget = budgetOf(plan, build);
  const signedText = (value: Parameters<typeof percentOf>[0]) => `${signed(percentOf(value), 2, say)}\u00a0%`;
  const eitherWay = (value: Parameters<typeof amountText>[0]) => `±${amountText(value, 'share', say)}`;
  const { worst, likely, from, to, expected, offRatio } = budget;
  const moved = expected === offRatio ? [] : [fact('expected', expected, say, { figure: signedText(expected.value), note: SENSE })];
  return {
    id: 'budget',
    title: 'Off-ratio budget',
    facts: [
      fact('worst', worst, say, { figure: eitherWay(worst.value), note: slipNote(budget) }),
      fact('likely', likely, say, { figure: eitherWay(likely.value), note: 'root of the sum of squares, without slip' }),
      ...moved,
      fact('from', from, say, { figure: signedText(from.value), note: SENSE }),
      fact('to', to, say, { figure: signedText(to.value), note: SENSE }),
      ...verdictFacts(plan, budget),
      ...budget.contributions.map((one) => fact(one.id, one.share, say, { what: one.what, figure: contributionText(one, say) })),
      ...lackingFacts(budget),
    ],
  };
}

/** Signed as it moves the off-ratio. */
function contributionText({ way, share }: Contribution, say: Say): string {
  if (way === 'either') return `±${amountText(share.value, 'share', say)}`;
  const moved = way === 'B-rich' ? share.value : share.value.neg();
  return `0 to ${signed(percentOf(moved), 2, say)}\u00a0%`;
}

function slipNote({ contributions, slipNotEstimated }: Budget): string {
  const estimated = contributions.some(({ kind }) => kind === 'slip') ? 'the slip that is estimated comes on top, one way' : '';
  const not = slipNotEstimated.length === 0 ? '' : `slip of ${slipNotEstimated.join(' and ')} not estimated, and so not in it`;
  return [estimated, not].filter((words) => words !== '').join('; ');
}

function verdictFacts({ mix }: Plan, { verdict }: Budget): readonly Fact[] {
  if (verdict === null) return [];
  return [{ id: 'verdict', what: 'against the limits', figure: verdict, note: mix.limitsWritten ?? '', working: null }];
}

function lackingFacts({ lacking }: Budget): readonly Fact[] {
  if (lacking.length === 0) return [];
  return [{ id: 'lacking', what: 'not in it', figure: 'not given', note: lacking.map(({ what }) => what).join(', '), working: null }];
}
