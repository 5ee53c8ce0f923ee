import { en } from '../en.ts';
import { freshId } from '../file/freshId.ts';
import { checked, Problems } from '../file/problems.ts';
import { type CatchRow, type RatioCheckRow, ratioCheckRow } from '../file/ratioCheckRow.ts';
import { resolve, type Selection } from '../file/resolve.ts';
import type { SheetRecord } from '../file/sheetRecord.ts';
import type { ShopFile } from '../file/shopFile.ts';
import type { Outcome } from '../finding.ts';
import type { Say } from '../format.ts';
import type { Plan } from '../plan.ts';
import { fittedPumps, fittedTeeth } from '../train.ts';
import { asMounted } from './asMounted.ts';
import type { TypedCheck } from './readCheck.ts';
import { keptTerms, termsOf } from './terms.ts';

/** What a ratio check proves: a machine with the pumps and teeth that were on it, and the change sheet that put them there. */
export interface CheckSubject {
  readonly plan: Plan;
  readonly sheet: SheetRecord | null;
}

/** What only the people at the machine know of a check. */
export interface CheckMade extends Omit<TypedCheck, 'catches'> {
  readonly catches: readonly CatchRow[];
  readonly date: string;
  readonly by?: string;
}

/**
 * What a change sheet put on, ready to be proved; zeros before its number do not matter.
 *
 * @returns findings where there is no such sheet or more than one, or where the machine of today has other stages or pumps
 */
export function subjectOfSheet(file: ShopFile, number: string, say: Say): Outcome<CheckSubject> {
  const problems = new Problems();
  const exactly = file.changeSheets.filter((one) => one.number === number);
  const alike = exactly.length > 0 ? exactly : file.changeSheets.filter((one) => plainNumber(one.number) === plainNumber(number));
  const [sheet, ...others] = alike;
  if (sheet === undefined) {
    const all = file.changeSheets.map((one) => one.number).join(', ');
    problems.add(
      ['changeSheets'],
      en`there is no change sheet ${number}; ${all === '' ? en`the file keeps none` : en`the file keeps: ${all}`}.`,
    );
    return problems.failure();
  }
  if (others.length > 0) {
    problems.add(['changeSheets'], en`change sheet ${number} stands in the file ${alike.length} times; name machine and material instead.`);
    return problems.failure();
  }
  const plan = resolve(file, { machine: sheet.machine, material: sheet.material }, say);
  if (!plan.ok) return plan;
  const mounted = asMounted(plan.value, sheet.mounted);
  if (mounted !== null) return { ok: true, value: { plan: mounted, sheet }, findings: plan.findings };
  problems.add(
    ['changeSheets', file.changeSheets.indexOf(sheet)],
    en`machine ${plan.value.machine.name} has other stages or pumps than change sheet ${number} put on it; prove what is fitted now instead.`,
  );
  return problems.failure();
}

const plainNumber = (number: string): string => number.trim().replace(/^0+(?=\d)/, '');

/** What is fitted now. */
export function subjectFitted(file: ShopFile, selection: Selection, say: Say): Outcome<CheckSubject> {
  const plan = resolve(file, selection, say);
  return plan.ok ? { ok: true, value: { plan: plan.value, sheet: null }, findings: plan.findings } : plan;
}

/**
 * A check as the file keeps it, with the terms as they stand now; it is not in the file yet.
 *
 * @returns findings where something typed is beyond what a file may hold
 */
export function checkRowOf(file: ShopFile, { plan, sheet }: CheckSubject, made: CheckMade): Outcome<RatioCheckRow> {
  const [pumps, teeth] = [fittedPumps(plan), fittedTeeth(plan)];
  const { date, run, scale, confidence, catches, by } = made;
  const row: RatioCheckRow = {
    id: freshId(file.ratioChecks, 'check'),
    date,
    machine: plan.machine.id,
    material: plan.material.id,
    ...(sheet !== null && { changeSheet: sheet.id }),
    mounted: { pumps: { A: pumps.A.id, B: pumps.B.id }, teeth: teeth.map(({ driver, driven }) => ({ driver, driven })) },
    ...(run !== undefined && { run }),
    scale,
    ...(confidence !== undefined && { confidence }),
    catches: [...catches],
    ...(by !== undefined && { by }),
    terms: keptTerms(termsOf(plan, { pumps, teeth })),
  };
  const problems = new Problems();
  const sound = checked(ratioCheckRow, row, [], problems);
  return sound === null ? problems.failure() : { ok: true, value: sound, findings: [] };
}
