import { apart, type Check, notMade, type PairSubject } from '../check.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { lengthText } from '../format.ts';
import { END_WORDS, ENDS } from '../plan.ts';
import { boresOnHand_m, mayBuy, sameBore } from '../rack.ts';
import { float } from '../ratio.ts';

/** Bores match exactly; a blank bore fits any slot, which `blankBore` notes. The keyway is printed, not checked. */
export const bore: Check<PairSubject> = {
  id: 'slot.bore',
  title: en`Bore does not fit`,
  worst: 'blocks',
  source: en`bores compared exactly as typed (our choice)`,
  judge: ({ plan, stage, teeth }) =>
    ENDS.flatMap((end): readonly Judgement[] => {
      const slot = stage[end];
      if (teeth[end] === slot.teeth) return [];
      const name = en`${stage.name} ${END_WORDS[end]}, ${teeth[end]} teeth`;
      const where = [...slot.place, 'bore'];
      const shaft_m = slot.bore_m;
      if (!shaft_m.known) return [notMade(where, en`${name}: the bore of this slot is not given, so the bore was not checked.`)];
      const onHand = boresOnHand_m(plan, stage, teeth[end]);
      const other_m = onHand.flatMap((one) => (one.known ? [float(one.value)] : []));
      const fits = onHand.some((one) => !one.known || sameBore(one, shaft_m));
      if (fits || other_m.length === 0 || mayBuy(plan, slot, teeth[end])) return [];
      const wanted_m = float(shaft_m.value);
      const nearest_m = other_m.reduce((a, b) => (Math.abs(b - wanted_m) < Math.abs(a - wanted_m) ? b : a));
      return [
        {
          severity: 'blocks',
          where,
          what: (say) => {
            const [found, wanted] = apart(nearest_m, wanted_m, 1, (length_m, places) => lengthText(length_m, say, places));
            return en`${name}: the wheel at hand has a bore of ${found}; this shaft wants ${wanted}.`;
          },
          figure: { value: nearest_m * 1000, unit: 'mm' },
          limit: { value: wanted_m * 1000, unit: 'mm' },
        },
      ];
    }),
};
