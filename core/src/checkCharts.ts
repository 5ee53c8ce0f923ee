import { en } from './en.ts';
import { si } from './file/problems.ts';
import type { ShopFile } from './file/shopFile.ts';
import type { Say } from './format.ts';
import { SIDES, type SideName } from './plan.ts';
import { float } from './ratio.ts';
import type { Judged } from './ratioCheck/judge.ts';
import { type ChartWish, type TrendChart, trendChart } from './trendChart.ts';
import type { TrendLimit } from './trendSentence.ts';

/**
 * The trends of a judged check as drawings: what each pump delivered, and the off-ratio of this material through these teeth.
 *
 * @returns those that have a value
 */
export function checkCharts(
  file: ShopFile,
  judged: Judged,
  say: Say,
  size: Pick<ChartWish, 'width_mm' | 'height_mm'>,
): readonly TrendChart[] {
  const { limits } = judged.evaluation.input.terms;
  const charts = [
    ...SIDES.map((side) =>
      trendChart(judged.delivery[side], {
        title: en`Delivery of pump ${side}, % of its displacement`,
        limits: leastOf(file, judged, side),
        isSigned: false,
        say,
        ...size,
      }),
    ),
    trendChart(judged.offRatio, {
      title: en`Off-ratio, %, + is B-rich`,
      limits: limits === null ? [] : [limits.low, limits.high].map((limit) => ({ value: float(limit), words: en`limit` })),
      isSigned: true,
      say,
      ...size,
    }),
  ];
  return charts.filter((chart) => chart !== null);
}

/** The least that the pump of the check may still deliver, where the shop says so. */
function leastOf({ machines }: ShopFile, { row }: Judged, side: SideName): readonly TrendLimit[] {
  const machine = machines.find(({ id }) => id === row.machine);
  const least = machine?.[side].pumps.find(({ id }) => id === row.mounted.pumps[side])?.leastDelivery;
  return least === undefined ? [] : [{ value: float(si('share', least)), words: en`least` }];
}
