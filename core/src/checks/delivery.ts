import { apart, type Check, type OptionSubject } from '../check.ts';
import { percentOf } from '../dial.ts';
import type { Judgement } from '../finding.ts';
import { SIDES } from '../plan.ts';
import { Fraction, float } from '../ratio.ts';
import { amountText } from '../shown.ts';

const USUAL_WHEN_NEW = new Fraction('0.95');

/** Gearing for a worn pump hides it; the cause comes first. */
export const delivery: Check<OptionSubject> = {
  id: 'option.delivery',
  title: 'Poor delivery',
  worst: 'warns',
  source: 'our choice: 95 %, the usual delivery of a new gear pump (from memory)',
  why: 'Wear goes on and air comes and goes: a drive geared for either is wrong again soon.',
  // A pump nobody has measured is the slip check's to estimate.
  judge: ({ pumps }) => SIDES.flatMap((side) => poor(side, pumps[side])),
};

function poor(side: string, { delivery, place }: OptionSubject['pumps']['A']): readonly Judgement[] {
  if (!delivery.known || delivery.value.share.compare(USUAL_WHEN_NEW) >= 0) return [];
  const { share } = delivery.value;
  return [
    {
      severity: 'warns',
      where: [...place, 'measuredDelivery', 'value'],
      what: (say) => {
        const [found, usual] = apart(share, USUAL_WHEN_NEW, -1, (value, places) => amountText(value, 'share', say, places));
        return `Pump ${side} delivers ${found} of its displacement; a new one delivers ${usual} or more. Find the cause (wear, air, a wrong displacement) before gearing for it.`;
      },
      figure: { value: float(percentOf(share)), unit: '%' },
      limit: { value: float(percentOf(USUAL_WHEN_NEW)), unit: '%' },
    },
  ];
}
