import type { Mark } from './band.ts';
import { logMarks } from './logMarks.ts';
import { textWidth_em } from './sheet/textWidth.ts';

// The reach as a drawing in a box whose width is 100; what stands on it is never scaled, so its width in ems is told.

/** A flag on the rule: a material at its wanted ratio, with its words in a lane where they touch no others. */
export interface RuleFlag {
  readonly id: string;
  readonly at: number;
  /** Null where there is no lane left: the table has the words. */
  readonly row: number | null;
  readonly toLeft: boolean;
  readonly words: string;
  readonly limits: Stretch | null;
  readonly best: number | null;
}

/** From one place on the rule to another, cut at its ends. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface ReachRule {
  /** A : B by volume. */
  readonly above: readonly Mark[];
  /** A : B by weight; empty where no densities are known. */
  readonly below: readonly Mark[];
  /** How many ratios stand where, as the outline of a hill in a box of 100 by 100. */
  readonly hill: string;
  /** What the top of that hill counts. */
  readonly most: number;
  /** Every ratio as a stroke from top to bottom of a box of 100 by 100; ratios that share a pixel are one. */
  readonly strokes: string;
  readonly gaps: readonly ({ readonly index: number } & Stretch)[];
  readonly flags: readonly RuleFlag[];
  readonly lanes: number;
}

/** What is shown, in floats: A per B by volume. */
export interface ShownReach {
  /** The ends of the rule. */
  readonly low: number;
  readonly high: number;
  /** Ascending; empty where they are too many to be listed. */
  readonly ratios: readonly number[];
  /** Where they are not listed: how many stand in stretches of equal logarithm between two ends. */
  readonly density: { readonly low: number; readonly high: number; readonly counts: readonly number[] } | null;
  readonly gaps: readonly { readonly low: number | null; readonly high: number | null }[];
  readonly flags: readonly {
    readonly id: string;
    readonly words: string;
    readonly wanted: number;
    readonly limits: { readonly low: number; readonly high: number } | null;
    readonly best: number | null;
  }[];
  /** A per B by weight over A per B by volume. */
  readonly weightOverA: number | null;
}

/** Stretches in which the ratios of the window are counted. */
const BINS = 80;
const LANES = 4;
/** Ems between two flags of one lane, and between a flag and its words. */
const AIR_em = 1.2;
/** Ems that a mark of a scale keeps for its figures. */
const MARK_em = 3.6;

/**
 * The rule of a reach: what is known of it, put on whatever window is shown.
 *
 * @param width_em  of the box, in ems of the text that is written on it
 * @source our choice; a log scale, more B to the left
 */
export function reachRule(shown: ShownReach, width_em: number): ReachRule {
  const { low, high, weightOverA } = shown;
  const span = Math.log(high / low);
  const at = (aPerB: number) => (100 * Math.log(aPerB / low)) / span;
  const stretch = (from: number | null, to: number | null): Stretch | null => {
    const [start, end] = [Math.max(0, from === null ? 0 : at(from)), Math.min(100, to === null ? 100 : at(to))];
    return start < end ? { from: start, to: end } : null;
  };
  const inside = shown.ratios.filter((ratio) => ratio >= low && ratio <= high).map(at);
  const { path, most } = hillOf(shown.ratios.length > 0 || shown.density === null ? counted(inside) : carried(shown.density, at));
  const share = MARK_em / width_em;
  const flags = flagsOf(shown, at, stretch, width_em);
  return {
    above: logMarks(low, high, share),
    below: weightOverA === null ? [] : logMarks(low * weightOverA, high * weightOverA, share),
    hill: path,
    most,
    strokes: [...new Set(inside.map((x) => x.toFixed(1)))].map((x) => `M${x} 0V100`).join(''),
    gaps: shown.gaps.flatMap((gap, index) => {
      const place = stretch(gap.low, gap.high);
      return place === null ? [] : [{ index, ...place }];
    }),
    flags,
    lanes: flags.reduce((most, { row }) => Math.max(most, row === null ? 0 : row + 1), 0),
  };
}

/** A bar of the hill: where it stands, and how many ratios it counts. */
interface Bar extends Stretch {
  readonly count: number;
}

function counted(inside: readonly number[]): readonly Bar[] {
  const counts = Array.from({ length: BINS }, () => 0);
  for (const x of inside) {
    const bin = Math.min(BINS - 1, Math.floor((x * BINS) / 100));
    counts[bin] = (counts[bin] ?? 0) + 1;
  }
  return counts.map((count, bin) => ({ from: (100 * bin) / BINS, to: (100 * (bin + 1)) / BINS, count }));
}

/** Counts of another window, put where they belong on this one. */
function carried({ low, high, counts }: NonNullable<ShownReach['density']>, at: (aPerB: number) => number): readonly Bar[] {
  const edge = (index: number) => at(low * (high / low) ** (index / counts.length));
  return counts
    .map((count, index) => ({ from: Math.max(0, edge(index)), to: Math.min(100, edge(index + 1)), count }))
    .filter(({ from, to }) => from < to);
}

function hillOf(bars: readonly Bar[]): { readonly path: string; readonly most: number } {
  const most = bars.reduce((top, { count }) => Math.max(top, count), 0);
  const [first, last] = [bars[0], bars.at(-1)];
  if (most === 0 || first === undefined || last === undefined) return { path: '', most };
  const up = ({ count }: Bar) => (100 - (100 * count) / most).toFixed(1);
  const steps = bars.map((bar) => `L${bar.from.toFixed(2)} ${up(bar)}L${bar.to.toFixed(2)} ${up(bar)}`).join('');
  return { path: `M${first.from.toFixed(2)} 100${steps}L${last.to.toFixed(2)} 100Z`, most };
}

function flagsOf(
  { flags, low, high }: ShownReach,
  at: (aPerB: number) => number,
  stretch: (from: number, to: number) => Stretch | null,
  width_em: number,
): readonly RuleFlag[] {
  const taken: Stretch[][] = Array.from({ length: LANES }, () => []);
  const percent = (ems: number) => (100 * ems) / width_em;
  const onRule = flags.filter(({ wanted }) => wanted >= low && wanted <= high).toSorted((a, b) => a.wanted - b.wanted);
  return onRule.map(({ id, words, wanted, limits, best }) => {
    const x = at(wanted);
    const wide = percent(textWidth_em(words) + AIR_em);
    const toLeft = x + wide > 100 && x - wide >= 0;
    const place = toLeft ? { from: x - wide, to: x } : { from: x, to: x + wide };
    const free = taken.findIndex((lane) => lane.every(({ from, to }) => to <= place.from || from >= place.to));
    // Words that find no room at all are left to the table.
    const row = free < 0 || place.to > 100 + percent(AIR_em) ? null : free;
    if (row !== null) taken[row]?.push(place);
    return {
      id,
      at: x,
      row,
      toLeft,
      words,
      limits: limits === null ? null : stretch(limits.low, limits.high),
      best: best === null || best < low || best > high ? null : at(best),
    };
  });
}
