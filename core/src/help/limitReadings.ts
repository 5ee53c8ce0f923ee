import { limitsOfOffRatio, limitValues } from '../limits.ts';
import type { OffRatioLimits, PartsDefinition } from '../mixRatio.ts';
import { type Fraction, ONE, whole, ZERO } from '../ratio.ts';
import { readNumber, readRatio } from '../reading.ts';

/** What a sheet's limits would allow if they were meant so, in parts of B for 100 parts of A as the sheet counts. */
export interface LimitReading {
  readonly definition: PartsDefinition;
  readonly leastB: Fraction;
  readonly mostB: Fraction;
}

const HUNDRED = whole(100);

/**
 * The readings of limits that go up and down from the target, such as ± 3: the same figures allow very different ratios.
 *
 * @param ratio  A to B as typed
 * @param low    as typed, not above 0
 * @param high   as typed, not below 0
 * @returns one for each definition under which both ends leave some A and some B; none where a text cannot be read so
 * @source arithmetic on each definition
 * @example limitReadings('100:45', '-3', '3')[3]  // parts of B, 42 to 48
 */
export function limitReadings(ratio: string, low: string, high: string): readonly LimitReading[] {
  const [parts, least, most] = [readRatio(ratio), readNumber(low), readNumber(high)];
  if (!parts.ok || !least.ok || !most.ok) return [];
  const [A, B, third] = parts.value;
  const [down, up] = [least.value, most.value];
  if (third !== undefined || down.compare(ZERO) > 0 || up.compare(ZERO) < 0 || down.equals(up)) return [];
  const share = HUNDRED.mul(B).div(A.add(B));
  const leaves: Readonly<Record<PartsDefinition, boolean>> = {
    '% of B per A': down.compare(HUNDRED.neg()) > 0,
    '% of A per B': down.compare(HUNDRED.neg()) > 0,
    'points of B in the total': share.add(down).compare(ZERO) > 0 && share.add(up).compare(HUNDRED) < 0,
    'parts of B': B.add(down).compare(ZERO) > 0,
  };
  const offRatioOf = (definition: PartsDefinition): OffRatioLimits =>
    limitValues(
      definition === 'parts of B'
        ? limitsOfOffRatio(definition, B.add(down), B.add(up), A, B)
        : limitsOfOffRatio(definition, down, up, A, B),
    );
  const per100 = (e: Fraction) => HUNDRED.mul(B).div(A).mul(ONE.add(e));
  return DEFINITIONS.filter((definition) => leaves[definition]).map((definition) => {
    const e = offRatioOf(definition);
    return { definition, leastB: per100(e.low), mostB: per100(e.high) };
  });
}

const DEFINITIONS: readonly PartsDefinition[] = ['% of B per A', '% of A per B', 'points of B in the total', 'parts of B'];
