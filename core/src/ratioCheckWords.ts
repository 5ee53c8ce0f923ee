import { dayText } from './days.ts';
import { en } from './en.ts';
import { offRatioText, quantity, type Say, SENSE, signedRangeText } from './format.ts';
import type { BestAsMeasured, NoProposal } from './ratioCheck/asMeasured.ts';
import { shareText } from './ratioCheck/causes/words.ts';
import type { MeasuredDelivery } from './ratioCheck/delivery.ts';
import type { Evaluation } from './ratioCheck/evaluate.ts';
import type { Further } from './ratioCheck/further.ts';
import type { Trend } from './ratioCheck/history.ts';
import type { CheckVerdict } from './ratioCheck/verdict.ts';

// A ratio check as people read it.

/** The decision rule, beside every verdict. */
export const DECISION_RULE = en`Pass: the whole interval lies inside the limits. Fail: all of it lies outside. Not proven: it reaches over a limit.`;

const VERDICTS: Readonly<Record<CheckVerdict, string>> = {
  pass: en`Pass`,
  fail: en`Fail`,
  'not proven': en`Not proven`,
  'no limits': en`No verdict`,
};

export const verdictHead = (verdict: CheckVerdict): string => VERDICTS[verdict];

/**
 * Why the verdict is what it is.
 *
 * @source our choice of words
 * @example verdictReason(first check of the demo, say)  // 'The interval, −0.66 to −0.34 %, lies wholly inside the limits, −2.86 to +2.86 % (+ is B-rich).'
 */
export function verdictReason({ verdict, interval, input, counted }: Evaluation, say: Say): string {
  const { limits } = input.terms;
  if (limits === null) return en`The material has no limits, so nothing says what passes.`;
  const allowed = en`the limits, ${signedRangeText(limits.low, limits.high, say)} (${SENSE})`;
  if (interval === null)
    return counted.length < 2
      ? en`One catch has no spread, so it proves nothing against ${allowed}.`
      : en`The catches spread so far that they give no interval to hold against ${allowed}.`;
  const range = en`The interval, ${signedRangeText(interval.from.value, interval.to.value, say)},`;
  switch (verdict) {
    case 'pass':
      return en`${range} lies wholly inside ${allowed}.`;
    case 'fail':
      return en`${range} lies wholly outside ${allowed}.`;
    default:
      return en`${range} reaches over ${allowed}.`;
  }
}

/** How the interval was made. */
export function intervalBasis({ input, degreesOfFreedom, quantile, weighed }: Evaluation, say: Say): string {
  if (quantile === null) return en`An interval needs at least two catches.`;
  const { scale, confidence } = input;
  const steps = weighed
    ? en` Half a scale step of ${quantity(scale.step_kg, 'mass', 'g', 2, say)} each way is in it, ${scale.readings === 1 ? en`one reading` : en`two readings`} a net weight.`
    : '';
  return en`Fieller’s interval on the pairs, ${shareText(confidence, say, 0)}, Student’s t with ${degreesOfFreedom} ${degreesOfFreedom === 1 ? 'degree' : 'degrees'} of freedom, ${quantity(quantile, 'number', '', 3, say)}.${steps}`;
}

/** What would settle a check that is not proven. */
export function furtherText(further: Further, weighed: boolean, say: Say): string {
  switch (further.kind) {
    case 'a second catch':
      return en`Make a second catch, better two more: one alone has no spread.`;
    case 'find the cause':
      return en`More catches would not help: these do not agree. Find the cause first.`;
    case 'more catches':
      return en`${further.catches} more ${further.catches === 1 ? en`catch that agrees` : en`catches that agree`} with these would settle it, toward ${further.toward}.`;
    case 'larger catches': {
      const of = (amount: number) => (weighed ? quantity(amount, 'mass', 'g', 0, say) : quantity(amount, 'volume', 'cc', 0, say));
      return en`The scale is too coarse for catches this small: as many of about ${of(further.amount.A)} of A and ${of(further.amount.B)} of B would settle it, toward ${further.toward}.`;
    }
    case 'too near the limit':
      return en`The mean lies so near a limit that not even twenty more catches would settle it.`;
  }
}

/** What a pump delivered. */
export const deliveryText = ({ share, uncertainty }: MeasuredDelivery, say: Say): string =>
  en`${shareText(share.value, say)}${uncertainty === null ? '' : ` ± ${shareText(uncertainty.value, say)}`} of its displacement`;

const NO_PROPOSAL: Readonly<Record<NoProposal | 'the machine has changed', string>> = {
  'one catch': en`One catch is no ground for other sprockets.`,
  'the catches do not agree': en`The catches do not agree: find the cause first; no sprockets are proposed.`,
  'no delivery': en`What the pumps delivered is not known, so no sprockets are proposed.`,
  'the machine has changed': en`The machine has changed since this check, so no sprockets are proposed by it.`,
};

/** What would be best with the pumps as they were found, or why nothing is proposed. */
export function proposalText(proposal: BestAsMeasured | NoProposal | 'the machine has changed', say: Say): string {
  if (typeof proposal === 'string') return NO_PROPOSAL[proposal];
  const now = en`With the pumps as measured the fitted teeth stand at ${offRatioText(proposal.fitted, say)}`;
  if (proposal.best === null) return en`${now}; nothing else can be built.`;
  const { mounted, offRatio, partsChanged } = proposal.best;
  if (partsChanged === 0) return en`${now}, and nothing that can be built comes closer.`;
  const teeth = mounted.teeth.map(({ driver, driven }) => en`${driver} to ${driven}`).join(', ');
  return en`${now}; the closest that can be built is ${teeth}, ${offRatioText(offRatio, say, 3)}, ${partsChanged} ${partsChanged === 1 ? 'part' : 'parts'} to change. Gearing for a worn pump hides it: see to the pump first.`;
}

/** When a trend meets its limits, if it goes on; null where nothing tells. */
export function meetingText({ meetings, line }: Trend, say: Say): string | null {
  if (line === null) return null;
  const [next] = [...meetings].sort((a, b) => a.x - b.x);
  if (next === undefined) return null;
  const ends = [next.from, next.to].map((end) => (end === null ? '' : dayText(end)));
  const [from, to] = ends;
  const about = from !== '' && to !== '' ? en`, between ${from} and ${to} at 95\u00A0%` : en`, but the points leave the day wide open`;
  return en`If it goes on so, it reaches ${shareText(next.limit, say)} about ${dayText(next.x)}${about}.`;
}
