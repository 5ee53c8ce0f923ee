import { type Check, notMade, type PairSubject } from '../check.ts';
import { en } from '../en.ts';
import { lengthText } from '../format.ts';
import { isMoved, travel_m } from '../travel.ts';

export const travel: Check<PairSubject> = {
  id: 'stage.travel',
  title: en`Shaft travel`,
  worst: 'notes',
  source: en`exact geometry: the taut centre of the pitch count less the centre as it is now`,
  judge: ({ stage, teeth, fit }) => {
    const move_m = travel_m(stage, teeth, fit);
    if (move_m === null) {
      return fit.loop === null
        ? [
            notMade(
              [...stage.place, 'centre'],
              en`${stage.name}: the centre distance is not given, so it is not known how far the shafts move.`,
            ),
          ]
        : [
            notMade(
              [...stage.place, 'centreNow'],
              en`${stage.name}: the centre now is not given, so it is not known how far the shafts move.`,
            ),
          ];
    }
    if (!isMoved(move_m)) return [];
    return [
      {
        severity: 'notes',
        where: [...stage.place, 'centreNow'],
        what: (say) => {
          const travel = lengthText(Math.abs(move_m), say);
          return move_m < 0 ? en`${stage.name}: the shafts move ${travel} closer.` : en`${stage.name}: the shafts move ${travel} apart.`;
        },
        figure: { value: move_m * 1000, unit: 'mm' },
        limit: null,
      },
    ];
  },
};
