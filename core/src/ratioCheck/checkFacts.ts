import { en } from '../en.ts';
import type { Say } from '../format.ts';
import { SIDES } from '../plan.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';
import type { Judged } from './judge.ts';

/** Every worked figure of a check in groups, each with how it came about. */
export function checkFacts({ evaluation, smallest }: Pick<Judged, 'evaluation' | 'smallest'>, say: Say): readonly FactGroup[] {
  const { bPerA, offRatio, interval, delivery } = evaluation;
  const group = (id: string, title: string, facts: readonly Fact[]) => (facts.length === 0 ? [] : [{ id, title, facts }]);
  return [
    ...group('ratio', en`Ratio`, [fact('bPerA', bPerA, say), fact('offRatio', offRatio, say)]),
    ...group('interval', en`Interval`, interval === null ? [] : [fact('from', interval.from, say), fact('to', interval.to, say)]),
    ...group(
      'delivery',
      en`Delivery`,
      SIDES.flatMap((side) => {
        const of = delivery[side];
        if (of === null) return [];
        return [fact(`share${side}`, of.share, say), ...(of.uncertainty === null ? [] : [fact(`uncertainty${side}`, of.uncertainty, say)])];
      }),
    ),
    ...group(
      'smallest',
      en`Smallest catch worth making`,
      smallest === null ? [] : [fact('A', smallest.A, say), fact('B', smallest.B, say)],
    ),
  ];
}
