import { dayText } from './days.ts';
import { en, plural } from './en.ts';
import { offRatioText, quantity, type Say, SENSE, signedRangeText } from './format.ts';
import type { BestAsMeasured, NoProposal } from './ratioCheck/asMeasured.ts';
import type { CauseState } from './ratioCheck/causes/index.ts';
import { shareText } from './ratioCheck/causes/words.ts';
import type { MeasuredDelivery } from './ratioCheck/delivery.ts';
import type { Evaluation } from './ratioCheck/evaluate.ts';
import type { Further } from './ratioCheck/further.ts';
import type { Trend } from './ratioCheck/history.ts';
import type { Scale } from './ratioCheck/model.ts';
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

/** What speaks for a cause, and against it. */
export const CAUSE_STATES: Readonly<Record<CauseState, string>> = {
  likely: en`likely`,
  possible: en`possible`,
  'ruled out': en`ruled out`,
  'not looked for': en`not looked for`,
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
  const allowed = `${signedRangeText(limits.low, limits.high, say)} (${SENSE})`;
  if (interval === null)
    return counted.length < 2
      ? en`One catch has no spread, so it proves nothing against the limits, ${allowed}.`
      : en`The catches spread so far that they give no interval to hold against the limits, ${allowed}.`;
  const range = signedRangeText(interval.from.value, interval.to.value, say);
  switch (verdict) {
    case 'pass':
      return en`The interval, ${range}, lies wholly inside the limits, ${allowed}.`;
    case 'fail':
      return en`The interval, ${range}, lies wholly outside the limits, ${allowed}.`;
    default:
      return en`The interval, ${range}, reaches over the limits, ${allowed}.`;
  }
}

/** How the interval was made. */
export function intervalBasis({ input, degreesOfFreedom, quantile, weighed }: Evaluation, say: Say): string {
  if (quantile === null) return en`An interval needs at least two catches.`;
  const { scale, confidence } = input;
  const [sure, t] = [shareText(confidence, say, 0), quantity(quantile, 'number', '', 3, say)];
  const basis = plural(
    degreesOfFreedom,
  )`Fieller’s interval on the pairs, ${sure}, Student’s t with ${degreesOfFreedom} degree of freedom, ${t}.|Fieller’s interval on the pairs, ${sure}, Student’s t with ${degreesOfFreedom} degrees of freedom, ${t}.`;
  return weighed ? `${basis} ${stepText(scale, say)}` : basis;
}

function stepText({ step_kg, readings }: Scale, say: Say): string {
  const step = quantity(step_kg, 'mass', 'g', 2, say);
  return readings === 1
    ? en`Half a scale step of ${step} each way is in it, one reading a net weight.`
    : en`Half a scale step of ${step} each way is in it, two readings a net weight.`;
}

const TOWARD: Readonly<Record<'pass' | 'fail', string>> = { pass: en`pass`, fail: en`fail` };

/** What would settle a check that is not proven. */
export function furtherText(further: Further, weighed: boolean, say: Say): string {
  switch (further.kind) {
    case 'a second catch':
      return en`Make a second catch, better two more: one alone has no spread.`;
    case 'find the cause':
      return en`More catches would not help: these do not agree. Find the cause first.`;
    case 'more catches':
      return plural(
        further.catches,
      )`${further.catches} more catch that agrees with these would settle it, toward ${TOWARD[further.toward]}.|${further.catches} more catches that agree with these would settle it, toward ${TOWARD[further.toward]}.`;
    case 'larger catches': {
      const of = (amount: number) => (weighed ? quantity(amount, 'mass', 'g', 0, say) : quantity(amount, 'volume', 'cc', 0, say));
      return en`The scale is too coarse for catches this small: as many of about ${of(further.amount.A)} of A and ${of(further.amount.B)} of B would settle it, toward ${TOWARD[further.toward]}.`;
    }
    case 'too near the limit':
      return en`The mean lies so near a limit that not even twenty more catches would settle it.`;
  }
}

/** What a pump delivered. */
export const deliveryText = (of: MeasuredDelivery, say: Say): string => en`${deliveredShare(of, say)} of its displacement`;

/** The same as a figure alone. */
export const deliveredShare = ({ share, uncertainty }: MeasuredDelivery, say: Say): string =>
  uncertainty === null ? shareText(share.value, say) : `${shareText(share.value, say)} ± ${shareText(uncertainty.value, say)}`;

const NO_PROPOSAL: Readonly<Record<NoProposal | 'the machine has changed', string>> = {
  'one catch': en`One catch is no ground for other sprockets.`,
  'the catches do not agree': en`The catches do not agree: find the cause first; no sprockets are proposed.`,
  'no delivery': en`What the pumps delivered is not known, so no sprockets are proposed.`,
  'the machine has changed': en`The machine has changed since this check, so no sprockets are proposed by it.`,
};

/** What would be best with the pumps as they were found, or why nothing is proposed. */
export function proposalText(proposal: BestAsMeasured | NoProposal | 'the machine has changed', say: Say): string {
  if (typeof proposal === 'string') return NO_PROPOSAL[proposal];
  const now = offRatioText(proposal.fitted, say);
  if (proposal.best === null) return en`With the pumps as measured the fitted teeth stand at ${now}; nothing else can be built.`;
  const { mounted, offRatio, partsChanged } = proposal.best;
  if (partsChanged === 0)
    return en`With the pumps as measured the fitted teeth stand at ${now}, and nothing that can be built comes closer.`;
  const teeth = mounted.teeth.map(({ driver, driven }) => en`${driver} to ${driven}`).join(', ');
  const then = offRatioText(offRatio, say, 3);
  const best = plural(
    partsChanged,
  )`With the pumps as measured the fitted teeth stand at ${now}; the closest that can be built is ${teeth}, ${then}, ${partsChanged} part to change.|With the pumps as measured the fitted teeth stand at ${now}; the closest that can be built is ${teeth}, ${then}, ${partsChanged} parts to change.`;
  return `${best} ${en`Gearing for a worn pump hides it: see to the pump first.`}`;
}

/** When a trend meets its limits, if it goes on; null where nothing tells. */
export function meetingText({ meetings, line }: Trend, say: Say): string | null {
  if (line === null) return null;
  const [next] = [...meetings].sort((a, b) => a.x - b.x);
  if (next === undefined) return null;
  const ends = [next.from, next.to].map((end) => (end === null ? '' : dayText(end)));
  const [from, to] = ends;
  const [limit, day] = [shareText(next.limit, say), dayText(next.x)];
  return from !== '' && to !== ''
    ? en`If it goes on so, it reaches ${limit} about ${day}, between ${from} and ${to} at 95\u00A0%.`
    : en`If it goes on so, it reaches ${limit} about ${day}, but the points leave the day wide open.`;
}
