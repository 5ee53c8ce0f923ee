import type { Interval } from './ratioCheck/model.ts';

/** A round value on the upright scale of a chart. */
export interface ScaleMark {
  readonly value: number;
  readonly places: number;
}

/** An upright scale with its round values. */
export interface TrendScale extends Interval {
  readonly marks: readonly ScaleMark[];
}

const STEPS = [1, 2, 5, 10];
/** Room beyond the outermost value, as a share of the whole. */
const AIR = 0.06;
/** However alike the values are, the scale shows at least so much. */
const LEAST_SHOWN = 0.1;
const HAIR = 1e-9;

/**
 * An upright scale that holds some values, with round marks.
 *
 * @param values     at least one, finite
 * @param mostSteps  whole number from 1: at most so many steps, and one mark more, find room
 * @returns marks ascending, inside the scale; as many places as their step needs
 * @throws RangeError  where there is no value
 * @source our choice
 * @example trendScale([97.6, 100.2], 5).marks.map(({ value }) => value)  // 98, 99, 100
 */
export function trendScale(values: readonly number[], mostSteps: number): TrendScale {
  if (values.length === 0) throw new RangeError('trendScale: there is nothing to show');
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const air = Math.max(AIR * (most - least), (LEAST_SHOWN - (most - least)) / 2);
  const [from, to] = [least - air, most + air];
  const rough = (to - from) / mostSteps;
  const power = Math.floor(Math.log10(rough));
  const step = (STEPS.find((one) => one * 10 ** power >= rough) ?? 10) * 10 ** power;
  const places = Math.max(0, -Math.floor(Math.log10(step) + HAIR));
  const first = Math.ceil(from / step);
  const count = Math.floor(to / step) - first + 1;
  return { from, to, marks: Array.from({ length: count }, (_, index) => ({ value: (first + index) * step, places })) };
}
