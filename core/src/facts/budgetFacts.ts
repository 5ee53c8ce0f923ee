import { type Budget, budgetOf, VERDICT_WORDS } from '../budget.ts';
import type { Contribution } from '../contributions.ts';
import { en } from '../en.ts';
import { type Say, SENSE, signedPercentText, withTrueMinus } from '../format.ts';
import type { Build, Plan } from '../plan.ts';
import { amountText } from '../shown.ts';
import type { Input } from '../working.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

/** How far off a build may be: the verdict, both ends of the worst case, and every contribution. */
export function budgetFacts(plan: Plan, build: Build, say: Say): FactGroup {
  const budget = budgetOf(plan, build);
  const { worst, likely, from, to, expected, offRatio } = budget;
  const moved =
    expected === offRatio ? [] : [fact('expected', expected, say, { figure: signedPercentText(expected.value, say), note: SENSE })];
  return {
    id: 'budget',
    title: en`Off-ratio budget`,
    facts: [
      fact('worst', worst, say, { figure: eitherWay(worst, say), note: slipNote(budget) }),
      fact('likely', likely, say, { figure: eitherWay(likely, say), note: en`root of the sum of squares, without slip` }),
      ...moved,
      fact('from', from, say, { figure: signedPercentText(from.value, say), note: SENSE }),
      fact('to', to, say, { figure: signedPercentText(to.value, say), note: SENSE }),
      ...verdictFacts(plan, budget),
      ...budget.contributions.map((one) => fact(one.id, one.share, say, { what: one.what, figure: contributionText(one, say) })),
      ...lackingFacts(budget),
    ],
  };
}

const eitherWay = ({ value, dimension }: Input, say: Say): string => `±${amountText(value, dimension, say)}`;

/** Signed as it moves the off-ratio. */
function contributionText({ way, share }: Contribution, say: Say): string {
  if (way === 'either') return eitherWay(share, say);
  const moved = way === 'B-rich' ? share.value : share.value.neg();
  return en`0 to ${signedPercentText(moved, say)}`;
}

function slipNote({ contributions, slipNotEstimated }: Budget): string {
  const estimated = contributions.some(({ kind }) => kind === 'slip') ? en`the slip that is estimated comes on top, one way` : '';
  const not = slipNotEstimated.length === 0 ? '' : en`slip of ${slipNotEstimated.join(en` and `)} not estimated, and so not in it`;
  return [estimated, not].filter((words) => words !== '').join('; ');
}

function verdictFacts({ mix }: Plan, { verdict }: Budget): readonly Fact[] {
  if (verdict === null) return [];
  return [
    {
      id: 'verdict',
      what: en`against the limits`,
      figure: VERDICT_WORDS[verdict],
      note: withTrueMinus(mix.limitsWritten ?? ''),
      working: null,
    },
  ];
}

function lackingFacts({ lacking }: Budget): readonly Fact[] {
  if (lacking.length === 0) return [];
  return [{ id: 'lacking', what: en`not in it`, figure: en`not given`, note: lacking.map(({ what }) => what).join(', '), working: null }];
}
