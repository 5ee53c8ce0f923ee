import { countText, expectedTexts, smallestText, tooSmallText } from './checkPageWords.ts';
import type { UnfinishedCheck } from './file/unfinishedCheck.ts';
import type { Say } from './format.ts';
import { known, NOT_GIVEN } from './given.ts';
import type { Plan } from './plan.ts';
import { type Fraction, float, whole } from './ratio.ts';
import { beforeCheck } from './ratioCheck/beforeCheck.ts';
import { type CheckBox, readBox } from './ratioCheck/boxes.ts';
import type { KeptCheck } from './ratioCheck/history.ts';
import { USUAL_CONFIDENCE } from './ratioCheck/readCheck.ts';
import { fittedPumps } from './train.ts';
import { readQuantity } from './units.ts';

/** What to know before the first catch, in words; null where what it needs is not given. */
export interface BeforeWeighing {
  readonly expected: ReturnType<typeof expectedTexts>;
  readonly smallest: string | null;
  /** What is to be done where the catch would be smaller than that. */
  readonly small: string | null;
  readonly count: string | null;
}

/**
 * What the first catch should give, how large it has to be, and how many are worth making.
 *
 * @param kept  checks of the machine, which show how catches spread
 * @returns null until both the run of a catch and the step of the scale can be read
 * @source `beforeCheck`
 */
export function beforeWeighing(check: UnfinishedCheck, plan: Plan, kept: readonly KeptCheck[], say: Say): BeforeWeighing | null {
  const value = (box: CheckBox & keyof UnfinishedCheck, dimension: Parameters<typeof readQuantity>[0]): Fraction | null => {
    const entry = readBox(box, check[box], say);
    if (!entry.ok || entry.value === undefined) return null;
    const read = readQuantity(dimension, entry.value);
    return read.ok ? read.value : null;
  };
  const motorTurns = check.runBy === 'turns' ? value('turns', 'number') : turnsIn(value('time', 'time'), value('dial', 'share'), plan);
  const step_kg = value('step', 'mass');
  if (motorTurns === null || step_kg === null) return null;
  const uncertainty_kg = value('uncertainty', 'mass');
  const scale = {
    step_kg,
    readings: check.weighing === 'tared' ? (1 as const) : (2 as const),
    uncertainty_kg: uncertainty_kg === null ? NOT_GIVEN : known(uncertainty_kg),
  };
  const confidence = value('confidence', 'share');
  const before = beforeCheck(plan, alike(kept, plan), {
    motorTurns,
    scale,
    confidence: confidence === null ? USUAL_CONFIDENCE : float(confidence),
  });
  const { expected, smallest, leastTurns, repeatability } = before;
  const isSmall = leastTurns !== null && motorTurns.compare(whole(leastTurns)) < 0;
  return {
    expected: expectedTexts(expected, say),
    smallest: smallest && smallestText(smallest, say),
    small: isSmall ? tooSmallText(leastTurns) : null,
    count: smallest && countText(before.catchesWorthMaking, repeatability !== null),
  };
}

const turnsIn = (time_s: Fraction | null, dial: Fraction | null, { motor }: Plan): Fraction | null =>
  time_s === null || dial === null ? null : time_s.mul(motor.speed_rev_per_s).mul(dial);

/** Of the same material through the same pumps. */
function alike(kept: readonly KeptCheck[], plan: Plan): readonly KeptCheck[] {
  const { A, B } = fittedPumps(plan);
  return kept.filter(({ row }) => row.material === plan.material.id && row.mounted.pumps.A === A.id && row.mounted.pumps.B === B.id);
}
