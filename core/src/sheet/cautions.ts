import { en } from '../en.ts';
import type { Plan } from '../plan.ts';

/** Cautions come first on the sheet, in two groups, then what the material asks for in the shop's own words. */
export interface Cautions {
  readonly groups: readonly { readonly title: string; readonly lines: readonly string[] }[];
  readonly own: readonly string[];
  readonly deference: string;
}

const GROUPS: Cautions['groups'] = [
  {
    title: en`Before the guard comes off`,
    lines: [
      en`Isolate and lock out the drive; try to start it.`,
      en`Tank valves shut, pressure off on both sides.`,
      en`Parts may be hot. Fingers clear of all that turns.`,
    ],
  },
  {
    title: en`Whenever material is near`,
    lines: [
      en`Wear what both safety data sheets ask for: isocyanates and amines harm through skin and breath.`,
      en`Mixed material heats up by itself: weigh unmixed.`,
      en`All guards back before anything turns.`,
    ],
  },
];

const DEFERENCE = en`The machine’s manual, safety data sheets and local rules come first. Electrical and pressure work: qualified people only.`;

/** @source common practice, no source; the wording is ours */
export const cautionsOf = (plan: Plan): Cautions => ({ groups: GROUPS, own: plan.cautions, deference: DEFERENCE });
