import type { Mark } from '../band.ts';
import { fixed, type Say } from '../format.ts';
import type { ReachRule, Stretch } from '../reachRule.ts';
import { escaped } from '../sheet/html.ts';
import { SHEET_WIDTH_mm } from '../sheet/pageStyle.ts';

// The rule of a reach on paper: black only, places in per cent of its width, type of its own size.

/** Size of the type on it; three millimetres are about 8.5 points. */
export const RULE_TYPE_mm = 2.9;
const LANE = 4;
const HILL = 9;
const STROKES = 3.5;
const SCALE = 5.5;
const GAPS = 2.5;

/** A mark of a scale with its figure. */
interface RuleMark {
  readonly at: number;
  readonly text: string;
}

/** All that stands on the rule, worded and rounded: what is kept of it draws the same again. */
export interface RuleDrawing {
  /** All that it shows, for those who do not see it. */
  readonly sentence: string;
  readonly lanes: number;
  /** Paths in a box of 100 by 100. */
  readonly hill: string;
  readonly strokes: string;
  readonly above: readonly RuleMark[];
  readonly below: readonly RuleMark[];
  readonly gaps: readonly Stretch[];
  readonly flags: readonly Flag[];
}

/** A material at its wanted ratio; what is absent is not on the rule. */
interface Flag {
  readonly at: number;
  /** The lane of its words. */
  readonly row?: number;
  readonly toLeft: boolean;
  readonly words: string;
  readonly limits?: Stretch;
  readonly best?: number;
}

/** The drawing with its height. */
export interface QuoteRule {
  readonly svg: string;
  readonly height_mm: number;
}

/**
 * A rule as it is put on paper, and kept.
 *
 * @param sentence  all that it shows, for those who do not see it
 * @source our choice: places to a hundredth of a per cent, which is a fiftieth of a millimetre
 */
export function ruleDrawing(rule: ReachRule, sentence: string, say: Say): RuleDrawing {
  // The file knows no minus zero.
  const place = (at: number) => Number(at.toFixed(2)) + 0;
  const stretch = ({ from, to }: Stretch): Stretch => ({ from: place(from), to: place(to) });
  const mark = ({ at, value, places }: Mark): RuleMark => ({ at: place(at), text: fixed(value, places, say) });
  return {
    sentence,
    lanes: rule.lanes,
    hill: rule.hill,
    strokes: rule.strokes,
    above: rule.above.map(mark),
    below: rule.below.map(mark),
    gaps: rule.gaps.map(stretch),
    flags: rule.flags.map(({ at, row, toLeft, words, limits, best }) => ({
      at: place(at),
      ...(row === null ? {} : { row }),
      toLeft,
      words,
      ...(limits === null ? {} : { limits: stretch(limits) }),
      ...(best === null ? {} : { best: place(best) }),
    })),
  };
}

/**
 * Flags of the materials, how many ratios, each ratio, the scale by volume, gaps wider than the tolerance, the scale by weight.
 *
 * @source our choice
 */
export function ruleSvg(rule: RuleDrawing): QuoteRule {
  const hill = rule.lanes * LANE + 1;
  const strokes = hill + HILL;
  const axis = strokes + STROKES;
  const gaps = axis + SCALE;
  const foot = gaps + GAPS + 0.5;
  const height_mm = foot + (rule.below.length > 0 ? SCALE : 0);
  const box = (y: number, tall: number, path: string, paint: string) =>
    `<svg x="0" y="${y}" width="${SHEET_WIDTH_mm}" height="${tall}" viewBox="0 0 100 100" preserveAspectRatio="none"><path ${paint} d="${path}"/></svg>`;
  const parts = [
    box(hill, HILL, rule.hill, 'fill="#bbb"'),
    box(strokes, STROKES, rule.strokes, 'fill="none" stroke="#000" stroke-width=".6" vector-effect="non-scaling-stroke"'),
    level(axis),
    ...rule.above.map((mark) => markShape(mark, axis)),
    ...rule.gaps.map(({ from, to }) => `<rect x="${mm(from)}" width="${mm(to - from)}" y="${gaps}" height="${GAPS - 0.5}" fill="#000"/>`),
    ...(rule.below.length > 0 ? [level(foot), ...rule.below.map((mark) => markShape(mark, foot))] : []),
    ...rule.flags.map((flag) => poleShape(flag, hill, axis)),
    // Over the poles, with a white rim of their own.
    ...rule.flags.map(flagText),
  ];
  const svg = `<svg width="${SHEET_WIDTH_mm}mm" height="${height_mm}mm" viewBox="0 0 ${SHEET_WIDTH_mm} ${height_mm}" font-size="${RULE_TYPE_mm}" role="img" aria-label="${escaped(rule.sentence)}">${parts.join('')}</svg>`;
  return { svg, height_mm };
}

const mm = (percent: number): string => ((percent * SHEET_WIDTH_mm) / 100).toFixed(2);
const level = (y: number): string => `<path d="M0 ${y}H${SHEET_WIDTH_mm}" stroke="#000" stroke-width=".2"/>`;
const anchorAt = (at: number): string => (at < 1 ? 'start' : at > 99 ? 'end' : 'middle');

function markShape({ at, text }: RuleMark, y: number): string {
  return `<path d="M${mm(at)} ${y}v1" stroke="#000" stroke-width=".2"/><text x="${mm(at)}" y="${y + 4}" text-anchor="${anchorAt(at)}">${escaped(text)}</text>`;
}

const topOf = ({ row }: Flag): number | null => (row === undefined ? null : row * LANE + 0.5);

function poleShape(flag: Flag, hill: number, axis: number): string {
  const { at, limits, best } = flag;
  const ends = limits === undefined ? [] : [limits.from, limits.to];
  const dashes = ends.map(
    (end) => `<path d="M${mm(end)} ${axis - STROKES - 3}V${axis}" stroke="#000" stroke-width=".25" stroke-dasharray="1 .5"/>`,
  );
  const bar =
    best === undefined ? '' : `<rect x="${mm(best)}" y="${axis - STROKES}" width="1" height="${STROKES}" transform="translate(-.5 0)"/>`;
  return `<path d="M${mm(at)} ${topOf(flag) ?? hill}V${axis}" stroke="#000" stroke-width=".3"/>${dashes.join('')}${bar}`;
}

function flagText(flag: Flag): string {
  const top = topOf(flag);
  if (top === null) return '';
  const side = flag.toLeft ? 'text-anchor="end" dx="-1"' : 'dx="1"';
  return `<text x="${mm(flag.at)}" y="${top + 2.6}" ${side}>${escaped(flag.words)}</text>`;
}
