import { apart, type Check, centreNotGiven, type PairSubject } from '../check.ts';
import { en } from '../en.ts';
import { lengthText } from '../format.ts';

/** Facing wheels carry no chain between them, so it is their bare teeth that must clear. */
export const clearance: Check<PairSubject> = {
  id: 'stage.clearance',
  title: en`Wheels touch`,
  worst: 'blocks',
  source: en`outside diameters of ISO 606 Annex A / ASME B29.1; centre distance above half their sum (handbook practice)`,
  judge: ({ stage, fit }) => {
    const { loop } = fit;
    if (loop === null || loop.count === null) return [centreNotGiven(stage, en`the clearance was not checked`)];
    const touching_m = (fit.driver.outsideDiameter_m + fit.driven.outsideDiameter_m) / 2;
    if (loop.centre_m > touching_m) return [];
    return [
      {
        severity: 'blocks',
        where: [...stage.place, 'centre'],
        what: (say) => {
          const [found, least] = apart(loop.centre_m, touching_m, 1, (length_m, places) => lengthText(length_m, say, places));
          return en`${stage.name}: at a centre distance of ${found} the wheels touch; they clear each other above ${least}.`;
        },
        figure: { value: loop.centre_m * 1000, unit: 'mm' },
        limit: { value: touching_m * 1000, unit: 'mm' },
      },
    ];
  },
};
