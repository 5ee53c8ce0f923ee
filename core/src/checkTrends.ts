import type { MachineRow } from './file/machine.ts';
import { si } from './file/problems.ts';
import type { RatioCheckRow } from './file/ratioCheckRow.ts';
import { type Say, signedPercentText } from './format.ts';
import { SIDES, type SideName } from './plan.ts';
import { float } from './ratio.ts';
import { shareText } from './ratioCheck/causes/words.ts';
import type { Trend } from './ratioCheck/history.ts';
import type { BySide } from './ratioCheck/model.ts';
import { readTerms } from './ratioCheck/terms.ts';
import { meetingText } from './ratioCheckWords.ts';
import { trendChart } from './trendChart.ts';
import type { TrendLimit } from './trendSentence.ts';

/** One trend as the page shows it. */
export interface CheckTrend {
  readonly title: string;
  readonly svg: string;
  /** When it meets its limits, if it goes on; null where nothing tells. */
  readonly meeting: string | null;
  readonly figures: readonly { readonly check: string; readonly date: string; readonly figure: string }[];
}

/** On the page a millimetre of the drawing is stretched to the width there is. */
const WIDTH_mm = 84;
const HEIGHT_mm = 42;

/**
 * The trends up to a check: what each pump delivered, and the off-ratio.
 *
 * @param row  the last check of the trends; its terms give the limits
 * @returns those that have a value
 * @source `trendChart`
 */
export function checkTrends(
  { delivery, offRatio }: { readonly delivery: BySide<Trend>; readonly offRatio: Trend },
  row: Pick<RatioCheckRow, 'mounted' | 'terms'>,
  machine: MachineRow,
  say: Say,
): readonly CheckTrend[] {
  const least = (side: SideName): readonly TrendLimit[] => {
    const typed = machine[side].pumps.find(({ id }) => id === row.mounted.pumps[side])?.leastDelivery;
    return typed === undefined ? [] : [{ value: float(si('share', typed)), words: 'least' }];
  };
  const { limits } = readTerms(row.terms);
  const allowed = limits === null ? [] : [limits.low, limits.high].map((limit) => ({ value: float(limit), words: 'limit' }));
  return [
    ...SIDES.map((side) => shown(delivery[side], `Delivery of pump ${side}, %`, least(side), false)),
    shown(offRatio, 'Off-ratio, %, + is B-rich', allowed, true),
  ].flatMap((one) => one ?? []);

  function shown(trend: Trend, title: string, limitsOf: readonly TrendLimit[], isSigned: boolean): CheckTrend | null {
    const chart = trendChart(trend, { title, limits: limitsOf, isSigned, width_mm: WIDTH_mm, height_mm: HEIGHT_mm, say });
    if (chart === null) return null;
    const figures = trend.values.map(({ check, date, value }) => ({
      check,
      date,
      figure: isSigned ? signedPercentText(value, say) : shareText(value, say),
    }));
    return { title, svg: chart.svg, meeting: meetingText(trend, say), figures };
  }
}
