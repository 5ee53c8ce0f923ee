import { en } from '../en.ts';
import { fixed, lengthText, quantity, type Say } from '../format.ts';
import { END_WORDS, type Plan, type Slot, type Stage } from '../plan.ts';
import { type Fraction, float, ONE } from '../ratio.ts';
import { clip } from '../visible.ts';

// How names and numbers are put on paper, where every line has its width.

/** Stands in a table for "none"; never a zero. */
export const NONE = '–';
/** Longest name of a stage, a pump or a place within a sentence or a drawing. */
const NAME_LENGTH = 20;
/** An exact ratio longer than this is left to its decimals. */
const EXACT_LENGTH = 20;

export const shortName = (name: string): string => clip(name, NAME_LENGTH);

/** A sentence of a finding, with long names of stages cut to what the rest of the sheet calls them. */
export const withShortNames = (plan: Plan, sentence: string): string =>
  plan.stages.reduce((text, { name }) => text.replaceAll(name, () => shortName(name)), sentence);

/** The slot as findings name it: `s1 driver`. */
export function slotName(plan: Plan, slot: Slot): string {
  const stage = plan.stages.find(({ driver, driven }) => driver === slot || driven === slot);
  if (stage === undefined) throw new RangeError('slotName: the slot belongs to another plan');
  return `${shortName(stage.name)} ${END_WORDS[stage.driver === slot ? 'driver' : 'driven']}`;
}

const TURNS: Readonly<Record<Stage['turns'], string>> = {
  A: en`to pump A`,
  B: en`to pump B`,
  both: en`to both pumps`,
  neither: en`to no pump`,
};
export const whomItTurns = (stage: Stage): string => TURNS[stage.turns];

/** Zeros at the end of decimals say nothing about a dimension that was typed: `25.40 mm` becomes `25.4 mm`. */
const withoutEndZeros = (text: string): string => text.replace(/([.,]\d*?)0+(?=\D|$)/, '$1').replace(/[.,](?=\D|$)/, '');

/** A dimension that was typed, as bores and keyways are. */
export const typedLength = (value_m: Fraction, say: Say): string => withoutEndZeros(lengthText(value_m, say, 2));

/** A number alone, for a column whose head carries the unit. */
export const lengthNumber = (value_m: number, say: Say): string => lengthText(value_m, say).split('\u00A0')[0] ?? '';

export function displacementText(value_m3_per_rev: Fraction, say: Say): string {
  const metric = say.system === 'metric';
  return withoutEndZeros(quantity(value_m3_per_rev, 'displacement', metric ? 'cc/rev' : 'in3/rev', metric ? 3 : 4, say));
}

export const displacementNumber = (value_m3_per_rev: Fraction, say: Say): string =>
  displacementText(value_m3_per_rev, say).split('\u00A0')[0] ?? '';
export const displacementUnit = (say: Say): string => (say.system === 'metric' ? 'cc/rev' : 'in³/rev');

/** How many places leave four significant digits to a number of parts; all figures held against it take as many. */
export function partsPlaces(parts: Fraction): number {
  const size = float(parts.abs());
  return size >= 100 ? 1 : size >= 10 ? 2 : size >= 1 ? 3 : 4;
}

/** A number as typed, without the zeros it does not need. */
export const plainText = (value: Fraction, say: Say): string => withoutEndZeros(fixed(value, 4, say));

/** The smallest whole numbers where they are short enough to be read, else null. */
export function shortExactRatio(R: Fraction): string | null {
  const text = `${R.n} : ${R.d}`;
  return text.length <= EXACT_LENGTH ? text : null;
}

/** A of a ratio that is kept as B per A. */
export const aPerB = (bPerA: Fraction): Fraction => ONE.div(bPerA);
