import { en } from '../../en.ts';
import { type Reading, readNumber } from '../../reading.ts';
import { quoted } from '../../visible.ts';
import type { LimitsRow } from '../material.ts';
import { definitionCalled, LIMIT_DEFINITIONS, type LimitDefinition } from './columns.ts';

/** Both limits as typed, and their definition where it stands with them. */
export interface LimitsText {
  readonly low: LimitsRow['low'];
  readonly high: LimitsRow['high'];
  readonly definition: LimitDefinition | null;
}

const refused = (what: string) =>
  ({
    ok: false,
    expected: en`${what} Expected ±2 %, +2/-1 % or ${'-1 to 2 %'}, with their definition behind if need be: ${'-1 to 2 % of B per A'}.`,
  }) as const;
const notBoth = (typed: string) => refused(en`${quoted(typed)} does not say both limits.`);

/** Only one sign before its number. */
const unsigned = (text: string): string => text.replace(/^[+\-\u2212]\s*/, '');
const signOf = (text: string): string => (/^[-\u2212]/.test(text) ? '-' : /^\+/.test(text) ? '+' : '');

/**
 * Limits in one cell, as data sheets write them.
 *
 * @param text       as typed; the definition, or `%` alone, may stand behind
 * @param plusMinus  whether the column says ±, so that one number is both limits
 * @source our choice
 * @example readLimits('±2 % of B per A', false)  // low '-2', high '2', '% of B per A'
 */
export function readLimits(text: string, plusMinus: boolean): Reading<LimitsText> {
  const typed = text.trim();
  const [numbers, definition] = withoutDefinition(typed);
  const both = (...ends: readonly [string, string]): Reading<LimitsText> => {
    const [low, high] = ends.map((end) => end.replace(/\s*%$/, '').trim());
    if (low === undefined || high === undefined) return notBoth(typed);
    const wrong = [low, high].map(readNumber).find((read) => !read.ok);
    return wrong === undefined ? { ok: true, value: { low, high, definition } } : refused(en`${quoted(typed)} are no limits.`);
  };
  const [, deviation] = /^(?:±|\+\s*\/?\s*[-\u2212])\s*([^+\-\u2212].*)$/.exec(numbers) ?? [];
  if (deviation !== undefined) return both(`-${deviation}`, deviation);
  if (plusMinus && signOf(numbers) === '') return both(`-${numbers}`, numbers);
  const range = numbers.split(/\s+to\s+|\s*(?:\.{2,3}|…)\s*/);
  if (range.length === 2) return both(range[0] ?? '', range[1] ?? '');
  const [, first = '', second = ''] = /^([+\-\u2212].*?)\s*%?\s*[/\s]\s*([+\-\u2212].*)$/.exec(numbers) ?? [];
  if (first === '') return notBoth(typed);
  // "+2/-1": whichever carries the minus is the low one.
  if (signOf(first) === signOf(second)) return refused(en`${quoted(typed)} has the same sign twice.`);
  return signOf(first) === '-' ? both(`-${unsigned(first)}`, unsigned(second)) : both(`-${unsigned(second)}`, unsigned(first));
}

/** The numbers, and the definition behind them; a per cent sign alone tells no definition. */
function withoutDefinition(text: string): readonly [string, LimitDefinition | null] {
  for (const definition of LIMIT_DEFINITIONS) {
    const words = new RegExp(`\\s*${definition.replace(/\s+/g, '\\s*')}$`, 'i').exec(text);
    if (words !== null) return [text.slice(0, words.index).trim(), definitionCalled(definition)];
  }
  return [text.replace(/\s*%$/, ''), null];
}
