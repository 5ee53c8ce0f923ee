import { type Chemistry, offRatioOfIndex } from '../chemistry/chemistry.ts';
import { indexSaid } from '../chemistry/indexText.ts';
import { en } from '../en.ts';
import type { Place } from '../finding.ts';
import type { Say } from '../format.ts';
import { inOrder, limitsOfOffRatio, type WorkedLimits } from '../limits.ts';
import { DEFINITION_WORDS } from '../mixRatio.ts';
import { type Fraction, whole, ZERO } from '../ratio.ts';
import { readNumber, spokenReading } from '../reading.ts';
import type { LimitsRow } from './material.ts';
import { type Problems, reading } from './problems.ts';

/** The target as the sheet counts it: parts of each tank, and the index where the ratio comes from chemistry. */
interface Target {
  readonly A: Fraction;
  readonly B: Fraction;
  readonly chemistry: Chemistry | null;
}

/** Limits as the sheet gives them, in off-ratio; null where a problem was added. The target lies between them, and both leave some A and some B. */
export function resolveLimits(row: LimitsRow, target: Target, place: Place, say: Say, problems: Problems): WorkedLimits | null {
  const low = reading(readNumber(row.low));
  const high = reading(readNumber(row.high));
  const before = problems.count;
  const said = (value: Fraction) => spokenReading(value, say.decimal);
  const wrong = (end: 'low' | 'high', what: string) => problems.add([...place, end], what);
  const { definition } = row;
  const { chemistry } = target;
  if (definition === 'index points' && chemistry === null) {
    problems.add([...place, 'definition'], en`limits in index points need a ratio from chemistry: this one is as the sheet prints it`);
    return null;
  }

  const middle = middleOf(definition, target);
  const wanted = said(middle ?? ZERO);
  if (low.compare(middle ?? ZERO) > 0)
    wrong(
      'low',
      middle === null
        ? en`the low limit ${row.low} lies above the target, which is ${wanted}; a deviation below carries a minus sign`
        : en`the low limit ${row.low} lies above the target, which is ${wanted}`,
    );
  if (high.compare(middle ?? ZERO) < 0) wrong('high', en`the high limit ${row.high} lies below the target, which is ${wanted}`);
  const ends = extremes(definition, target);
  if (low.compare(ends.low) <= 0)
    wrong('low', en`the low limit ${row.low} would leave no ${ends.lost}: it must be above ${said(ends.low)}`);
  if (ends.high !== null && high.compare(ends.high) >= 0)
    wrong('high', en`the high limit ${row.high} would leave no A: it must be below ${said(ends.high)}`);
  if (problems.count > before) return null;
  if (definition !== 'index points') return limitsOfOffRatio(definition, low, high, target.A, target.B);
  // Where A is counted, the higher index is the leaner in B: the ends change places.
  return chemistry && inOrder(offRatioOfIndex(chemistry, low), offRatioOfIndex(chemistry, high));
}

/** The target where limits are given as it is itself; null where they are deviations from it. */
function middleOf(definition: LimitsRow['definition'], { B, chemistry }: Target): Fraction | null {
  if (definition === 'index points') return chemistry?.index.value ?? null;
  return definition === 'parts of B' ? B : null;
}

interface Extremes {
  readonly low: Fraction;
  /** What there would be none of at the low end. */
  readonly lost: 'A' | 'B';
  readonly high: Fraction | null;
}

/** Between what values a definition makes sense. */
function extremes(definition: LimitsRow['definition'], { A, B, chemistry }: Target): Extremes {
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
    case 'index points':
      return { low: ZERO, lost: chemistry?.countedIn ?? 'B', high: null };
  }
}

/** Limits as the sheet says them; an index by the name the trade has for it. */
export const writtenLimits = ({ low, high, definition }: LimitsRow, chemistry: Chemistry | null): string =>
  definition === 'index points' && chemistry !== null
    ? indexSaid(chemistry.system, en`${low} to ${high}`)
    : en`${low} to ${high} ${DEFINITION_WORDS[definition]}`;
