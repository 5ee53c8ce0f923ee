import { type Budget, budgetOf } from '../budget.ts';
import { apart, type Check, notMade, type OptionSubject } from '../check.ts';
import type { Contribution } from '../contributions.ts';
import { percentOf } from '../dial.ts';
import { en, plural } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { type Say, signedPercentText, WAY_WORDS } from '../format.ts';
import type { OffRatioLimits } from '../mixRatio.ts';
import type { Plan, Pump, SideName } from '../plan.ts';
import { type Fraction, float, ONE, ZERO } from '../ratio.ts';
import { amountText } from '../shown.ts';

/** What is outside already is said elsewhere; here the limits are held against what pumps, densities and temperatures may add. */
export const budget: Check<OptionSubject> = {
  id: 'option.budget',
  title: en`Margin to the limits`,
  worst: 'warns',
  source: en`arithmetic: all that is not known exactly, added up the same way; the limits are the data sheet’s`,
  judge: ({ plan, pumps, teeth }) => {
    const found = budgetOf(plan, { pumps, teeth });
    if (found.verdict === 'outside') return [];
    const { limits } = plan.mix;
    const past = found.verdict === 'inside only nominally' && limits !== null ? [beyond(found, limits, pumps)] : [];
    return [...past, ...notGiven(plan, found)];
  },
};

interface End {
  readonly way: 'B-lean' | 'B-rich';
  readonly reached: Fraction;
  readonly limit: Fraction;
  readonly past: Fraction;
}

/** The end of the worst case that lies further past its limit. */
function worstEnd({ from, to }: Budget, { low, high }: OffRatioLimits): End {
  const lean: End = { way: 'B-lean', reached: from.value, limit: low, past: low.sub(from.value) };
  const rich: End = { way: 'B-rich', reached: to.value, limit: high, past: to.value.sub(high) };
  return rich.past.compare(lean.past) > 0 ? rich : lean;
}

function beyond(found: Budget, limits: OffRatioLimits, pumps: OptionSubject['pumps']): Judgement {
  const end = worstEnd(found, limits);
  const cause = causeOf(found, end, pumps);
  return {
    severity: 'warns',
    where: cause.where,
    what: (say) => {
      const [reached, limit] = apart(end.reached, end.limit, 2, (value, places) => signedPercentText(value, say, places));
      return en`In the worst case the off-ratio reaches ${reached}, past the limit of ${limit} (+ is B-rich). ${cause.words(say)}`;
    },
    figure: { value: float(percentOf(end.reached)), unit: '%' },
    limit: { value: float(percentOf(end.limit)), unit: '%' },
  };
}

interface Cause {
  readonly where: Judgement['where'];
  readonly words: (say: Say) => string;
}

const MENDS: Readonly<Record<Contribution['kind'], string>> = {
  pump: en`measure its delivery in a ratio check, or take an option nearer the middle of the limits`,
  delivery: en`weigh more or larger catches in a ratio check, or take an option nearer the middle of the limits`,
  density: en`ask the supplier for a closer density, or weigh both sides in a ratio check`,
  temperature: en`hold it closer, or take an option nearer the middle of the limits`,
  slip: en`measure the delivery of the pump in a ratio check, which then takes its place`,
};

/** What moves the worst case most: the deliveries that the ratio leaves out, or the largest contribution. */
function causeOf({ offRatio, expected, contributions }: Budget, { way }: End, pumps: OptionSubject['pumps']): Cause {
  const moved = way === 'B-rich' ? expected.value.sub(offRatio.value) : offRatio.value.sub(expected.value);
  const [first, ...others] = contributions.filter((one) => one.way === 'either' || one.way === way);
  const largest = others.reduce((most, one) => (most !== undefined && one.share.value.compare(most.share.value) <= 0 ? most : one), first);
  if (moved.compare(largest?.share.value ?? ZERO) > 0) {
    return {
      where: [...pumps[furthestFromNew(pumps)].place, 'measuredDelivery', 'value'],
      words: (say) =>
        en`The deliveries as measured do most of it, ${amountText(moved, 'share', say)} to ${WAY_WORDS[way]}: find the cause, or let the search count them.`,
    };
  }
  // Something moves it, or the worst case would be the option itself.
  if (largest === undefined) throw new RangeError('causeOf: nothing moves the worst case');
  const sign = largest.way === 'either' ? '±' : '';
  return {
    where: largest.place,
    words: (say) =>
      en`The largest contribution is ${largest.what}, ${sign}${amountText(largest.share.value, 'share', say)}: ${MENDS[largest.kind]}.`,
  };
}

/** Whose delivery moves the ratio more. */
function furthestFromNew(pumps: OptionSubject['pumps']): SideName {
  const lost = ({ delivery, asMeasured }: Pump) => (delivery.known && !asMeasured ? ONE.sub(delivery.value.share).abs() : ZERO);
  return lost(pumps.B).compare(lost(pumps.A)) > 0 ? 'B' : 'A';
}

function notGiven({ mix }: Plan, { lacking }: Budget): readonly Judgement[] {
  const limits = mix.limits === null ? [{ what: en`the limits of the material`, place: [...mix.place, 'limits'] }] : [];
  const all = [...limits, ...lacking];
  const [first] = all;
  if (first === undefined) return [];
  const [last = '', ...before] = all.map(({ what }) => what).reverse();
  const list = before.length === 0 ? last : en`${before.reverse().join(', ')} and ${last}`;
  // The limits are two.
  const what = plural(
    all.length + limits.length,
  )`The margin to the limits was not checked in full: ${list} is not given.|The margin to the limits was not checked in full: ${list} are not given.`;
  return [notMade(first.place, what)];
}
