import { apart, type Check, type OptionSubject } from '../check.ts';
import { percentOf } from '../dial.ts';
import { en } from '../en.ts';
import type { Judgement, Place } from '../finding.ts';
import type { Say } from '../format.ts';
import { type Pump, SIDES, type SideName } from '../plan.ts';
import { Fraction, float, ONE } from '../ratio.ts';
import { amountText } from '../shown.ts';

const USUAL_WHEN_NEW = new Fraction('0.95');

/** Gearing for a worn pump hides it; the cause comes first. More than the whole displacement no pump delivers. */
export const delivery: Check<OptionSubject> = {
  id: 'option.delivery',
  title: en`Measured delivery`,
  worst: 'warns',
  source: en`our choice: 95 %, the usual delivery of a new gear pump (from memory); 100 % by definition`,
  // A pump nobody has measured is the slip check's to estimate.
  judge: ({ pumps }) => SIDES.flatMap((side) => [...poor(side, pumps[side]), ...beyondWhole(side, pumps[side])]),
};

function poor(side: SideName, { delivery, place }: Pump): readonly Judgement[] {
  if (!delivery.known || delivery.value.share.compare(USUAL_WHEN_NEW) >= 0) return [];
  const { share } = delivery.value;
  const what = (say: Say): string => {
    const [found, usual] = told(share, USUAL_WHEN_NEW, say);
    return en`Pump ${side} delivers ${found} of its displacement; a new one delivers ${usual} or more. Find the cause (wear, air, a wrong displacement) before gearing for it.`;
  };
  return [finding(place, share, USUAL_WHEN_NEW, what)];
}

/** What the measuring itself may be off by is no contradiction. */
function beyondWhole(side: SideName, { delivery, place }: Pump): readonly Judgement[] {
  if (!delivery.known) return [];
  const { share, uncertainty } = delivery.value;
  const most = uncertainty.known ? ONE.add(uncertainty.value) : ONE;
  if (share.compare(most) <= 0) return [];
  const what = (say: Say): string => {
    const [found, whole] = told(share, most, say);
    return en`Pump ${side} is said to deliver ${found} of its displacement; ${whole} is the most there can be. Weigh again, and look at the displacement and the density typed.`;
  };
  return [finding(place, share, most, what)];
}

const told = (share: Fraction, limit: Fraction, say: Say) =>
  apart(share, limit, -1, (value, places) => amountText(value, 'share', say, places));

const finding = (place: Place, share: Fraction, limit: Fraction, what: Judgement['what']): Judgement => ({
  severity: 'warns',
  where: [...place, 'measuredDelivery', 'value'],
  what,
  figure: { value: float(percentOf(share)), unit: '%' },
  limit: { value: float(percentOf(limit)), unit: '%' },
});
