import { en } from '../en.ts';
import type { OffRatioLimits } from '../mixRatio.ts';
import { type Fraction, float, least, ONE, whole, ZERO } from '../ratio.ts';
import { formula, input, type Worked, work } from '../working.ts';
import { mostByStep_kg } from './amounts.ts';
import type { BySide, Scale } from './model.ts';
import { scaleVariance } from './pairs.ts';
import { studentQuantile } from './student.ts';

/** Smallest net weights worth catching. */
export interface SmallestCatch {
  readonly A: Worked<Fraction>;
  readonly B: Worked<Fraction>;
}

const smallestOfA = formula({
  letter: 'm',
  written: 'c · (1 / w + 1 + q) / q',
  dimension: 'mass',
  source: en`arithmetic: (w m + c) / (m − c) = w (1 + q)`,
  of: ({ c, w, q }: Record<'c' | 'w' | 'q', Fraction>) => c.mul(ONE.div(w).add(ONE).add(q)).div(q),
});

const withIt = formula({
  letter: 'b',
  written: 'm · w',
  dimension: 'mass',
  source: en`definition: B per A by weight`,
  of: ({ m, w }: Record<'m' | 'w', Fraction>) => m.mul(w),
});

/** A quarter of the way from the target to the nearer limit; null where the target lies on a limit or outside. */
export function quarterToLimit({ low, high }: OffRatioLimits): Fraction | null {
  const nearer = least(low.mul(whole(-1)), high);
  return nearer.compare(ZERO) > 0 ? nearer.div(whole(4)) : null;
}

/**
 * The smallest catch that can prove the limits on a scale: every reading half a step the worst way moves the off-ratio by no more than a
 * quarter of the way to the nearer limit.
 *
 * @param wanted  B per A by weight, above 0
 * @returns null where no catch is large enough, as the target lies on a limit
 * @source our choice of the quarter; arithmetic
 * @example smallestCatch(1 / 2.38929, { low: −1/35, high: 1/35 }, steps of 0.1 g, two readings)  // A 47.6 g, B 19.9 g
 */
export function smallestCatch(wanted: Fraction, limits: OffRatioLimits, scale: Scale): SmallestCatch | null {
  const quarter = quarterToLimit(limits);
  if (quarter === null) return null;
  const w = input(en`B per A wanted by weight`, wanted, 'number');
  const A = work(smallestOfA, en`smallest catch of A`, {
    c: input(en`half a step for each reading`, mostByStep_kg(scale), 'mass'),
    w,
    q: input(en`a quarter of the way to the nearer limit`, quarter, 'share'),
  });
  return { A, B: work(withIt, en`smallest catch of B`, { m: A, w }) };
}

/**
 * The smallest net weight of which half a step is no more than a share.
 *
 * @param share  above 0
 * @source arithmetic
 * @example leastReadable_kg(a scale of 1 g, 1/100)  // 50 g
 */
export const leastReadable_kg = ({ step_kg }: Scale, share: Fraction): Fraction => step_kg.div(whole(2)).div(share);

const FEWEST = 3;
const MOST = 10;

/**
 * How many catches are worth making: the fewest, from three, whose interval would be no wider to either side than half the way to the
 * nearer limit.
 *
 * @param amount         expected net weights, kg
 * @param repeatability  standard deviation of the off-ratio from catch to catch as earlier checks showed it; null where none did
 * @returns three where no repeatability is known, which the first catches then show; null where not even ten do
 * @source our choice of half the way and of three; interval of a mean [NIST/SEMATECH e-Handbook 1.3.5.2]
 */
export function catchesWorthMaking(
  amount: BySide<Fraction>,
  limits: OffRatioLimits,
  { scale, confidence, repeatability }: { readonly scale: Scale; readonly confidence: number; readonly repeatability: number | null },
): number | null {
  if (repeatability === null) return FEWEST;
  const quarter = quarterToLimit(limits);
  if (quarter === null) return null;
  const { step, shared } = scaleVariance(scale);
  const byScale = (variance: number) => variance * (float(amount.A) ** -2 + float(amount.B) ** -2);
  for (let count = FEWEST; count <= MOST; count++) {
    const variance = (repeatability ** 2 + byScale(step)) / count + byScale(shared);
    if (studentQuantile(confidence, count - 1) * Math.sqrt(variance) <= 2 * float(quarter)) return count;
  }
  return null;
}
