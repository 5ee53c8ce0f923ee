import { type Check, notMade, type OptionSubject } from '../check.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { END_WORDS, ENDS } from '../plan.ts';
import { boreOf_m } from '../rack.ts';

/** A wheel whose bore nobody has noted fits any slot, so it may be the one that is taken. */
export const blankBore: Check<OptionSubject> = {
  id: 'option.blankBore',
  title: en`Bore not noted`,
  worst: 'notes',
  source: en`bores of the rack and of the slots, as given`,
  judge: ({ plan, teeth, assignment }) =>
    plan.stages.flatMap((stage, index) =>
      ENDS.flatMap((end): readonly Judgement[] => {
        const slot = stage[end];
        const origin = assignment.origins[index]?.[end];
        // Where the bore of the slot is not given either, `bore` says so.
        if (origin === undefined || !slot.bore_m.known) return [];
        const bore_m = boreOf_m(origin);
        if (bore_m === null || bore_m.known) return [];
        const name = en`${stage.name} ${END_WORDS[end]}, ${teeth[index]?.[end]} teeth`;
        return [notMade([...slot.place, 'bore'], en`${name}: no bore is noted for the wheel at hand; measure it before you take it.`)];
      }),
    ),
};
