import type { FieldPage } from '../fieldLine.ts';

/** What stands on every page, and how pages print. */
export const window: FieldPage = {
  title: 'Settings of the window and of printing',
  lines: [
    {
      place: 'lengths',
      name: 'Lengths',
      means: 'Whether mm or inch is meant where no unit is typed, and shown; what was typed is never converted.',
      found: 'Your own choice, kept on this computer.',
    },
    {
      place: 'decimals',
      name: 'Decimals',
      means: 'Whether numbers are shown with a point or a comma; both are read.',
      found: 'Your own choice, kept on this computer.',
    },
    { place: 'paper', name: 'Paper', means: 'The paper that pages are laid out for.', found: 'What lies in the printer.' },
    {
      place: 'workings',
      name: 'With the workings',
      means: 'Whether further pages show how every figure came about.',
      found: 'Yes for an auditor, or to redo it by hand.',
    },
  ],
};
