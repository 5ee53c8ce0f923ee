import { en } from './en.ts';
import { type Say, signedPercentText } from './format.ts';
import type { SideName } from './plan.ts';
import { shareText } from './ratioCheck/causes/words.ts';
import type { Trend } from './ratioCheck/history.ts';
import type { Judged } from './ratioCheck/judge.ts';
import { meetingText } from './ratioCheckWords.ts';

/** The figures of the trends of one check. */
export interface TrendRow {
  readonly check: string;
  readonly date: string;
  /** Of its displacement; null where it is not known. */
  readonly A: string | null;
  readonly B: string | null;
  /** Null where another material or other teeth were on. */
  readonly offRatio: string | null;
}

/** The trends as a table, in the order of their days. */
export function trendTable({ delivery, offRatio }: Pick<Judged, 'delivery' | 'offRatio'>, say: Say): readonly TrendRow[] {
  const all = [...delivery.A.values, ...delivery.B.values, ...offRatio.values];
  const days = [...new Map(all.map(({ check, date }) => [check, date]))].sort(([, a], [, b]) => (a < b ? -1 : a > b ? 1 : 0));
  const of = ({ values }: Trend, check: string) => values.find((one) => one.check === check)?.value ?? null;
  const share = (side: SideName, check: string) => {
    const value = of(delivery[side], check);
    return value === null ? null : shareText(value, say);
  };
  return days.map(([check, date]) => {
    const off = of(offRatio, check);
    return { check, date, A: share('A', check), B: share('B', check), offRatio: off === null ? null : signedPercentText(off, say) };
  });
}

/** When each trend meets its limit, if it goes on, in sentences. */
export function meetingTexts({ delivery, offRatio }: Pick<Judged, 'delivery' | 'offRatio'>, say: Say): readonly string[] {
  return (
    [
      [en`Pump A`, delivery.A],
      [en`Pump B`, delivery.B],
      [en`Off-ratio`, offRatio],
    ] as const
  ).flatMap(([what, trend]) => {
    const text = meetingText(trend, say);
    return text === null ? [] : [`${what}: ${text}`];
  });
}
