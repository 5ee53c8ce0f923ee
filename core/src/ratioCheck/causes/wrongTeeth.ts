import { choicesOf } from '../../choices.ts';
import { en } from '../../en.ts';
import { offRatioText, type Say, signedRangeText } from '../../format.ts';
import { offRatio } from '../../mixRatio.ts';
import { END_WORDS, ENDS, type Plan, type SideName, type Teeth } from '../../plan.ts';
import { Fraction, float } from '../../ratio.ts';
import { bestPerChange } from '../../search/index.ts';
import { fittedPumps, fittedTeeth, madeBPerA } from '../../train.ts';
import type { Evaluation } from '../evaluate.ts';
import type { Interval } from '../model.ts';
import { type Cause, likely, notLookedFor, possible, ruledOut } from './cause.ts';

/** Digits of an end of the interval as the search takes it: finer than any two trains differ. */
const DIGITS = 12;
const NO_B = -1 + 10 ** -DIGITS;

/** Other teeth on the machine than the sheet says. */
export const wrongTeeth: Cause = {
  id: 'cause.wrongTeeth',
  title: en`Wrong teeth fitted`,
  within: en`wrong teeth fitted`,
  source: en`the search, asked for the ratio that was measured`,
  why: en`A sprocket taken from the wrong peg is a whole tooth off, which is more than wear or air do; it is found by counting, not by weighing.`,
  judge({ evaluation, plan, teethBefore }) {
    if (plan === null) return notLookedFor(en`The machine of this check is no longer in the file, so its teeth cannot be looked through.`);
    if (evaluation.unstable.length > 0) return notLookedFor(en`Catches that do not agree would fit many teeth.`);
    const measured = evaluation.volumeBPerA;
    const found = foundWithin(evaluation);
    if (measured === null || found === null) return notLookedFor(en`The catches give no interval by volume to look for teeth in.`);
    const { wantedBPerA } = plan.mix;
    const offOf = (teeth: readonly Teeth[]) => offRatio(madeBPerA(plan, fittedPumps(plan), teeth), wantedBPerA);
    const fitted = offOf(fittedTeeth(plan));
    const room = allowance(plan);
    const within = { from: found.from - room, to: found.to + room };
    const holds = (e: Fraction) => within.from <= float(e) && float(e) <= within.to;
    const range = (say: Say) => signedRangeText(found.from, found.to, say);
    if (holds(fitted))
      return ruledOut(
        (say) =>
          en`The teeth of the sheet make ${offRatioText(fitted, say)}; measured is ${range(say)} (+ is B-rich), so other teeth are not needed to explain it.`,
      );
    if (teethBefore !== null && holds(offOf(teethBefore)))
      return likely(
        (say) =>
          en`The teeth of the sheet make ${offRatioText(fitted, say)}, measured is ${range(say)} (+ is B-rich): that is what the teeth from before the change give, ${offRatioText(offOf(teethBefore), say)}. Look whether the change was made.`,
      );
    const other = otherTeeth(plan, measured, room, found, wantedBPerA);
    if (other === null)
      return ruledOut(
        (say) => en`Measured is ${range(say)} (+ is B-rich); no other teeth of the rack explain it better than those of the sheet.`,
      );
    return possible(
      (say) =>
        en`The teeth of the sheet make ${offRatioText(fitted, say)}, measured is ${range(say)} (+ is B-rich). With ${otherText(plan, other)} it would be ${offRatioText(offOf(other), say)}. Count the teeth that are on.`,
    );
  },
};

/** Off-ratio within which the measured mean lies: its interval, of one catch what the steps of the scale leave open. */
function foundWithin({ interval, counted: [first] }: Evaluation): Interval | null {
  if (interval !== null) return { from: interval.from.value, to: interval.to.value };
  return first.byStep && { from: float(first.byStep.from), to: float(first.byStep.to) };
}

/** Both pumps may be off by their tolerance beside the teeth. */
function allowance(plan: Plan): number {
  const { A, B } = fittedPumps(plan);
  const of = (side: SideName) => {
    const { tolerance } = side === 'A' ? A : B;
    return tolerance.known ? float(tolerance.value) : 0;
  };
  return of('A') + of('B');
}

/** Those that change the fewest positions against the sheet; null where none fit. */
function otherTeeth(plan: Plan, measured: Fraction, room: number, found: Interval, wanted: Fraction): readonly Teeth[] | null {
  const mean = float(measured.div(wanted));
  // a range may reach to where there is no B at all; of what can be built all lies above
  const end = (off: number) => new Fraction(Math.max((1 + off) / mean - 1, NO_B).toFixed(DIGITS));
  const choices = choicesOf({ ...plan, choice: { ...plan.choice, wheels: 'rack', purchases: 0, anyPump: false } });
  const limits = { low: end(found.from - room), high: end(found.to + room) };
  const option = bestPerChange({ ...choices.problem, wanted: measured, limits }, choices.rules).find((one) => one?.inside === true);
  return option ? choices.teethOf(option) : null;
}

const otherText = (plan: Plan, teeth: readonly Teeth[]): string =>
  plan.stages
    .flatMap((stage, index) =>
      ENDS.flatMap((end) => {
        const other = teeth[index]?.[end];
        return other === undefined || other === stage[end].teeth
          ? []
          : [en`${other} teeth in place of ${stage[end].teeth} at ${stage.name} ${END_WORDS[end]}`];
      }),
    )
    .join(en` and `);
