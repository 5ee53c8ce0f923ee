import { en } from './en.ts';
import { exactRatioText, fixed, ratioText, type Say } from './format.ts';
import type { PlannedOption } from './option.ts';
import type { Plan, Pump } from './plan.ts';
import { type Fraction, ONE, whole } from './ratio.ts';
import { delivered_m3_per_rev, pumpRatio, pumpsText } from './train.ts';
import { fromSI } from './units.ts';

/**
 * Pumps and wheels as one product, so that a ratio already in the pumps is not applied twice.
 *
 * @returns stages that both pumps share cancel and are left out
 * @source kinematics: R = D_A n_A / (D_B n_B)
 * @example productText(plan, option, say)  // 'pumps 12 : 6 × teeth 25 : 23 = 50 : 23 = 2.1739 : 1'
 */
export function productText(plan: Plan, option: PlannedOption, say: Say): string {
  const R = ONE.div(option.bPerA);
  const wheels = option.stages.flatMap(({ stage, teeth }) => {
    if (stage.turns !== 'A' && stage.turns !== 'B') return [];
    // A wheel that drives pump A makes more of A; one that drives pump B makes less of it.
    const pair = stage.turns === 'A' ? `${teeth.driver} : ${teeth.driven}` : `${teeth.driven} : ${teeth.driver}`;
    return [plan.stages.length === 1 ? en`teeth ${pair}` : `${stage.name} ${pair}`];
  });
  const pumps = `${pumpsText(option.pumps)} ${displacements(option.pumps, say)}`;
  return `${[pumps, ...wheels].join(' × ')} = ${exactRatioText(R)} = ${ratioText(R, say)}`;
}

/** What the pumps count for in one turn, as numbers where they are short in one of the usual units, else their ratio in smallest terms. */
function displacements(pumps: Readonly<Record<'A' | 'B', Pump>>, say: Say): string {
  for (const unit of say.system === 'metric' ? ['cc/rev'] : ['in3/rev', 'cc/rev']) {
    const [a, b] = [pumps.A, pumps.B].map((pump) => shortDecimal(fromSI('displacement', delivered_m3_per_rev(pump), unit), say));
    if (typeof a === 'string' && typeof b === 'string') return `${a} : ${b}`;
  }
  return exactRatioText(ONE.div(pumpRatio(pumps)));
}

/** A number with as many places as it has, four at most; null where it has more. */
function shortDecimal(value: Fraction, say: Say): string | null {
  for (let places = 0; places <= 4; places += 1) if (value.mul(whole(10n ** BigInt(places))).d === 1n) return fixed(value, places, say);
  return null;
}
