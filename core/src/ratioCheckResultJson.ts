import { dayText } from './days.ts';
import type { Given } from './given.ts';
import { type Exact, exact, senseWord } from './json.ts';
import type { SideName } from './plan.ts';
import { type Fraction, ONE, whole } from './ratio.ts';
import { weightBPerA } from './ratioCheck/checksCsv.ts';
import type { Evaluation } from './ratioCheck/evaluate.ts';
import type { Further } from './ratioCheck/further.ts';
import type { Trend } from './ratioCheck/history.ts';
import type { Caught, Interval } from './ratioCheck/model.ts';
import { type Dimension, fromSI } from './units.ts';

// What the catches of a ratio check say, as data.

const HUNDRED = whole(100);
export const percent = (share: Fraction): Exact => exact(share.mul(HUNDRED));
export const inUnit = (value: Given<Fraction>, dimension: Dimension, unit: string): Exact | null =>
  value.known ? exact(fromSI(dimension, value.value, unit)) : null;
export const bySide = <T>(of: (side: SideName) => T): Readonly<Record<SideName, T>> => ({ A: of('A'), B: of('B') });
const ends = (of: Interval | null) => of && { from_percent: 100 * of.from, to_percent: 100 * of.to };

export function catchesJson({ input, counted }: Evaluation): readonly Record<string, unknown>[] {
  const side = ({ mass_kg, volume_m3 }: Caught) => ({ mass_g: inUnit(mass_kg, 'mass', 'g'), volume_cc: inUnit(volume_m3, 'volume', 'cc') });
  return input.catches.map(({ sides, leftOut }, index) => {
    const figures = counted.find(({ number }) => number === index + 1);
    return {
      number: index + 1,
      leftOut,
      A: side(sides.A),
      B: side(sides.B),
      ...(figures !== undefined && {
        ratioBPerA: exact(figures.bPerA),
        shareOfB_percent: percent(figures.bPerA.div(figures.bPerA.add(ONE))),
        offRatio_percent: percent(figures.offRatio),
        sense: senseWord(figures.offRatio),
        byStep: figures.byStep && { from_percent: percent(figures.byStep.from), to_percent: percent(figures.byStep.to) },
      }),
    };
  });
}

export function resultJson(evaluation: Evaluation): Record<string, unknown> {
  const { weighed, mean, volumeBPerA, offRatio, interval, range, deviation, degreesOfFreedom, quantile } = evaluation;
  const byWeight = weightBPerA(evaluation);
  const means = bySide((side) => exact(weighed ? fromSI('mass', mean[side], 'g') : fromSI('volume', mean[side], 'cc')));
  return {
    weighed,
    mean: weighed ? { A_g: means.A, B_g: means.B } : { A_cc: means.A, B_cc: means.B },
    ratioBPerAByWeight: byWeight && exact(byWeight),
    ratioAPerBByWeight: byWeight && exact(ONE.div(byWeight)),
    ratioBPerAByVolume: volumeBPerA && exact(volumeBPerA),
    ratioAPerBByVolume: volumeBPerA && exact(ONE.div(volumeBPerA)),
    offRatio: exact(offRatio.value),
    offRatio_percent: percent(offRatio.value),
    sense: senseWord(offRatio.value),
    interval: ends(interval && { from: interval.from.value, to: interval.to.value }),
    degreesOfFreedom,
    quantile,
    range_percent: percent(range),
    deviation_percent: deviation === null ? null : 100 * deviation,
  };
}

export function deliveryJson({ delivery }: Evaluation, side: SideName): Record<string, unknown> | null {
  const of = delivery[side];
  return of && { share_percent: percent(of.share.value), uncertainty_percent: of.uncertainty && 100 * of.uncertainty.value };
}

export function trendJson({ values, chart, meetings }: Trend): Record<string, unknown> {
  return {
    values: values.map(({ check, date, value, interval, stable }) => ({
      check,
      date,
      value_percent: 100 * value,
      interval: ends(interval),
      stable,
    })),
    mean_percent: chart && 100 * chart.mean,
    control: ends(chart && { from: chart.low, to: chart.high }),
    beyondControl: chart?.beyond ?? [],
    meetings: meetings.map(({ limit, x, from, to }) => ({
      limit_percent: 100 * limit,
      date: dayText(x),
      earliest: from === null ? null : dayText(from),
      latest: to === null ? null : dayText(to),
    })),
  };
}

export function furtherJson(further: Further, weighed: boolean): Record<string, unknown> {
  if (further.kind !== 'larger catches') return { ...further };
  const { A, B } = further.amount;
  return { kind: further.kind, ...(weighed ? { A_g: 1000 * A, B_g: 1000 * B } : { A_cc: 1e6 * A, B_cc: 1e6 * B }), toward: further.toward };
}
