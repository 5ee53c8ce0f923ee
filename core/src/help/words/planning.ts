import { en } from '../../en.ts';
import type { Word } from './word.ts';

/** Options, reach, purchases, and what is opened, kept and printed. */
export const planning: readonly Word[] = [
  { word: en`blocked`, also: [en`blocks`], means: en`Cannot be built or run as it stands; the reason is said beside it.` },
  {
    word: en`change sheet`,
    also: [en`sheet`],
    means: en`The printed page for one change: what comes off and goes on, what to set, and what to weigh. The file keeps a copy that never changes.`,
  },
  {
    word: en`check`,
    also: [en`checks`],
    means: en`A rule that the program tries by itself, such as whether the guard clears. Weighing is a ratio check.`,
  },
  { word: en`covered`, means: en`Within the tolerance of some ratio that the machine can make.` },
  {
    word: en`finding`,
    also: [en`findings`],
    means: en`What a check says: it blocks, it warns so that somebody must decide, or it notes.`,
  },
  {
    word: en`gap`,
    also: [en`gaps`],
    means: en`On the Reach page the stretch between two neighbouring ratios; in a pump the narrow space that leaks.`,
  },
  { word: en`host`, means: en`What the program runs in: its own window on the desktop, or a browser.` },
  { word: en`inside`, means: en`Within the limits of the data sheet; without limits no option is called so.` },
  { word: en`invented example`, means: en`The shop that comes with the program. All its data is made up, and every print says so.` },
  { word: en`no gain`, means: en`Fewer changes do as well.` },
  { word: en`notes`, means: en`Good to know, or a check that was not made because a figure is not given.` },
  { word: en`option`, also: [en`options`], means: en`One way to build the ratio: pumps and teeth.` },
  {
    word: en`plan`,
    means: en`One machine, one rack and one material, made complete; what is missing is named.`,
  },
  {
    word: en`quote page`,
    means: en`The printed page for a customer: which ratios a machine reaches, how far off at worst, and what to add.`,
  },
  { word: en`reach`, means: en`The set of ratios that a machine can make.` },
  { word: en`shop file`, means: en`What is opened and saved: machines, materials, racks, sheets and ratio checks of one shop.` },
  { word: en`tolerance`, means: en`How far off, either way, still counts as good.` },
  { word: en`trade-off`, means: en`Only options beside which no other is both closer and quicker.` },
  { word: en`warns`, means: en`It can be built, but somebody must decide.` },
  { word: en`window`, means: en`The stretch of ratios that is looked at on the Reach page.` },
  {
    word: en`working`,
    also: [en`workings`],
    means: en`How a figure came about: its formula, the numbers put in, and its source.`,
  },
  { word: en`worst target`, means: en`The ratio within the window that the machine comes least close to.` },
];
