import { type Fraction, float } from './ratio.ts';
import type { Reach } from './reach/figures.ts';
import type { ShownReach } from './reachRule.ts';

/** What an answer puts on the rule, whatever window is shown: in floats, since it is drawn. */
export function knownOnRule({ wish, ratios, perBin, gaps, weightFactor }: Reach): Omit<ShownReach, 'low' | 'high' | 'flags'> {
  const end = (ratio: Fraction | null) => (ratio === null ? null : float(ratio));
  return {
    ratios: ratios?.map(({ aPerB }) => float(aPerB)) ?? [],
    density: perBin === null ? null : { low: float(wish.low), high: float(wish.high), counts: perBin },
    gaps: gaps.map(({ low, high }) => ({ low: end(low), high: end(high) })),
    weightOverA: end(weightFactor),
  };
}
