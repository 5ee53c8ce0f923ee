import path from 'node:path';
import { en } from '../src/en.ts';
import { optionFacts } from '../src/facts/index.ts';
import type { Answer, PlannedOption } from '../src/index.ts';
import { changeSheet } from '../src/sheet/changeSheet.ts';
import { changeSheetPage } from '../src/sheet/changeSheetPage.ts';
import { driveDrawing } from '../src/sheet/driveDrawing.ts';
import { driveSvg } from '../src/sheet/driveSvg.ts';
import { workingGroups } from '../src/sheet/workingPage.ts';
import type { Call } from './flags.ts';

/** The change sheet of an option as a page; the clock that core does not have is read here. */
export function sheetPage({ plan, fitted }: Answer, option: PlannedOption, call: Call): string {
  const about = {
    number: call.number === '' ? en`unnumbered` : call.number,
    date: call.date ?? new Date().toISOString().slice(0, 10),
    file: path.basename(call.file),
    say: call.say,
  };
  const svg = driveSvg(driveDrawing(plan, option, fitted), call.say);
  const working = call.workings ? workingGroups(optionFacts(plan, option, call.say), call.say) : [];
  return changeSheetPage(changeSheet(plan, option, fitted, about), svg, call.paper, working);
}
