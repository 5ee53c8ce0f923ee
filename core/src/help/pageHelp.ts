import { en } from '../en.ts';
/** What a page is for, and what to do first on it. */
export interface PageHelp {
  readonly title: string;
  readonly what: string;
}

export const START_HELP: PageHelp = {
  title: en`Start`,
  what: en`Open the invented example to look around, start empty, or open a file. The first change leads through the example step by step.`,
};

/** By page, in the order of the list of pages. */
export const PAGE_HELP = {
  machine: {
    title: en`Machine`,
    what: en`What is on the machine now: motor, drive, pumps, and the rack of sprockets. Teeth are typed where they are drawn; what is not known may stay empty.`,
  },
  material: {
    title: en`Material`,
    what: en`The mix ratio, its limits and the densities, as the data sheet prints them. At the side stands what this means at the pumps, and what is still missing.`,
  },
  options: {
    title: en`Options`,
    what: en`Every way to build the ratio, best first. Choose one: its drive, its figures and their working stand beside the list.`,
  },
  reach: {
    title: en`Reach`,
    what: en`Every ratio that the machine can make, on one rule. Drag it or type a window; gaps, materials and what to buy stand beneath.`,
  },
  sheet: {
    title: en`Sheet`,
    what: en`The change sheet of the chosen option, as it prints. Printing keeps a numbered copy in the shop file.`,
  },
  check: {
    title: en`Ratio check`,
    what: en`Catch both sides unmixed, weigh them, type what was written down. The verdict, likely causes and the trend follow as you type.`,
  },
} as const satisfies Readonly<Record<string, PageHelp>>;
