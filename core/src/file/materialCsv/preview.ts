import { en } from '../../en.ts';
import { ratioText, type Say, withTrueMinus } from '../../format.ts';
import { BY_BASIS } from '../../plan.ts';
import { ONE } from '../../ratio.ts';
import { writtenLimits } from '../resolveLimits.ts';
import type { ListedMaterial } from './read.ts';

/** A material of a list as it was understood, in words. */
export interface ListedWords {
  readonly ratio: string;
  readonly byVolume: string;
  readonly limits: string;
}

/**
 * What was understood of one row, for the eye to compare with what was pasted.
 *
 * @source our choice of words
 * @example listedWords(E12 of the demo, say)  // { ratio: '100 : 38.9 by weight', byVolume: '2.1723 : 1', limits: '−2 to 2 % of B per A' }
 */
export function listedWords({ material: { ratio, limits }, mix }: ListedMaterial, say: Say): ListedWords {
  const parts = ratio?.perHundredA === undefined ? (ratio?.parts ?? '') : en`${ratio.perHundredA} per 100 A`;
  return {
    ratio: `${parts} ${ratio?.basis === undefined ? '' : BY_BASIS[ratio.basis]}`,
    byVolume: mix === null ? en`densities missing` : ratioText(ONE.div(mix.wantedBPerA), say),
    limits: limits === undefined ? en`not given` : withTrueMinus(writtenLimits(limits, null)),
  };
}
