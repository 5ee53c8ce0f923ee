import { en } from '../src/en.ts';
import { SEVERITY_WORDS } from '../src/finding.ts';
import {
  type Answer,
  type Finding,
  layOption,
  offRatioText,
  type PlannedOption,
  placeText,
  ratioText,
  type Say,
  signed,
} from '../src/index.ts';
import { mountedOf } from '../src/layOut.ts';
import { type Order, orderedOptions, orderNote } from '../src/optionList.ts';
import { insideCountText } from '../src/optionWords.ts';
import { ONE } from '../src/ratio.ts';
import { teethText } from '../src/teethWords.ts';
import { table, tableOf } from './optionTable.ts';

/** The answer as a page of text for a terminal. */
export function optionsText(answer: Answer, rows: number, order: Order, say: Say): string {
  const { plan, fitted, blocked } = answer;
  const listed = orderedOptions(plan, buildable(answer), order);
  const shown = listed.slice(0, rows).map((line) => ({ ...line, option: layOption(plan, line.mounted, say) }));
  const column = tableOf(answer, say);
  const folds = order === 'trade-off';
  const lines = [
    `${plan.machine.name}, ${plan.material.name}${plan.invented ? en` (invented example)` : ''}`,
    en`Wanted ${plan.mix.sheet.written}: A to B by volume ${ratioText(ONE.div(plan.mix.wantedBPerA), say)}`,
    limitsLine(answer, say),
    '',
    ...table([
      [...column.head, ...(folds ? [''] : [])],
      [en`now`, ...column.cells(fitted), ...(folds ? [''] : [])],
      ...shown.map(({ rank, option, dominated }) => [
        rank === null ? '-' : String(rank),
        ...column.cells(option),
        ...(folds ? [dominated.length === 0 ? '' : en`${dominated.length} dominated`] : []),
      ]),
    ]),
    '',
    ...noteLines(order, answer.more),
    ...totals(answer, listed.length - shown.length),
    ...bestLines(answer, say),
    ...blockedLines(blocked, say),
    ...findingLines(answer, shown[0]),
  ];
  return `${lines.join('\n').replaceAll('\u00a0', ' ')}\n`;
}

/** What was found but for what is blocked, which has lines of its own. */
const buildable = ({ options, best, tradeOff, blocked }: Answer) => ({
  options: options.map(mountedOf),
  best: best.map(({ option, ...more }) => ({ ...more, option: mountedOf(option) })),
  tradeOff: tradeOff.map(mountedOf),
  blocked: { ...blocked, options: [] },
});

/** What has to be known of an order other than the usual one. */
function noteLines(order: Order, more: boolean): readonly string[] {
  if (order === 'closest') return [];
  const note = orderNote(order, more);
  return [en`Numbers are those of the closest first, by which sheet --option asks.`, ...(note === null ? [] : [note]), ''];
}

function limitsLine({ plan }: Answer, say: Say): string {
  const { limits, limitsWritten } = plan.mix;
  if (limits === null) return en`Limits not given: no option is called inside.`;
  const percent = (value: typeof limits.low) => signed(value.mul(100), 3, say);
  return en`Limits ${limitsWritten}: off-ratio ${percent(limits.low)} to ${percent(limits.high)} %, + is B-rich (B per A, made / wanted - 1)`;
}

function totals({ options, more, counts, plan }: Answer, left: number): readonly string[] {
  const inside = options.filter((option) => option.inside === true).length;

  return [
    ...(plan.mix.limits === null
      ? []
      : [
          `${insideCountText({ inside, atLeast: more && inside === options.length })}.${left > 0 ? ` ${en`${left} more rows are left out here.`}` : ''}`,
        ]),
    ...(counts === null
      ? []
      : [
          counts.inside === null
            ? en`${counts.ways} ways to fill the slots, ${counts.buildable} buildable, ${counts.distinctRatios} distinct ratios.`
            : en`${counts.ways} ways to fill the slots, ${counts.buildable} buildable, ${counts.distinctRatios} distinct ratios, ${counts.inside} inside the limits.`,
        ]),
  ];
}

function bestLines({ best }: Answer, say: Say): readonly string[] {
  if (best.length < 2) return [];
  return [
    '',
    en`Best for each number of parts changed`,
    ...table(
      best.map(({ changed, option, noGain }) => [
        `  ${changed}`,
        teethText(option.teeth),
        offRatioText(option.offRatio, say, 3),
        option.inside === false ? en`outside` : '',
        noGain ? en`no gain` : '',
      ]),
    ),
  ];
}

function blockedLines({ options, more, fewestChecks }: Answer['blocked'], say: Say): readonly string[] {
  if (options.length === 0) return [];
  const shown = options.slice(0, 5);
  const reasons = (option: PlannedOption) =>
    option.findings.filter((finding) => finding.severity === 'blocks').map((finding) => finding.what);
  const though = options.some((option) => option.inside === true) ? en`Blocked, though inside the limits` : en`Blocked, though closer`;
  const cut = more ? en`(${shown.length} of ${options.length} and more)` : en`(${shown.length} of ${options.length})`;
  return [
    '',
    options.length > shown.length ? `${though} ${cut}` : though,
    ...shown.map((option) => `  ${teethText(option.teeth)}, ${offRatioText(option.offRatio, say, 3)}: ${reasons(option).join(' ')}`),
    ...(fewestChecks.length === 0 ? [] : [en`Fewest checks in the way: ${fewestChecks.map((set) => set.join(' + ')).join(en`; or `)}.`]),
  ];
}

function findingLines(
  { findings, plan }: Answer,
  row: { readonly rank: number | null; readonly option: PlannedOption } | undefined,
): readonly string[] {
  const ofPlan = findings.length === 0 ? [] : ['', en`Of the whole plan`, ...findings.map(findingLine)];
  if (row === undefined || row.option.findings.length === 0) return ofPlan;
  const { rank, option: first } = row;
  const made = first.findings.filter((finding) => !finding.missing);
  const missing = [...new Set(first.findings.filter((finding) => finding.missing).map((finding) => finding.check))];
  return [
    ...ofPlan,
    '',
    rank === null ? en`Of the first row on ${plan.machine.name}` : en`Of option ${rank} on ${plan.machine.name}`,
    ...made.map(findingLine),
    ...(missing.length === 0 ? [] : [`  ${en`not checked, because the input is not given: ${missing.join(', ')}`}`]),
  ];
}

const findingLine = (finding: Finding): string =>
  `  ${SEVERITY_WORDS[finding.severity]}: ${finding.what}${finding.where.length === 0 ? '' : ` [${placeText(finding.where)}]`}`;
