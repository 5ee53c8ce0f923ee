import { dayCount } from '../days.ts';
import type { RatioCheckRow } from '../file/ratioCheckRow.ts';
import type { SideName } from '../plan.ts';
import { float } from '../ratio.ts';
import { type Evaluation, evaluate } from './evaluate.ts';
import { type IndividualsChart, individualsChart } from './individuals.ts';
import type { Interval } from './model.ts';
import { readCheck } from './readCheck.ts';
import { readTerms } from './terms.ts';
import { type Meeting, meets, type TrendLine, trendLine } from './trendLine.ts';

/** A kept check with what it says, by the terms of its day. */
export interface KeptCheck {
  readonly row: RatioCheckRow;
  readonly evaluation: Evaluation;
}

/** Kept checks in the order of their days; one that cannot be judged any more is left out. */
export function keptChecks(rows: readonly RatioCheckRow[]): readonly KeptCheck[] {
  return rows
    .flatMap((row, index) => {
      const read = readCheck(row, readTerms(row.terms), ['ratioChecks', index]);
      return read.ok ? [{ row, evaluation: evaluate(read.value) }] : [];
    })
    .sort((a, b) => dayCount(a.row.date) - dayCount(b.row.date));
}

/** Whether two checks were made with the same two pumps on the same machine. */
export const samePumps = (a: RatioCheckRow, b: RatioCheckRow): boolean =>
  a.machine === b.machine && a.mounted.pumps.A === b.mounted.pumps.A && a.mounted.pumps.B === b.mounted.pumps.B;

/** One value of a trend. */
export interface TrendValue {
  /** Of the check it comes from. */
  readonly check: string;
  readonly date: string;
  readonly value: number;
  /** What the catches leave open; null with one catch. */
  readonly interval: Interval | null;
  /** Catches that agree; the line of wear goes through these only. */
  readonly stable: boolean;
}

/** A measured figure from check to check. */
export interface Trend {
  readonly values: readonly TrendValue[];
  /** Null with fewer than two. */
  readonly chart: IndividualsChart | null;
  /** Through the stable ones, days since 1970 along; null with fewer than three. */
  readonly line: TrendLine | null;
  /** Where that line meets each limit that lies ahead of the last value. */
  readonly meetings: readonly (Meeting & { readonly limit: number })[];
}

const CONFIDENCE = 0.95;

/**
 * What one pump delivered of its displacement from check to check.
 *
 * @param checks  of this pump, in the order of their days
 * @param least   share below which it is to be seen to; null where the shop gave none
 * @source individuals chart and line of least squares, as `individualsChart` and `trendLine`
 */
export function deliveryTrend(checks: readonly KeptCheck[], side: SideName, least: number | null): Trend {
  const values = checks.flatMap(({ row, evaluation }): readonly TrendValue[] => {
    const of = evaluation.delivery[side];
    if (of === null) return [];
    const value = float(of.share.value);
    const interval = of.uncertainty && { from: value - of.uncertainty.value, to: value + of.uncertainty.value };
    return [{ check: row.id, date: row.date, value, interval, stable: isStable(evaluation) }];
  });
  return trendOf(values, least === null ? [] : [least]);
}

/**
 * The off-ratio of one material on one machine from check to check, with the limits of the last.
 *
 * @param checks  with the same pumps and teeth, in the order of their days
 */
export function offRatioTrend(checks: readonly KeptCheck[]): Trend {
  const values = checks.map(
    ({ row, evaluation }): TrendValue => ({
      check: row.id,
      date: row.date,
      value: float(evaluation.offRatio.value),
      interval: evaluation.interval && { from: evaluation.interval.from.value, to: evaluation.interval.to.value },
      stable: isStable(evaluation),
    }),
  );
  const limits = checks.at(-1)?.evaluation.input.terms.limits ?? null;
  return trendOf(values, limits === null ? [] : [float(limits.low), float(limits.high)]);
}

const isStable = ({ unstable, interval }: Evaluation): boolean => unstable.length === 0 && interval !== null;

function trendOf(values: readonly TrendValue[], limits: readonly number[]): Trend {
  const line = trendLine(values.filter(({ stable }) => stable).map(({ date, value }) => ({ x: dayCount(date), y: value })));
  const last = values.at(-1);
  return {
    values,
    chart: individualsChart(values.map(({ value }) => value)),
    line,
    meetings: limits.flatMap((limit) => {
      const meeting = line && meets(line, limit, CONFIDENCE);
      return meeting && last !== undefined && meeting.x > dayCount(last.date) ? [{ ...meeting, limit }] : [];
    }),
  };
}

/**
 * How far off-ratios spread from catch to catch: the deviations of several checks, pooled.
 *
 * @param checks  of one material through the same pumps
 * @returns standard deviation of the off-ratio; null where no check had two catches that agree: the cause of one that does not is to be
 *   found, not to be reckoned with
 * @source pooled standard deviation: s² = Σ (nᵢ − 1) sᵢ² / Σ (nᵢ − 1) [iso-5725-2]
 * @example pooledRepeatability(the first two checks of the demo)  // 0.00051, of 0.00048 and 0.00054 with two degrees each
 */
export function pooledRepeatability(checks: readonly KeptCheck[]): number | null {
  const spread = checks.flatMap(({ evaluation }) =>
    isStable(evaluation) && evaluation.deviation !== null
      ? [{ squares: evaluation.degreesOfFreedom * evaluation.deviation ** 2, degreesOfFreedom: evaluation.degreesOfFreedom }]
      : [],
  );
  const degreesOfFreedom = spread.reduce((sum, one) => sum + one.degreesOfFreedom, 0);
  return degreesOfFreedom === 0 ? null : Math.sqrt(spread.reduce((sum, { squares }) => sum + squares, 0) / degreesOfFreedom);
}
