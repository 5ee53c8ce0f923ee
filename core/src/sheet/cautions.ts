import type { Plan } from '../plan.ts';

/** Cautions come first on the sheet, in two groups, then what the material asks for in the shop's own words. */
export interface Cautions {
  readonly groups: readonly { readonly title: string; readonly lines: readonly string[] }[];
  readonly own: readonly string[];
  readonly deference: string;
}

const GROUPS: Cautions['groups'] = [
  {
    title: 'Before the guard comes off',
    lines: [
      'Isolate and lock out the drive; try to start it.',
      'Tank valves shut, pressure off on both sides.',
      'Parts may be hot. Fingers clear of all that turns.',
    ],
  },
  {
    title: 'Whenever material is near',
    lines: [
      'Wear what both safety data sheets ask for: isocyanates and amines harm through skin and breath.',
      'Mixed material heats up by itself: weigh unmixed.',
      'All guards back before anything turns.',
    ],
  },
];

const DEFERENCE =
  'The machine’s manual, safety data sheets and local rules come first. Electrical and pressure work: qualified people only.';

/** @source common practice, no source; the wording is ours */
export const cautionsOf = (plan: Plan): Cautions => ({ groups: GROUPS, own: plan.cautions, deference: DEFERENCE });
