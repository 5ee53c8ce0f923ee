import type { Word } from './word.ts';

/** Options, reach, purchases, and what is opened, kept and printed. */
export const planning: readonly Word[] = [
  { word: 'blocked', also: ['blocks'], means: 'Cannot be built or run as it stands; the reason is said beside it.' },
  {
    word: 'change sheet',
    also: ['sheet'],
    means:
      'The printed page for one change: what comes off and goes on, what to set, and what to weigh. The file keeps a copy that never changes.',
  },
  {
    word: 'check',
    also: ['checks'],
    means: 'A rule that the program tries by itself, such as whether the guard clears. Weighing is a ratio check.',
  },
  { word: 'covered', means: 'Within the tolerance of some ratio that the machine can make.' },
  {
    word: 'finding',
    also: ['findings'],
    means: 'What a check says: it blocks, it warns so that somebody must decide, or it notes.',
  },
  {
    word: 'gap',
    also: ['gaps'],
    means: 'On the Reach page the stretch between two neighbouring ratios; in a pump the narrow space that leaks.',
  },
  { word: 'host', means: 'What the program runs in: its own window on the desktop, or a browser.' },
  { word: 'inside', means: 'Within the limits of the data sheet; without limits no option is called so.' },
  { word: 'invented example', means: 'The shop that comes with the program. All its data is made up, and every print says so.' },
  { word: 'no gain', means: 'Fewer changes do as well.' },
  { word: 'notes', means: 'Good to know, or a check that was not made because a figure is not given.' },
  { word: 'option', also: ['options'], means: 'One way to build the ratio: pumps and teeth.' },
  {
    word: 'plan',
    means: 'One machine, one rack and one material, made complete; what is missing is named.',
  },
  { word: 'quote page', means: 'The printed page for a customer: which ratios a machine reaches, how far off at worst, and what to add.' },
  { word: 'reach', means: 'The set of ratios that a machine can make.' },
  { word: 'shop file', means: 'What is opened and saved: machines, materials, racks, sheets and ratio checks of one shop.' },
  { word: 'tolerance', means: 'How far off, either way, still counts as good.' },
  { word: 'trade-off', means: 'Only options beside which no other is both closer and quicker.' },
  { word: 'warns', means: 'It can be built, but somebody must decide.' },
  { word: 'window', means: 'The stretch of ratios that is looked at on the Reach page.' },
  {
    word: 'working',
    also: ['workings'],
    means: 'How a figure came about: its formula, the numbers put in, and its source.',
  },
  { word: 'worst target', means: 'The ratio within the window that the machine comes least close to.' },
];
