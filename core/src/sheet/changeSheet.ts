import { en, plural } from '../en.ts';
import type { Finding } from '../finding.ts';
import { offRatioText, type Say, temperatureText } from '../format.ts';
import type { PlannedOption } from '../option.ts';
import type { Plan, SideName } from '../plan.ts';
import { clip } from '../visible.ts';
import { type CatchTable, catchTable } from './catchTable.ts';
import { type Cautions, cautionsOf } from './cautions.ts';
import { type Care, careOf } from './chainCare.ts';
import { type Changes, changesOf } from './changes.ts';
import { withShortNames } from './paperText.ts';
import { OFF_RATIO_DEFINITION, type RatioRow, ratioRows } from './ratioRows.ts';
import { runningRows } from './runningRows.ts';
import { type Steps, stepsOf } from './steps.ts';

/** What the core cannot know of a sheet: its number, the date as text, the name of the file, and how the shop reads numbers. */
export interface AboutSheet {
  readonly number: string;
  readonly date: string;
  readonly file: string;
  readonly say: Say;
}

export interface Heading {
  readonly title: string;
  readonly machine: string;
  readonly shop: string;
  readonly date: string;
  readonly material: string;
  /** The ratio as the data sheet gives it. */
  readonly wanted: string;
  readonly components: string;
  readonly invented: string | null;
  /** What stands against the change; empty where it may be built. */
  readonly notToBeBuilt: readonly string[];
}

/** The change sheet as data, every figure worded for reading: paper and screen show the same. */
export interface ChangeSheet {
  readonly heading: Heading;
  readonly cautions: Cautions;
  readonly changes: Changes;
  readonly ratio: { readonly definition: string; readonly rows: readonly RatioRow[] };
  readonly running: readonly RatioRow[];
  readonly steps: Steps;
  readonly care: Care;
  /** What warns, then how many checks were not made. */
  readonly warnings: readonly string[];
  readonly catches: CatchTable;
  readonly signatures: readonly string[];
  readonly footer: string;
}

/** Above what stands against a change. */
export const NOT_TO_BE_BUILT = en`NOT TO BE BUILT`;
const NUMBER_LENGTH = 24;
const COMPONENT_LENGTH = 40;
const FILE_LENGTH = 60;

/**
 * The sheet that goes to the machine: what comes off and goes on, the ratio that follows, how it is done and how it is proved.
 *
 * @param option  the change as planned
 * @param fitted  what is on the machine now, of the same plan
 * @returns one page of text as data; a change with a finding that blocks is marked as not to be built
 * @throws RangeError  where an option belongs to another plan
 */
export function changeSheet(plan: Plan, option: PlannedOption, fitted: PlannedOption, about: AboutSheet): ChangeSheet {
  const { say } = about;
  const findings = [...option.findings, ...plan.findings];
  const number = clip(about.number, NUMBER_LENGTH);
  return {
    heading: heading(plan, findings, about),
    cautions: cautionsOf(plan),
    changes: changesOf(plan, option, say),
    ratio: { definition: OFF_RATIO_DEFINITION, rows: ratioRows(plan, option, fitted, say) },
    running: runningRows(plan, option, say),
    steps: stepsOf(plan, option, say),
    care: careOf(option, say),
    warnings: [...outside(option, say), ...sentences(plan, findings, 'warns'), ...notMade(findings)],
    catches: catchTable(plan, option, say),
    signatures: [en`Changed by, date`, en`Ratio check by, date`, en`Released for use by, date`],
    footer: en`${clip(about.file, FILE_LENGTH)}, sheet ${number}, page 1 of 1`,
  };
}

function heading(plan: Plan, findings: readonly Finding[], about: AboutSheet): Heading {
  // A component without a name of its own is called by its letter, which stands there already.
  const component = (side: SideName) => {
    const { component: name } = plan.sides[side];
    const runAt_K = plan.mix.runAt_K[side];
    const called = name === side ? '' : clip(name, COMPONENT_LENGTH);
    if (!runAt_K.known) return called === '' ? [] : [`${side}: ${called}`];
    const run = temperatureText(runAt_K.value, about.say);
    return [`${side}: ${called === '' ? en`at ${run}` : en`${called} at ${run}`}`];
  };
  const { written } = plan.mix.sheet;
  return {
    title: en`Change sheet ${clip(about.number, NUMBER_LENGTH)}`,
    machine: plan.machine.name,
    shop: plan.shop,
    date: clip(about.date, NUMBER_LENGTH),
    material: plan.material.name,
    wanted: written,
    components: [...component('A'), ...component('B')].join(', '),
    invented: plan.invented ? en`invented example` : null,
    notToBeBuilt: sentences(plan, findings, 'blocks'),
  };
}

const sentences = (plan: Plan, findings: readonly Finding[], severity: Finding['severity']): readonly string[] =>
  findings.filter((finding) => finding.severity === severity).map(({ what }) => withShortNames(plan, what));

function outside({ inside, offRatio }: PlannedOption, say: Say): readonly string[] {
  return inside === false
    ? [en`The ratio is outside the limits of the material, ${offRatioText(offRatio, say)}: whoever releases it must decide.`]
    : [];
}

function notMade(findings: readonly Finding[]): readonly string[] {
  const missing = findings.filter(({ missing: notGiven, severity }) => notGiven && severity === 'notes').length;
  if (missing === 0) return [];
  return [
    plural(
      missing,
    )`Not given, and so not checked: ${missing} point; the list of findings names it.|Not given, and so not checked: ${missing} points; the list of findings names them.`,
  ];
}
