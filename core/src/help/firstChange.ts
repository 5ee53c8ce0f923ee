import { en } from '../en.ts';
import type { ShopFile } from '../file/shopFile.ts';
import type { Teeth } from '../plan.ts';

/** What has been done so far, as the window sees it. */
export interface SeenSoFar {
  readonly page: 'machine' | 'material' | 'options' | 'reach' | 'sheet' | 'check';
  readonly machine: string | undefined;
  readonly material: string | undefined;
  /** Teeth of the option that is chosen; null while none is. */
  readonly chosen: readonly Teeth[] | null;
  /** Whether the workings of a figure stand open. */
  readonly workings: boolean;
  /** Change sheets of the machine and the material. */
  readonly sheets: readonly { readonly id: string; readonly teeth: readonly Teeth[]; readonly isFitted: boolean }[];
  /** Whole catches of the check that is written. */
  readonly catchCount: number;
  /** Ids of the change sheets that kept ratio checks prove. */
  readonly proved: readonly string[];
}

/** One step of the first change. It says what to do and where; whether it was done is only looked at. */
export interface Step {
  readonly page: SeenSoFar['page'];
  /** The box it is about, as a pattern of `match.ts`; null where it is about the page. */
  readonly place: string | null;
  readonly what: string;
  readonly isDone: (seen: SeenSoFar) => boolean;
}

/** Whether the file is the invented example, as it was opened or further on. */
export const isExample = (file: ShopFile | null): boolean =>
  file?.shop.invented === true && file.machines.some(({ id }) => id === MACHINE) && file.materials.some(({ id }) => id === MATERIAL);

const MATERIAL = 'e12';
const MACHINE = 'bench-1';
const has = (teeth: readonly Teeth[] | null, driver: number, driven: number): boolean =>
  teeth?.length === 1 && teeth[0]?.driver === driver && teeth[0].driven === driven;
const sheetOf = ({ sheets }: SeenSoFar) => sheets.find(({ teeth }) => has(teeth, 23, 25));

/** A change on the invented example, from the data sheet to the weighed proof. */
export const FIRST_CHANGE: readonly Step[] = [
  {
    page: 'machine',
    place: 'pick.machine',
    what: en`This is a change of Bench 1: pick it at the head of the Machine page.`,
    isDone: ({ machine }) => machine === MACHINE,
  },
  {
    page: 'material',
    place: 'pick.material',
    what: en`Open the Material page. Bench 1 is to run E12 casting epoxy: pick it at the head if another one stands there. Its data sheet says 100 : 38.9 by weight, ± 2 %.`,
    isDone: ({ page, material }) => page === 'material' && material === MATERIAL,
  },
  {
    page: 'options',
    place: null,
    what: en`By volume, as run, that is 2.1723 : 1, as the sentence beside the boxes says. Now open the Options page: every way to build it.`,
    isDone: ({ page, material }) => page === 'options' && material === MATERIAL,
  },
  {
    page: 'options',
    place: null,
    what: en`The closest, 35 to 38, is blocked by the guard. Changing one sprocket alone gives 21 to 23: choose it in the list, by arrow keys and Enter or by a click.`,
    isDone: ({ chosen }) => has(chosen, 21, 23),
  },
  {
    page: 'options',
    place: null,
    what: en`It is 0.830 % B-lean in 25 minutes. Two sprockets come closer: choose 23 to 25.`,
    isDone: ({ chosen }) => has(chosen, 23, 25),
  },
  {
    page: 'options',
    place: null,
    what: en`It is 0.075 % B-lean. Beside the list stand its drive to scale and its figures: open one of the groups, or press W, to see how they came about.`,
    isDone: ({ workings }) => workings,
  },
  {
    page: 'sheet',
    place: null,
    what: en`Put it on the sheet: press P, or open the Sheet page.`,
    isDone: ({ page, chosen }) => page === 'sheet' && has(chosen, 23, 25),
  },
  {
    page: 'sheet',
    place: null,
    what: en`This is what goes to the bench. Print it, or save it as PDF: the shop file then keeps a numbered copy.`,
    isDone: (seen) => sheetOf(seen) !== undefined,
  },
  {
    page: 'sheet',
    place: null,
    what: en`When the sprockets are on, press Mark as fitted: they move from the rack to the machine, in the file.`,
    isDone: (seen) => sheetOf(seen)?.isFitted === true,
  },
  {
    page: 'check',
    place: null,
    what: en`Teeth are a promise; weighing proves it. Open the Ratio check page.`,
    isDone: ({ page }) => page === 'check',
  },
  {
    page: 'check',
    place: 'unfinishedChecks.*.catches.0.A.*',
    what: en`Type what both sides gave, A then B, Enter after each. Try these invented catches: 275.4 and 107.1; 275.6 and 107.2; 275.3 and 107.0.`,
    isDone: ({ catchCount }) => catchCount >= 2,
  },
  {
    page: 'check',
    place: null,
    what: en`The verdict stands beside the catches as you type. Keep this ratio check: its button is beneath them.`,
    isDone: (seen) => seen.proved.some((id) => id === sheetOf(seen)?.id),
  },
];

/**
 * The first step that is still to be done.
 *
 * @param from  a step that was done once is not asked for again
 * @returns its place in the list; the length of the list once all is done
 * @source our choice
 * @example nextStepIndex(0, seen)  // 1, where the Material page is open at the right material
 */
export function nextStepIndex(from: number, seen: SeenSoFar): number {
  let index = from;
  while (FIRST_CHANGE[index]?.isDone(seen) === true) index += 1;
  return index;
}
