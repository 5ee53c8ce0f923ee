import { en } from '../../en.ts';
import type { FieldPage } from '../fieldLine.ts';

/** What stands on every page, and how pages print. */
export const window: FieldPage = {
  title: en`Settings of the window and of printing`,
  lines: [
    {
      place: 'lengths',
      name: en`Lengths`,
      means: en`Whether mm or inch is meant where no unit is typed, and shown; what was typed is never converted.`,
      found: en`Your own choice, kept on this computer.`,
    },
    {
      place: 'decimals',
      name: en`Decimals`,
      means: en`Whether numbers are shown with a point or a comma; both are read.`,
      found: en`Your own choice, kept on this computer.`,
    },
    { place: 'paper', name: en`Paper`, means: en`The paper that pages are laid out for.`, found: en`What lies in the printer.` },
    {
      place: 'workings',
      name: en`With the workings`,
      means: en`Whether further pages show how every figure came about.`,
      found: en`Yes for an auditor, or to redo it by hand.`,
    },
  ],
};
