import { en } from './en.ts';
import { fixed, type Say, signed } from './format.ts';
import type { Trend, TrendValue } from './ratioCheck/history.ts';
import { escaped } from './sheet/html.ts';
import { spread } from './sheet/spread.ts';
import { textWidth_em } from './sheet/textWidth.ts';
import { days, joined, label, mark, mm } from './trendMarks.ts';
import { trendScale } from './trendScale.ts';
import { type TrendLimit, trendSentence } from './trendSentence.ts';

// A chart of single values, one mark a check, in the colour of the text around it; every size is in millimetres of the drawing.

/** What a trend is of, and where it stands. */
export interface ChartWish {
  /** As `Delivery of pump B, %`. */
  readonly title: string;
  /** Values that are not to be passed, drawn through; a share like the trend's own. */
  readonly limits: readonly TrendLimit[];
  /** Off-ratios carry their sign. */
  readonly isSigned: boolean;
  readonly width_mm: number;
  readonly height_mm: number;
  readonly say: Say;
}

/** The drawing, and in words all that it shows. */
export interface TrendChart {
  readonly svg: string;
  readonly sentence: string;
}

const TYPE_mm = 2.5;
const LEFT_mm = 11;
const RIGHT_mm = 13;
/** From the end of a line to its words. */
const BESIDE_mm = 0.8;
const TOP_mm = 5;
const BOTTOM_mm = 4.5;
/** Between two round values beside the drawing. */
const STEP_mm = 4;
/** Closer together marks would not be told apart. */
const MARK_ROOM_mm = 3;
const LABEL_mm = 2.6;
/** Bold letters are so many times wider. */
const BOLD = 1.08;

/**
 * A trend as vector graphics: a mark a check in the order of their days, solid where its catches agree and hollow where they do not, with
 * its interval; the mean with long dashes, the control limits with short ones, limits drawn through. A ring stands about what lies beyond
 * the control limits or ends a run on one side of the mean.
 *
 * @returns null where there is no value; only the newest checks where more do not find room, mean and control limits still of all
 * @source our choice of form; limits as in `individualsChart`
 */
export function trendChart(trend: Trend, wish: ChartWish): TrendChart | null {
  const { width_mm, height_mm, say } = wish;
  const lines = linesIn(trend, wish);
  const end_mm = width_mm - Math.max(RIGHT_mm, ...lines.map(({ words }) => BESIDE_mm + TYPE_mm * textWidth_em(words)));
  const across_mm = end_mm - LEFT_mm;
  const shown = trend.values.slice(-Math.max(1, Math.floor(across_mm / MARK_ROOM_mm)));
  if (shown.length === 0) return null;
  const bottom_mm = height_mm - BOTTOM_mm;
  const mostSteps = Math.max(1, Math.floor((bottom_mm - TOP_mm) / STEP_mm));
  const scale = trendScale(shownPercents(trend, shown, wish.limits), mostSteps);
  const level_mm = (share: number) => bottom_mm - ((100 * share - scale.from) / (scale.to - scale.from)) * (bottom_mm - TOP_mm);
  const place_mm = (index: number) => LEFT_mm + (across_mm * (index + 0.5)) / shown.length;
  const skipped = trend.values.length - shown.length;
  const ringed = new Set([...(trend.chart?.beyond ?? []), ...(trend.chart?.runs ?? [])].map((index) => index - skipped));
  const points = shown.map((value, index) => ({ value, x: place_mm(index), y: level_mm(value.value) }));
  const sentence = trendSentence(trend, wish);
  const parts = [
    label(0, TYPE_mm, wish.title, 'start', titleType(wish)),
    `<path d="M${LEFT_mm} ${TOP_mm}V${mm(bottom_mm)}H${mm(end_mm)}" fill="none" stroke-width=".2"/>`,
    ...scale.marks.map(({ value, places }) => {
      const y = level_mm(value / 100);
      const words = wish.isSigned ? signed(value, places, say) : fixed(value, places, say);
      return `<path d="M${LEFT_mm - 0.8} ${mm(y)}h.8" stroke-width=".2"/>${label(LEFT_mm - 1.2, y + 0.35 * TYPE_mm, words, 'end')}`;
    }),
    ...lineShapes(lines, end_mm, level_mm),
    ...points.slice(1).map((to, index) => joined(points[index] ?? to, to)),
    ...points.map(({ value, x, y }, index) => mark(value, [x, y], ringed.has(index), (share) => level_mm(share), [TOP_mm, bottom_mm])),
    ...days(points, height_mm),
  ];
  const svg = `<svg class="trend" width="${width_mm}mm" height="${height_mm}mm" viewBox="0 0 ${width_mm} ${height_mm}" font-size="${TYPE_mm}" fill="currentColor" stroke="currentColor" role="img" aria-label="${escaped(sentence)}">${parts.join('')}</svg>`;
  return { svg, sentence };
}

/** Intervals of catches that do not agree may be wide; they are cut off rather than flatten everything else. */
function shownPercents({ chart }: Trend, shown: readonly TrendValue[], limits: readonly TrendLimit[]): readonly number[] {
  const sure = shown.flatMap(({ value, interval, stable }) => [
    value,
    ...(stable && interval !== null ? [interval.from, interval.to] : []),
  ]);
  const lines = [...(chart === null ? [] : [chart.mean, chart.low, chart.high]), ...limits.map(({ value }) => value)];
  return [...sure, ...lines].map((share) => 100 * share);
}

/** Bold letters, as large as the drawing is wide enough for. */
function titleType({ title, width_mm }: ChartWish): string {
  const size_mm = Math.min(TYPE_mm, width_mm / (BOLD * textWidth_em(title)));
  return `font-weight="600"${size_mm < TYPE_mm ? ` font-size="${mm(size_mm)}"` : ''}`;
}

/** A line across the drawing with its words beside it. */
interface Line extends TrendLimit {
  readonly paint: string;
}

function linesIn({ chart }: Trend, { limits }: ChartWish): readonly Line[] {
  return [
    ...limits.map(({ value, words }) => ({ value, words, paint: 'stroke-width=".35"' })),
    ...(chart === null
      ? []
      : [
          { value: chart.mean, words: en`mean`, paint: 'stroke-width=".2" stroke-dasharray="2.4 .8"' },
          { value: chart.high, words: en`control`, paint: 'stroke-width=".2" stroke-dasharray=".7 .7"' },
          { value: chart.low, words: en`control`, paint: 'stroke-width=".2" stroke-dasharray=".7 .7"' },
        ]),
  ];
}

function lineShapes(all: readonly Line[], end_mm: number, level_mm: (share: number) => number): readonly string[] {
  const lines = all.map((line) => ({ ...line, y: level_mm(line.value) })).sort((a, b) => a.y - b.y);
  const middles = spread(
    lines.map(({ y }) => ({ at: y, width: LABEL_mm })),
    0,
    Number.POSITIVE_INFINITY,
  );
  return lines.map(
    ({ words, paint, y }, index) =>
      `<path d="M${LEFT_mm} ${mm(y)}H${mm(end_mm)}" fill="none" ${paint}/>${label(end_mm + BESIDE_mm, (middles[index] ?? y) + 0.35 * TYPE_mm, words, 'start')}`,
  );
}
