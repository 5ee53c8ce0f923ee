import type { PlannedOption } from './option.ts';
import type { Plan } from './plan.ts';
import { type Fraction, float, ONE } from './ratio.ts';

/** A mark on a scale of the band: where it stands, in per cent of the width, and what is written at it. */
export interface Mark {
  readonly at: number;
  readonly value: number;
  readonly places: number;
}

/** A ratio on the band; `beyond` says on which side it lies where it does not fit. */
export interface Spot {
  readonly at: number;
  readonly beyond: 'left' | 'right' | null;
}

/** The ratio rule: a log scale of A : B by volume, more B to the left, with the limits, the wanted ratio and the options on it. */
export interface Band {
  readonly wanted: Spot;
  readonly limits: Span | null;
  /** Above: A : B by volume. Below: parts of B per 100 A, as the sheet counts. The shift between them is the density ratio. */
  readonly above: readonly Mark[];
  readonly below: readonly Mark[];
  readonly spotOf: (made: Pick<PlannedOption, 'bPerA'>) => Spot;
  /** Where two off-ratios lie, as the ends of a range. */
  readonly spanOf: (low: Fraction, high: Fraction) => Span;
}

/** A stretch of the band; more B lies to the left. */
export interface Span {
  readonly from: Spot;
  readonly to: Spot;
}

/** Without limits the band shows this much off-ratio either way, or what the closest options need. */
const LEAST_SHOWN = 0.005;
/** Room beside the limits, so that a near miss is still in sight. */
const ROOM = 1.6;

export function bandOf(plan: Plan, closest: readonly PlannedOption[]): Band {
  const { wantedBPerA, limits, sheet } = plan.mix;
  const furthest = closest.slice(0, 12).reduce((most, option) => Math.max(most, Math.abs(float(option.offRatio))), LEAST_SHOWN);
  const low = limits === null ? -Math.min(furthest * ROOM, 0.9) : Math.min(float(limits.low) * ROOM, -LEAST_SHOWN);
  const high = limits === null ? furthest * ROOM : Math.max(float(limits.high) * ROOM, LEAST_SHOWN);
  const wanted = 1 / float(wantedBPerA);
  // B-rich to the left: the largest off-ratio is the smallest A per B.
  const from = wanted / (1 + high);
  const to = wanted / (1 + Math.max(low, -0.95));
  const span = Math.log(to / from);
  const at = (aPerB: number) => (100 * Math.log(aPerB / from)) / span;
  const spot = (aPerB: number): Spot => {
    const x = at(aPerB);
    return { at: Math.min(100, Math.max(0, x)), beyond: x < 0 ? 'left' : x > 100 ? 'right' : null };
  };
  const perHundred = (aPerB: number) => (((100 * wanted) / aPerB) * float(sheet.partsB)) / float(sheet.partsA);
  const aPerB = (parts: number) => ((wanted * 100) / parts) * (float(sheet.partsB) / float(sheet.partsA));
  // A range may reach to where there is no B at all.
  const ofOffRatio = (e: Fraction): Spot => (e.compare(ONE.neg()) > 0 ? spot(wanted / float(ONE.add(e))) : { at: 100, beyond: 'right' });
  const spanOf = (low: Fraction, high: Fraction): Span => ({ from: ofOffRatio(high), to: ofOffRatio(low) });
  return {
    wanted: spot(wanted),
    limits: limits === null ? null : spanOf(limits.low, limits.high),
    above: roundMarks(from, to).map((mark) => ({ ...mark, at: at(mark.value) })),
    below: roundMarks(perHundred(to), perHundred(from)).map((mark) => ({ ...mark, at: at(aPerB(mark.value)) })),
    spotOf: ({ bPerA }) => spot(1 / float(bPerA)),
    spanOf,
  };
}

/** Round numbers between two values: steps of 1, 2 or 5, about seven of them. */
export function roundMarks(from: number, to: number): readonly { readonly value: number; readonly places: number }[] {
  const raw = (to - from) / 7;
  const power = Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((n) => n * 10 ** power).find((size) => size >= raw) ?? raw;
  const places = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const marks = [];
  for (let n = Math.ceil(from / step); n * step <= to; n += 1) marks.push({ value: n * step, places });
  return marks;
}
