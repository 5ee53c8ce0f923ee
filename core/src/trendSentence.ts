import { en, plural } from './en.ts';
import { capital, type Say, signedPercentText, signedRangeText } from './format.ts';
import { shareText } from './ratioCheck/causes/words.ts';
import type { Trend, TrendValue } from './ratioCheck/history.ts';

/** A line in a chart that is not to be passed. */
export interface TrendLimit {
  readonly value: number;
  readonly words: string;
}

/** So many checks are read out one by one. */
const SAID = 12;

/**
 * All that a chart of a trend shows, for those who do not see it.
 *
 * @source our choice of words
 */
export function trendSentence(
  { values, chart }: Trend,
  {
    title,
    limits,
    isSigned,
    say,
  }: { readonly title: string; readonly limits: readonly TrendLimit[]; readonly isSigned: boolean; readonly say: Say },
): string {
  const one = (share: number) => (isSigned ? signedPercentText(share, say) : shareText(share, say));
  const range = (from: number, to: number) =>
    isSigned ? signedRangeText(from, to, say) : en`${shareText(from, say)} to ${shareText(to, say)}`;
  const sure = ({ interval, stable }: TrendValue) =>
    interval === null ? [en`one catch`] : [range(interval.from, interval.to), ...(stable ? [] : [en`the catches do not agree`])];
  const said = (of: TrendValue) => [`${of.date}: ${one(of.value)}`, ...sure(of)].join(', ');
  const skipped = values.length - SAID;
  const dates = (indexes: readonly number[]) => indexes.flatMap((index) => values[index]?.date ?? []).join(', ');
  return [
    plural(values.length)`${title}, ${values.length} ratio check.|${title}, ${values.length} ratio checks.`,
    ...(skipped > 0 ? [en`The last ${SAID}:`] : []),
    `${values.slice(-SAID).map(said).join('; ')}.`,
    ...(chart === null ? [] : [en`Mean ${one(chart.mean)}, control limits ${range(chart.low, chart.high)}.`]),
    ...(chart === null || chart.beyond.length === 0 ? [] : [en`Beyond the control limits: ${dates(chart.beyond)}.`]),
    ...(chart === null || chart.runs.length === 0 ? [] : [en`Eight or more on one side of the mean up to: ${dates(chart.runs)}.`]),
    ...limits.map(({ value, words }) => `${capital(words)} ${one(value)}.`),
  ].join(' ');
}
