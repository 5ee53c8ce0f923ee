import { COARSE, coverage, FINE, type Simulation } from '../../core/ratioCheck/simulated.ts';
import type { Claim } from '../report.ts';
import type { Entry } from './entry.ts';

const SEED = 20_260_915;
const CHECKS = { quick: 2_000, full: 20_000 } as const;
/** Half a per cent is more than three standard deviations of a share of 95 % in 20 000; a quick run tells less. */
const WITHIN = { quick: 1.5, full: 0.5 } as const;

/**
 * How often the interval of a ratio check holds the true ratio: 95 % where the steps of the scale are small against the spread. Where they
 * are not, the figure says by how much the steps make it safer, or not safe enough.
 */
export const ratioCheck: Entry = {
  name: 'ratio-check',
  run: ({ form }) => {
    const checks = CHECKS[form.name];
    const claim = (of: Simulation, bounds: Pick<Claim, 'least' | 'most'>): Claim => {
      const held = 100 * coverage(of, checks, SEED);
      return {
        what: `interval holds the true ratio: ${of.name}`,
        figure: held,
        ...bounds,
        unit: '%',
        note: `${held.toFixed(2)} % of ${checks}`,
      };
    };
    const within = WITHIN[form.name];
    return {
      rows: [],
      claims: [
        ...FINE.map((of) => claim(of, { least: 95 - within, most: 95 + within })),
        ...COARSE.map((of) => claim(of, { least: 95 - within })),
      ],
      differences: [],
    };
  },
};
