import { type Check, notMade, type OptionSubject } from '../check.ts';
import { percentOf } from '../dial.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { SIDES } from '../plan.ts';
import { float } from '../ratio.ts';
import { slipMissing, slipShare, slipText } from '../slip.ts';

/** An estimate is only ever a band, so it warns of nothing; the off-ratio budget counts it. A measured delivery needs none. */
export const slip: Check<OptionSubject> = {
  id: 'option.slip',
  title: en`Pump slip`,
  worst: 'notes',
  source: en`laminar flow through a gap of half to twice 10 µm; the gap is common practice, no source`,
  judge: (subject) =>
    SIDES.flatMap((side): readonly Judgement[] => {
      const { plan, pumps } = subject;
      if (pumps[side].delivery.known) return [];
      const share = slipShare(plan, subject, side);
      if (!share.known) {
        const missing = slipMissing(plan, subject, side);
        return missing === null ? [] : [notMade(missing.where, en`Pump ${side}: its slip was not estimated; not given: ${missing.words}.`)];
      }
      const { least, most } = share.value;
      return [
        {
          severity: 'notes',
          where: pumps[side].place,
          what: (say) =>
            en`Pump ${side} may lose ${slipText(least.value, say)} to ${slipText(most.value, say)} of its flow to slip; a ratio check tells.`,
          figure: { value: float(percentOf(most.value)), unit: '%' },
          limit: null,
        },
      ];
    }),
};
