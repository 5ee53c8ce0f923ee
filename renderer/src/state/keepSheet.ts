import { optionFacts } from '../../../core/src/facts/index.ts';
import { fitOption } from '../../../core/src/file/fit.ts';
import { nextNumber } from '../../../core/src/file/nextNumber.ts';
import type { SheetRecord } from '../../../core/src/file/sheetRecord.ts';
import { fittedPumps, fittedTeeth, planOption } from '../../../core/src/index.ts';
import { changeSheet } from '../../../core/src/sheet/changeSheet.ts';
import { changeSheetBody, type SheetBody } from '../../../core/src/sheet/changeSheetPage.ts';
import { driveDrawing } from '../../../core/src/sheet/driveDrawing.ts';
import { driveSvg } from '../../../core/src/sheet/driveSvg.ts';
import { sheetLines } from '../../../core/src/sheet/sheetLines.ts';
import { workingGroups } from '../../../core/src/sheet/workingPage.ts';
import type { App } from './app.ts';

/** The sheet of the chosen option as it would be printed now; null while there is nothing to print. */
export interface ReadySheet {
  readonly number: string;
  readonly body: SheetBody;
  readonly lines: readonly string[];
  /** The kept sheet that says just this, if it was printed before. */
  readonly kept: SheetRecord | null;
}

export const today = (): string => {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
};

export function readySheet(app: App): ReadySheet | null {
  const option = app.solution.chosen();
  const mounted = app.solution.chosenMount();
  const plan = app.solution.answered()?.plan;
  const file = app.shop.file;
  if (option === null || mounted === null || plan === undefined || file === null || !app.solution.current()) return null;
  const say = app.say();
  const fitted = planOption(plan, fittedPumps(plan), fittedTeeth(plan), say);
  const svg = driveSvg(driveDrawing(plan, option, fitted), say);
  const sheetOf = (number: string, date: string) => changeSheet(plan, option, fitted, { number, date, file: app.shop.name, say });
  // Printing the same sheet twice is one sheet: it keeps its number and its day.
  const kept = file.changeSheets.find((one) => sheetLines(sheetOf(one.number, one.date)).join('\n') === one.lines.join('\n')) ?? null;
  const number = kept?.number ?? nextNumber(file.changeSheets);
  const sheet = sheetOf(number, kept?.date ?? today());
  const working = app.workings() ? workingGroups(optionFacts(plan, option, say), say) : [];
  return { number, body: changeSheetBody(sheet, svg, working), lines: sheetLines(sheet), kept };
}

/** Keeps the sheet in the shop file as it is printed; a sheet that is kept already stays as it is. Returns its id. */
export function keepSheet(app: App, ready: ReadySheet): string | null {
  const mounted = app.solution.chosenMount();
  const plan = app.solution.answered()?.plan;
  if (ready.kept !== null) return ready.kept.id;
  if (mounted === null || plan === undefined) return null;
  const pumps = fittedPumps(plan);
  const record: SheetRecord = {
    id: `sheet-${ready.number}`,
    number: ready.number,
    date: today(),
    machine: plan.machine.id,
    material: plan.material.id,
    mounted: { pumps: { ...mounted.pumps }, teeth: mounted.teeth.map((pair) => ({ ...pair })) },
    before: { pumps: { A: pumps.A.id, B: pumps.B.id }, teeth: fittedTeeth(plan).map(({ driver, driven }) => ({ driver, driven })) },
    lines: [...ready.lines],
  };
  app.shop.edit(`keep ${record.id}`, (file) => {
    file.changeSheets.push(record);
  });
  app.shop.pause();
  return record.id;
}

/** Marks the chosen option as fitted, and its sheet with the day: one undo step. */
export function markAsFitted(app: App, ready: ReadySheet): void {
  const option = app.solution.chosen();
  const plan = app.solution.answered()?.plan;
  const id = keepSheet(app, ready);
  if (option === null || plan === undefined) return;
  app.shop.edit(`fit ${id}`, (file) => {
    fitOption(file, plan.machine.id, plan.rack?.id ?? null, option);
    const record = file.changeSheets.find((one) => one.id === id);
    if (record !== undefined) record.fittedOn = today();
  });
  app.shop.pause();
}

/** Prints the sheet of the chosen option, and keeps it: there is no way to print a sheet that leaves no copy. */
export async function printSheet(app: App): Promise<void> {
  await app.show('sheet');
  const ready = readySheet(app);
  if (ready === null) return;
  keepSheet(app, ready);
  await app.host.print();
}

/** The same onto a PDF file. */
export async function saveSheetPdf(app: App): Promise<void> {
  const ready = readySheet(app);
  if (ready === null) return;
  keepSheet(app, ready);
  await app.host.savePdf(`change-sheet-${ready.number}.pdf`, app.paper());
}
