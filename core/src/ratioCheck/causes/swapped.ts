import { en } from '../../en.ts';
import { offRatioText } from '../../format.ts';
import { liesInside, offRatio } from '../../mixRatio.ts';
import { ONE } from '../../ratio.ts';
import { wantedOn } from '../amounts.ts';
import { type Cause, likely, notLookedFor, ruledOut } from './cause.ts';

/** A and B changed places: on the form, or on the machine. */
export const swapped: Cause = {
  id: 'cause.swapped',
  title: en`Sides swapped`,
  within: en`sides swapped`,
  source: en`definition: A per B is one over B per A`,
  why: en`Two cups are easily written into each other’s column, and two hoses are easily changed over.`,
  judge({ evaluation: { input, weighed, bPerA, offRatio: off } }) {
    const { limits } = input.terms;
    if (limits === null) return notLookedFor(en`The material has no limits to hold the swapped reading against.`);
    const wanted = wantedOn(input.terms, weighed);
    const turned = offRatio(ONE.div(bPerA.value), wanted);
    // Near 1 to 1 both readings look alike.
    if (liesInside(offRatio(ONE.div(wanted), wanted), limits))
      return notLookedFor(en`The ratio wanted lies so near 1 : 1 that swapped sides would not show.`);
    if (!liesInside(turned, limits))
      return ruledOut((say) => en`With A and B changed over the catches would be ${offRatioText(turned, say)}, which is not inside.`);
    return liesInside(off.value, limits)
      ? ruledOut(
          (say) =>
            en`The catches are inside the limits as written, ${offRatioText(off.value, say)}, and with A and B changed over, ${offRatioText(turned, say)}.`,
        )
      : likely(
          (say) =>
            en`With A and B changed over the catches would be ${offRatioText(turned, say)}, inside the limits; as written they are ${offRatioText(off.value, say)}. Look which cup is which, and which tank feeds which pump.`,
        );
  },
};
