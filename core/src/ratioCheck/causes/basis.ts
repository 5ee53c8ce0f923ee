import { en } from '../../en.ts';
import { offRatioText } from '../../format.ts';
import { liesInside, offRatio } from '../../mixRatio.ts';
import { type Cause, likely, notLookedFor, ruledOut } from './cause.ts';

/** A ratio by weight that was set up as one by volume, or the other way round. */
export const basis: Cause = {
  id: 'cause.basis',
  title: en`Wrong basis`,
  within: en`wrong basis`,
  source: en`arithmetic: ratio by weight = ratio by volume × density ratio`,
  why: en`Sheets give a ratio by weight, pumps meter by volume: forgetting the densities is as far off as they are apart.`,
  judge({ evaluation: { input, volumeBPerA, offRatio: off } }) {
    const { limits, densityBOverA, wantedBPerA, basis: ofSheet } = input.terms;
    if (limits === null) return notLookedFor(en`The material has no limits to hold the other reading against.`);
    if (!densityBOverA.known || volumeBPerA === null)
      return notLookedFor(en`The densities are not given, so the other basis cannot be held against the catches.`);
    // the figure of the sheet, taken for one of the other basis
    const mistaken = ofSheet === 'weight' ? wantedBPerA.mul(densityBOverA.value) : wantedBPerA.div(densityBOverA.value);
    const [as, meant] = ofSheet === 'weight' ? [en`by volume`, en`by weight`] : [en`by weight`, en`by volume`];
    const apart = offRatio(mistaken, wantedBPerA);
    if (liesInside(apart, limits)) return notLookedFor(en`The densities are so alike that a wrong basis would stay inside the limits.`);
    const then = offRatio(volumeBPerA, mistaken);
    return liesInside(then, limits) && !liesInside(off.value, limits)
      ? likely(
          (say) =>
            en`The catches are what the sheet’s ratio gives when it is read ${as}: ${offRatioText(then, say)} of that, ${offRatioText(off.value, say)} of what was wanted. The sheet means ${meant}; look at how the drive was worked out.`,
        )
      : ruledOut((say) => en`Read ${as} the mix would be ${offRatioText(apart, say)}; measured is ${offRatioText(off.value, say)}.`);
  },
};
