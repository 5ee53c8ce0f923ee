import { dialText } from '../dial.ts';
import { en } from '../en.ts';
import { type CatchAmount, type ExpectedCatch, expectedCatch } from '../expectedCatch.ts';
import { flowOf, settingOrFastest } from '../flow.ts';
import { fixed, quantity, type Say } from '../format.ts';
import type { PlannedOption } from '../option.ts';
import type { Plan } from '../plan.ts';
import { type Fraction, float, whole } from '../ratio.ts';
import { partsPlaces } from './paperText.ts';

/** The ratio check as it is written down by hand: what is expected, what the limits allow, rows to fill in. */
export interface CatchTable {
  /** How the catch is made. */
  readonly how: string;
  readonly heads: { readonly a: string; readonly b: string; readonly ratio: string };
  /** Limits of 100 B / A; null where the material has none. */
  readonly limits: string | null;
  readonly rows: readonly string[];
  /** What to hold a catch against, in words, and what to do otherwise. */
  readonly rule: string;
  readonly otherwise: string;
}

/** Three catches show whether they repeat. */
const CATCHES = ['1', '2', '3'];

export function catchTable(plan: Plan, option: PlannedOption, say: Say): CatchTable {
  const expected = expectedCatch(plan, option.pumps, option.teeth);
  const { A, B } = expected.sides;
  const { limitsOnB } = expected;
  const perHundred = (amount: CatchAmount) => counted(amount).div(counted(A)).mul(whole(100));
  const limit = (amount: CatchAmount) => fixed(perHundred(amount), partsPlaces(perHundred(B)), say);
  return {
    how: en`both sides unmixed, ${expected.motorTurns} motor turns: pump A ${turnsText(A.pumpTurns, say)}, pump B ${turnsText(B.pumpTurns, say)} turns; ${timeText(plan, option, say)}`,
    heads: { a: en`A, ${unit(A)} (about ${number(A, say)})`, b: en`B, ${unit(B)} (about ${number(B, say)})`, ratio: '100 × B / A' },
    limits: limitsOnB === null ? null : en`${limit(limitsOnB.low)} to ${limit(limitsOnB.high)}`,
    rows: CATCHES,
    ...rule(expected, say),
  };
}

function rule({ sides: { A, B }, limitsOnB }: ExpectedCatch, say: Say): { readonly rule: string; readonly otherwise: string } {
  if (limitsOnB === null) {
    return {
      rule: en`Expected: A ${amountText(A, say)}, B ${amountText(B, say)}.`,
      otherwise: en`The limits of the material are not given: ask before release.`,
    };
  }
  return {
    rule: en`If A is ${amountText(A, say)}, B must be ${number(limitsOnB.low, say)} to ${amountText(limitsOnB.high, say)}`,
    otherwise: en`(expected ${amountText(B, say)}). Outside: catch again before touching a wheel.`,
  };
}

/** The number that is put down: grams where they can be told, else cubic centimetres. */
const counted = ({ mass_kg, volume_m3 }: CatchAmount): Fraction =>
  mass_kg.known ? mass_kg.value.mul(whole(1000)) : volume_m3.mul(whole(1_000_000));
const unit = ({ mass_kg }: CatchAmount): string => (mass_kg.known ? 'g' : 'cc');
const number = (amount: CatchAmount, say: Say): string => fixed(counted(amount), float(counted(amount)) < 10 ? 2 : 1, say);
const amountText = (amount: CatchAmount, say: Say): string => `${number(amount, say)}\u00A0${unit(amount)}`;

const turnsText = (turns: Fraction, say: Say): string => fixed(turns, turns.d === 1n ? 0 : 2, say);

/** How long the catch runs, so that it can be taken by the clock: at the dial for the flow wanted, else at the fastest. */
function timeText(plan: Plan, option: PlannedOption, say: Say): string {
  const flow = flowOf(plan, option);
  const share = settingOrFastest(flow)?.dial.value ?? flow.range.to.share;
  const speed_rev_per_s = plan.motor.speed_rev_per_s.mul(share);
  return en`${quantity(whole(plan.catchTurns).div(speed_rev_per_s), 'time', 's', 1, say)} at dial ${dialText(share, say)}`;
}
