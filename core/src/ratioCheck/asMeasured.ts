import { choicesOf } from '../choices.ts';
import { known, NOT_GIVEN } from '../given.ts';
import type { Mounted } from '../layOut.ts';
import { offRatio } from '../mixRatio.ts';
import type { Plan, Pump, SideName } from '../plan.ts';
import { Fraction } from '../ratio.ts';
import { findOptions, type Hooks } from '../search/index.ts';
import { fittedPumps, fittedTeeth, madeBPerA } from '../train.ts';
import type { MeasuredDelivery } from './delivery.ts';
import type { Evaluation } from './evaluate.ts';
import type { BySide } from './model.ts';

/** What would be best with the pumps as they were found. */
export interface BestAsMeasured {
  /** Off-ratio of the teeth that are on, with the deliveries as measured. */
  readonly fitted: Fraction;
  /** The first option with them; null where nothing can be built. */
  readonly best: { readonly mounted: Mounted; readonly offRatio: Fraction; readonly partsChanged: number } | null;
}

/** Why no option is proposed. */
export type NoProposal = 'one catch' | 'the catches do not agree' | 'no delivery';

/** Digits of an uncertainty as the plan keeps it. */
const DIGITS = 8;

/**
 * The option that is best with the deliveries as measured; a proposal only where catches are stable.
 *
 * @param plan  the machine with what was on it
 * @source the search, each displacement times its delivery
 * @example bestAsMeasured(Bench 1, the second check of the demo)  // fitted −1.18 %, best 17 to 24 at −0.006 %
 */
export function bestAsMeasured(plan: Plan, evaluation: Evaluation, hooks: Hooks = {}): BestAsMeasured | NoProposal {
  if (evaluation.interval === null) return 'one catch';
  if (evaluation.unstable.length > 0) return 'the catches do not agree';
  const { A, B } = evaluation.delivery;
  if (A === null || B === null) return 'no delivery';
  return bestWith(withDeliveries(plan, { A, B }), hooks);
}

/** The same for a machine whose pumps count as measured already. */
export function bestWith(measured: Plan, hooks: Hooks = {}): BestAsMeasured {
  const choices = choicesOf(measured);
  const [first] = findOptions(choices.problem, choices.rules, 1, hooks).options;
  const best = first && {
    mounted: { pumps: idsOf(choices.pumpsOf(first)), teeth: choices.teethOf(first) },
    offRatio: first.offRatio,
    partsChanged: first.changed,
  };
  const made = madeBPerA(measured, fittedPumps(measured), fittedTeeth(measured));
  return { fitted: offRatio(made, measured.mix.wantedBPerA), best: best ?? null };
}

/** The same machine with the fitted pumps as they were measured, counted in the ratio. */
export function withDeliveries(plan: Plan, deliveries: BySide<MeasuredDelivery>): Plan {
  const side = (name: SideName) => {
    const of = plan.sides[name];
    const pumps = of.pumps.map((pump, index): Pump => (index === of.fitted ? measuredPump(pump, deliveries[name]) : pump));
    const [first, ...rest] = pumps;
    return first === undefined ? of : { ...of, pumps: [first, ...rest] as const };
  };
  return { ...plan, sides: { A: side('A'), B: side('B') } };
}

const measuredPump = (pump: Pump, { share, uncertainty }: MeasuredDelivery): Pump => ({
  ...pump,
  delivery: known({
    share: share.value,
    uncertainty: uncertainty === null ? NOT_GIVEN : known(new Fraction(uncertainty.value.toFixed(DIGITS))),
  }),
  asMeasured: true,
});

const idsOf = ({ A, B }: BySide<Pump>): Mounted['pumps'] => ({ A: A.id, B: B.id });
