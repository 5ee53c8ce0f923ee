import { apart, type Check, centreNotGiven, type PairSubject } from '../check.ts';
import { en } from '../en.ts';
import { fixed } from '../format.ts';

const WARN_UNDER_deg = 120;
const BLOCK_UNDER_deg = 90;
const degrees = (angle_rad: number): number => (angle_rad * 180) / Math.PI;

export const wrap: Check<PairSubject> = {
  id: 'stage.wrap',
  title: en`Little wrap`,
  worst: 'blocks',
  source: en`Mott, Machine Elements, 4th ed., p. 295: at least 120 degrees; under 90 is our choice of where it ends`,
  judge: ({ stage, fit }) => {
    const { loop } = fit;
    if (loop === null || loop.count === null) return [centreNotGiven(stage, en`the wrap was not checked`)];
    const wrap_deg = degrees(loop.wrap_rad);
    if (wrap_deg >= WARN_UNDER_deg) return [];
    const blocked = wrap_deg < BLOCK_UNDER_deg;
    const limit_deg = blocked ? BLOCK_UNDER_deg : WARN_UNDER_deg;
    return [
      {
        severity: blocked ? 'blocks' : 'warns',
        where: stage.place,
        what: (say) => {
          const [found, wanted] = apart(wrap_deg, limit_deg, 1, (angle_deg, places) => fixed(angle_deg, places, say));
          return en`${stage.name}: the smaller wheel has ${found} degrees of wrap; ${wanted} are wanted. More teeth on it or a longer centre distance give more.`;
        },
        figure: { value: wrap_deg, unit: 'deg' },
        limit: { value: limit_deg, unit: 'deg' },
      },
    ];
  },
};
