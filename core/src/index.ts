/** The one door: what the command, the window and the tests of both use. */
export { answer, type Question, search } from './answer.ts';
export { EXTENSION, FORMAT, LARGEST_FILE_BYTES, VERSION } from './file/envelope.ts';
export { readShopFile } from './file/read.ts';
export { resolve, type Selection } from './file/resolve.ts';
export type { ShopFile } from './file/shopFile.ts';
export { writeShopFile } from './file/write.ts';
export { type Finding, type Outcome, type Place, placeText, type Severity } from './finding.ts';
export * from './format.ts';
export { answerJson } from './json.ts';
export {
  type Answer,
  type Counts,
  KEPT_OPTIONS,
  layOption,
  layOut,
  type Mounted,
  type Ranked,
  searchNotes,
} from './layOut.ts';
export { asSheetCounts } from './madeRatio.ts';
export { isBlocked, type PlannedOption, planOption, type StageOption } from './option.ts';
export type { Plan, SideName, Stage, Teeth } from './plan.ts';
export { fittedPumps, fittedTeeth, pumpRatio, sprocketRatio } from './train.ts';
