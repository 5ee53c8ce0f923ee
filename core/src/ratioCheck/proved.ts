import { resolve } from '../file/resolve.ts';
import type { SheetRecord } from '../file/sheetRecord.ts';
import type { ShopFile } from '../file/shopFile.ts';
import type { Finding, Outcome } from '../finding.ts';
import type { Say } from '../format.ts';
import type { Plan } from '../plan.ts';
import { fittedPumps, fittedTeeth } from '../train.ts';
import { asMounted } from './asMounted.ts';
import type { CheckTerms } from './model.ts';
import { termsOf } from './terms.ts';

/** What a check proves: a machine with what is on it, and the material that runs through it. */
export interface Proved {
  readonly sheet: SheetRecord | null;
  /** The plan with what is on the machine by the sheet, or as it stands. */
  readonly plan: Plan;
  readonly mounted: SheetRecord['mounted'];
  readonly terms: CheckTerms;
}

/**
 * What a check of a machine proves.
 *
 * @param sheet     null: what is fitted now
 * @param material  by id, where no sheet names it
 * @returns all that stands against it where the plan is not complete, or where the machine has other stages or pumps than the sheet
 */
export function provedBy(
  file: ShopFile,
  { machine, material, sheet }: { readonly machine: string; readonly material: string | undefined; readonly sheet: SheetRecord | null },
  say: Say,
): Outcome<Proved> {
  const of = sheet?.material ?? material;
  const resolved = resolve(file, { machine, ...(of !== undefined && { material: of }) }, say);
  if (!resolved.ok) return resolved;
  const plan = sheet === null ? resolved.value : asMounted(resolved.value, sheet.mounted);
  if (plan === null) return { ok: false, findings: [changed(file, machine, sheet?.number ?? '')] };
  const build = { pumps: fittedPumps(plan), teeth: fittedTeeth(plan) };
  const mounted = {
    pumps: { A: build.pumps.A.id, B: build.pumps.B.id },
    teeth: build.teeth.map(({ driver, driven }) => ({ driver, driven })),
  };
  return { ok: true, findings: resolved.findings, value: { sheet, plan, mounted, terms: termsOf(plan, build) } };
}

const changed = (file: ShopFile, machine: string, number: string): Finding => ({
  check: 'ratioCheck.sheet',
  severity: 'blocks',
  where: ['machines', file.machines.findIndex(({ id }) => id === machine)],
  what: `The machine has other stages or pumps than sheet ${number} was made for: prove what is fitted now instead.`,
  figure: null,
  limit: null,
  source: 'the stages and pumps of the machine',
  missing: false,
});
