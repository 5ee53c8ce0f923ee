import { fixed, type Say } from '../format.ts';
import type { Fraction } from '../ratio.ts';
import { type SystemName, systemOf } from './systems.ts';

/**
 * An index as the trade says it.
 *
 * @param index   per cent
 * @param places  whole number from 0
 * @source our choice: two places, which is more than any catch can prove
 * @example indexText('urethane', new Fraction('104.8537'), say)  // 'index 104.85'
 */
export const indexText = (system: SystemName, index: Fraction, say: Say, places = 2): string =>
  indexSaid(system, fixed(index, places, say));

/** The same with a figure as it was typed, or with two: `index 102 to 108`. */
export const indexSaid = (system: SystemName, figure: string): string => systemOf(system).index.said(figure);
