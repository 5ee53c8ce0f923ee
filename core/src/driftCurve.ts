import { type Mark, roundMarks } from './band.ts';
import { type Drift, type DriftLine, driftOf, FURTHEST_K, type Heated } from './drift.ts';
import { en, plural } from './en.ts';
import { capital, inUnit, type Say, signedPercentText } from './format.ts';
import type { OffRatioLimits } from './mixRatio.ts';
import type { Build, Plan } from './plan.ts';
import { float } from './ratio.ts';
import { amountText } from './shown.ts';

/** The drift as a drawing in a box of 100 by 100 that may be stretched either way; the step of temperature goes to the right. */
export interface DriftCurve {
  readonly lines: readonly { readonly heated: Heated; readonly path: string }[];
  /** Steps of temperature in `unit`. */
  readonly across: readonly Mark[];
  readonly unit: string;
  /** Off-ratio in per cent; from the top. */
  readonly up: readonly Mark[];
  /** From the top; only those near the curves. */
  readonly limits: readonly { readonly end: 'low' | 'high'; readonly at: number }[];
  /** Both limits in words, with whether they lie too far away to be drawn; null where there are none. */
  readonly limitsText: string | null;
  /** All that the drawing shows. */
  readonly sentence: string;
}

/** Limits further away than so many times the drift would make it flat. */
const LIMITS_WITHIN = 4;
/** Room above and below, as a share of what is shown. */
const ROOM = 0.08;
/** Shown either way at least, where nothing moves. */
const LEAST_SHOWN = 0.0005;
const WHOM: Readonly<Record<Heated, string>> = { A: en`A alone`, B: en`B alone`, both: en`A and B together` };

export const heatedText = (heated: Heated): string => WHOM[heated];

/** The drift of a build to be drawn; null where no expansion is given. */
export function driftCurve(plan: Plan, build: Build, say: Say): DriftCurve | null {
  const drift = driftOf(plan, build);
  if (drift.lines.length === 0) return null;
  const { low, high, limits } = shownRange(drift, plan.mix.limits);
  const room = (high - low) * ROOM;
  const bottom = low - room;
  const height = high + room - bottom;
  const down = (offRatio: number) => 100 - (100 * (offRatio - bottom)) / height;
  const right = (step_K: number) => 50 + (50 * step_K) / FURTHEST_K;
  const unit = say.system === 'metric' ? 'K' : '°F';
  const end = Number(inUnit(FURTHEST_K, 'temperatureDifference', unit));

  const between =
    plan.mix.limits && en`limits ${signedPercentText(plan.mix.limits.low, say)} to ${signedPercentText(plan.mix.limits.high, say)}`;
  return {
    lines: drift.lines.map(({ heated, points }) => ({
      heated,
      path: `M${points.map(({ step, offRatio }) => `${round(right(float(step.value)))} ${round(down(float(offRatio.value)))}`).join('L')}`,
    })),
    across: roundMarks(-end, end).map((mark) => ({ ...mark, at: right((mark.value * FURTHEST_K) / end) })),
    unit,
    up: roundMarks(100 * bottom, 100 * (bottom + height)).map((mark) => ({ ...mark, at: down(mark.value / 100) })),
    limits: limits.map(([which, value]) => ({ end: which, at: down(value) })),
    limitsText: between !== null && limits.length < 2 ? en`${between}, too far away to be drawn here` : between,
    sentence: sentence(drift, between, say),
  };
}

const round = (at: number): string => at.toFixed(3);

/** From the least to the most of the curves, and of the limits where they lie near. */
function shownRange({ lines, offRatio }: Drift, limits: OffRatioLimits | null) {
  const middle = float(offRatio.value);
  const values = lines.flatMap(({ points }) => points.map((point) => float(point.offRatio.value)));
  const furthest = Math.max(LEAST_SHOWN, ...values.map((value) => Math.abs(value - middle)));
  const near = (['low', 'high'] as const).flatMap((end) => {
    const value = limits === null ? null : float(limits[end]);
    return value !== null && Math.abs(value - middle) <= LIMITS_WITHIN * furthest ? [[end, value] as const] : [];
  });
  const shown = [middle - furthest, middle + furthest, ...near.map(([, value]) => value)];
  return { low: Math.min(...shown), high: Math.max(...shown), limits: near };
}

function sentence({ lines, offRatio }: Drift, limits: string | null, say: Say): string {
  const ends = lines.map(({ heated, points }) => `${WHOM[heated]}: ${endsText(points, say)}`).join('; ');
  const said = en`Off-ratio against temperature, + is B-rich. As run ${signedPercentText(offRatio.value, say)}. ${ends}.`;
  return limits === null ? said : `${said} ${capital(limits)}.`;
}

function endsText(points: DriftLine['points'], say: Say): string {
  const [coldest, hottest] = [points[0], points.at(-1)];
  return [coldest, hottest]
    .flatMap((point) => (point === undefined ? [] : [point]))
    .map(({ step, offRatio }) => {
      const size = amountText(step.value.abs(), 'temperatureDifference', say, -1);
      const off = signedPercentText(offRatio.value, say);
      return step.value.s < 0n ? en`${size} colder ${off}` : en`${size} hotter ${off}`;
    })
    .join(', ');
}

/** What keeps a curve from being drawn; null where all are. */
export function notTellingText({ lacking, lines }: Drift): string | null {
  if (lacking.length === 0) return null;
  const missing = lacking.map(({ what }) => what).join(en` and `);
  return lines.length === 0
    ? plural(lacking.length)`The drift cannot be told: ${missing} is not given.|The drift cannot be told: ${missing} are not given.`
    : plural(
        lacking.length,
      )`The other curves cannot be told: ${missing} is not given.|The other curves cannot be told: ${missing} are not given.`;
}
