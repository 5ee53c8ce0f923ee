import type { Place } from '../finding.ts';
import type { Say } from '../format.ts';
import { limitsOfOffRatio, type OffRatioLimits } from '../mixRatio.ts';
import { type Fraction, whole, ZERO } from '../ratio.ts';
import { readNumber, spokenReading } from '../reading.ts';
import type { LimitsRow } from './material.ts';
import { type Problems, reading } from './problems.ts';

/** The target as the sheet counts it: parts of each tank. */
interface Target {
  readonly A: Fraction;
  readonly B: Fraction;
}

/** Limits as the sheet gives them, in off-ratio; null where a problem was added. The target lies between them, and both leave some A and some B. */
export function resolveLimits(row: LimitsRow, target: Target, place: Place, say: Say, problems: Problems): OffRatioLimits | null {
  const low = reading(readNumber(row.low));
  const high = reading(readNumber(row.high));
  const before = problems.count;
  const said = (value: Fraction) => spokenReading(value, say.decimal);
  const wrong = (end: 'low' | 'high', what: string) => problems.add([...place, end], `the ${end} limit ${row[end]} ${what}`);

  const absolute = row.definition === 'parts of B';
  const middle = absolute ? target.B : ZERO;
  const name = `the target, which is ${said(middle)}`;
  if (low.compare(middle) > 0) wrong('low', `lies above ${name}${absolute ? '' : '; a deviation below carries a minus sign'}`);
  if (high.compare(middle) < 0) wrong('high', `lies below ${name}`);
  const ends = extremes(row.definition, target);
  if (low.compare(ends.low) <= 0) wrong('low', `would leave no ${ends.lost}: it must be above ${said(ends.low)}`);
  if (ends.high !== null && high.compare(ends.high) >= 0) wrong('high', `would leave no A: it must be below ${said(ends.high)}`);
  return problems.count === before ? limitsOfOffRatio(row.definition, low, high, target.A, target.B) : null;
}

interface Extremes {
  readonly low: Fraction;
  /** What there would be none of at the low end. */
  readonly lost: 'A' | 'B';
  readonly high: Fraction | null;
}

/** Between what values a definition makes sense. */
function extremes(definition: LimitsRow['definition'], { A, B }: Target): Extremes {
  const share = B.div(A.add(B)).mul(whole(100));
  switch (definition) {
    case '% of B per A':
      return { low: whole(-100), lost: 'B', high: null };
    case '% of A per B':
      return { low: whole(-100), lost: 'A', high: null };
    case 'points of B in the total':
      return { low: share.neg(), lost: 'B', high: whole(100).sub(share) };
    case 'parts of B':
      return { low: ZERO, lost: 'B', high: null };
  }
}

export const writtenLimits = (limits: LimitsRow): string => `${limits.low} to ${limits.high} ${limits.definition}`;
