import { expect } from 'vitest';
import { resolve, type Selection } from '../../core/src/file/resolve.ts';
import type { Finding, Outcome, Place } from '../../core/src/finding.ts';
import type { Plan } from '../../core/src/plan.ts';
import { type Change, changed, demoText, isPlace, lines, opened, say } from './shop.ts';

/** The demo with this and that changed in it: the plan it gives, or what stands against one. */

export const demo: unknown = JSON.parse(demoText());
export const E12: Selection = { machine: 'bench-1', material: 'e12' };
export const ONE: Place = ['machines', 0];
export const STAGE: Place = [...ONE, 'stages', 0];

/** Every finding points at something in the file, or at a field that is still to be filled in. */
function resolved(json: unknown, selection: Selection): Outcome<Plan> {
  const outcome = resolve(opened(JSON.stringify(json)), selection, say);
  for (const { where } of outcome.findings) expect(isPlace(json, where), where.join(' ')).toBe(true);
  return outcome;
}

export function planned(json: unknown, selection: Selection): Plan {
  const outcome = resolved(json, selection);
  if (!outcome.ok) throw new Error(lines(outcome.findings).join('\n'));
  expect(outcome.value.findings).toEqual(outcome.findings);
  return outcome.value;
}

export function refused(json: unknown, selection: Selection): readonly string[] {
  const outcome = resolved(json, selection);
  expect(outcome.ok).toBe(false);
  for (const { severity } of outcome.findings) expect(severity).toBe('blocks');
  return lines(outcome.findings);
}

export const demoPlan = (selection: Selection, ...changes: readonly Change[]): Plan => planned(changed(demo, ...changes), selection);
export const demoRefused = (selection: Selection, ...changes: readonly Change[]) => refused(changed(demo, ...changes), selection);
export const short = (findings: readonly Finding[]) => findings.map(({ check, severity, what }) => `${check} ${severity}: ${what}`);
