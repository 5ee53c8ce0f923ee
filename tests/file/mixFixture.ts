import { expect } from 'vitest';
import { resolve } from '../../core/src/file/resolve.ts';
import type { Finding, Outcome } from '../../core/src/finding.ts';
import type { Say } from '../../core/src/format.ts';
import type { Given } from '../../core/src/given.ts';
import { offRatio } from '../../core/src/mixRatio.ts';
import type { Mix, Plan } from '../../core/src/plan.ts';
import { exactText, Fraction, float, ONE } from '../../core/src/ratio.ts';
import { isPlace, lines, opened, say, smallest } from './shop.ts';

/** One material on the smallest machine: what comes of its mix ratio, or what stands against it. */

export type Json = Readonly<Record<string, unknown>>;

function outcomeOf(material: Json, how: Say = say): Outcome<Plan> {
  const json = smallest(material);
  const outcome = resolve(opened(JSON.stringify(json)), {}, how);
  for (const { where } of outcome.findings) expect(isPlace(json, where), where.join(' ')).toBe(true);
  return outcome;
}

export function planOf(material: Json, how: Say = say): { readonly mix: Mix; readonly findings: readonly Finding[] } {
  const outcome = outcomeOf(material, how);
  if (!outcome.ok) throw new Error(lines(outcome.findings).join('\n'));
  return {
    mix: outcome.value.mix,
    findings: outcome.findings.filter(({ check }) => check !== 'material.limits' && check !== 'machine.rack'),
  };
}

export const mixOf = (material: Json): Mix => planOf(material).mix;
export const refused = (material: Json): readonly string[] => {
  const outcome = outcomeOf(material);
  expect(outcome.ok).toBe(false);
  return lines(outcome.findings);
};
export const notes = (material: Json, how: Say = say): readonly string[] =>
  planOf(material, how).findings.map(({ check, severity, what }) => `${check} ${severity}: ${what}`);

export const celsius = (value: string) => ({ value, unit: '°C' });
export const density = (value: string, at?: string, unit = 'g/cm3') => ({
  value: { value, unit },
  ...(at !== undefined && { at: celsius(at) }),
});
export const byWeight = (parts: string, more: Json = {}) => ({ basis: 'weight', parts, ...more });
export const byVolume = (parts: string, more: Json = {}) => ({ basis: 'volume', parts, ...more });

export const f = (text: string): Fraction => new Fraction(text);
export const aPerB = (mix: Mix): Fraction => ONE.div(mix.wantedBPerA);
export const numberOf = (given: Given<Fraction>): number => (given.known ? float(given.value) : Number.NaN);
export const exactly = (given: Given<Fraction>): string => (given.known ? exactText(given.value) : 'not given');
export const percentOff = (made: Fraction, wanted: Fraction) => 100 * float(offRatio(made, wanted));

/** Within half a unit of the last place printed. */
export function expectPrinted(value: number, printed: string): void {
  const places = printed.split('.')[1]?.length ?? 0;
  expect(Math.abs(value - Number(printed)), `${value} against ${printed}`).toBeLessThanOrEqual(0.5000001 * 10 ** -places);
}
