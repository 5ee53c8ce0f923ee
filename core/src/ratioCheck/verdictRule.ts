import { type Mark, roundMarks } from '../band.ts';
import { float } from '../ratio.ts';
import type { Evaluation } from './evaluate.ts';

/** Two places on the rule, the left one first. */
export interface RuleSpan {
  readonly from: number;
  readonly to: number;
}

/** The interval held against the limits on a rule of off-ratio, more B to the left; places in per cent of its width. */
export interface VerdictRule {
  readonly wanted: number;
  readonly limits: RuleSpan | null;
  readonly interval: RuleSpan | null;
  readonly mean: number;
  readonly catches: readonly { readonly number: number; readonly at: number }[];
  /** Off-ratio in per cent. */
  readonly marks: readonly Mark[];
}

/** Without limits and with one catch the rule still shows this much to either side. */
const LEAST = 0.005;
const ROOM = 0.12;

/**
 * Where everything of a verdict stands.
 *
 * @source our choice; more B to the left as on the ratio band
 */
export function verdictRule({ counted, interval, offRatio, input }: Evaluation): VerdictRule {
  const { limits } = input.terms;
  const catches = counted.map((one) => ({ number: one.number, off: float(one.offRatio) }));
  const within = interval && { low: interval.from.value, high: interval.to.value };
  const allowed = limits && { low: float(limits.low), high: float(limits.high) };
  const shown = [
    -LEAST,
    LEAST,
    ...catches.map(({ off }) => off),
    ...[within, allowed].flatMap((of) => (of === null ? [] : [of.low, of.high])),
  ];
  const span = Math.max(...shown) - Math.min(...shown);
  const [low, high] = [Math.min(...shown) - ROOM * span, Math.max(...shown) + ROOM * span];
  const at = (off: number) => (100 * (high - off)) / (high - low);
  const ends = (of: { readonly low: number; readonly high: number } | null) => of && { from: at(of.high), to: at(of.low) };
  return {
    wanted: at(0),
    limits: ends(allowed),
    interval: ends(within),
    mean: at(float(offRatio.value)),
    catches: catches.map(({ number, off }) => ({ number, at: at(off) })),
    marks: roundMarks(100 * low, 100 * high).map((mark) => ({ ...mark, at: at(mark.value / 100) })),
  };
}
