import {
  type Answer,
  asSheetCounts,
  exactRatioText,
  type Finding,
  fixed,
  lengthText,
  offRatioText,
  type PlannedOption,
  placeText,
  ratioText,
  type Say,
  signed,
} from '../src/index.ts';
import { ONE } from '../src/ratio.ts';

type Row = readonly string[];

/** The answer as a page of text for a terminal. */
export function optionsText(answer: Answer, rows: number, say: Say): string {
  const { plan, options, fitted, blocked } = answer;
  const shown = options.slice(0, rows);
  const column = tableOf(answer, say);
  const lines = [
    `${plan.machine.name}, ${plan.material.name}${plan.invented ? ' (invented example)' : ''}`,
    `Wanted ${plan.mix.sheet.written}: A to B by volume ${ratioText(ONE.div(plan.mix.wantedBPerA), say)}`,
    limitsLine(answer, say),
    '',
    ...table([
      column.head,
      ['now', ...column.cells(fitted)],
      ...shown.map((option, index) => [String(index + 1), ...column.cells(option)]),
    ]),
    '',
    ...totals(answer, shown.length),
    ...bestLines(answer, say),
    ...blockedLines(blocked, say),
    ...findingLines(answer, shown[0]),
  ];
  return `${lines.join('\n').replaceAll('\u00a0', ' ')}\n`;
}

function limitsLine({ plan }: Answer, say: Say): string {
  const { limits, limitsWritten } = plan.mix;
  if (limits === null) return 'Limits not given: no option is called inside.';
  const percent = (value: typeof limits.low) => signed(value.mul(100), 3, say);
  return `Limits ${limitsWritten}: off-ratio ${percent(limits.low)} to ${percent(limits.high)} %, + is B-rich (B per A, made / wanted - 1)`;
}

function tableOf({ plan }: Answer, say: Say): { head: Row; cells: (option: PlannedOption) => Row } {
  const several = plan.stages.length > 1;
  const geometry = plan.stages.some((stage) => stage.centre.known || stage.presentPitches.known);
  const pumps = plan.choice.anyPump;
  const buying = plan.choice.wheels !== 'rack';
  const teethHead = several ? `teeth ${plan.stages.map((stage) => stage.id).join(', ')}` : 'teeth';
  const head = ['', teethHead, 'A : B by volume', '', 'B per 100 A', 'off-ratio', 'limits', 'parts', 'min'];
  return {
    head: [
      ...head,
      ...(buying ? ['buy'] : []),
      ...(pumps ? ['pumps'] : []),
      ...(geometry ? ['pitches', 'centre', 'travel', 'wrap, deg'] : []),
    ],
    cells: (option) => [
      option.stages.map(({ teeth }) => `${teeth.driver} to ${teeth.driven}`).join(', '),
      exactRatioText(ONE.div(option.bPerA)),
      fixed(ONE.div(option.bPerA), 4, say),
      fixed(asSheetCounts(plan, option.bPerA), 3, say),
      offRatioText(option.offRatio, say, 3),
      option.inside === null ? '-' : option.inside ? 'inside' : 'outside',
      String(option.changed),
      fixed(option.work_s / 60, 0, say),
      ...(buying ? [String(option.purchases)] : []),
      ...(pumps ? [`${option.pumps.A.name}, ${option.pumps.B.name}`] : []),
      ...(geometry ? geometryCells(option, say) : []),
    ],
  };
}

function geometryCells({ stages }: PlannedOption, say: Say): Row {
  const each = (word: (stage: (typeof stages)[number]) => string) => stages.map(word).join(', ');
  return [
    each(({ fit }) => String(fit.loop?.pitches ?? '-')),
    each(({ fit }) => (fit.loop === null ? '-' : lengthText(fit.loop.centre_m, say, 2))),
    each(({ travel_m }) =>
      travel_m === null ? '-' : signed(travel_m * (say.system === 'inch' ? 1000 / 25.4 : 1000), say.system === 'inch' ? 4 : 2, say),
    ),
    each(({ fit }) => (fit.loop === null ? '-' : fixed((fit.loop.wrap_rad * 180) / Math.PI, 1, say))),
  ];
}

/** Columns padded to their widest cell. */
function table(rows: readonly Row[]): readonly string[] {
  const widths = rows[0]?.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0))) ?? [];
  return rows.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join('  ')
      .trimEnd(),
  );
}

function totals({ options, more, counts, plan }: Answer, shown: number): readonly string[] {
  const inside = options.filter((option) => option.inside === true).length;
  const atLeast = more && inside === options.length ? 'at least ' : '';
  const left = options.length - shown;
  return [
    ...(plan.mix.limits === null
      ? []
      : [`${atLeast}${inside} inside the limits.${left > 0 ? ` ${left} more rows are left out here.` : ''}`]),
    ...(counts === null
      ? []
      : [
          `${counts.ways} ways to fill the slots, ${counts.buildable} buildable, ${counts.distinctRatios} distinct ratios${counts.inside === null ? '' : `, ${counts.inside} inside the limits`}.`,
        ]),
  ];
}

function bestLines({ best }: Answer, say: Say): readonly string[] {
  if (best.length < 2) return [];
  return [
    '',
    'Best for each number of parts changed',
    ...table(
      best.map(({ changed, option, noGain }) => [
        `  ${changed}`,
        option.stages.map(({ teeth }) => `${teeth.driver} to ${teeth.driven}`).join(', '),
        offRatioText(option.offRatio, say, 3),
        option.inside === false ? 'outside' : '',
        noGain ? 'no gain' : '',
      ]),
    ),
  ];
}

function blockedLines({ options, more, fewestChecks }: Answer['blocked'], say: Say): readonly string[] {
  if (options.length === 0) return [];
  const shown = options.slice(0, 5);
  const reasons = (option: PlannedOption) =>
    option.findings.filter((finding) => finding.severity === 'blocks').map((finding) => finding.what);
  return [
    '',
    `Blocked, though ${options.some((option) => option.inside === true) ? 'inside the limits' : 'closer'}${options.length > shown.length ? ` (${shown.length} of ${options.length}${more ? ' and more' : ''})` : ''}`,
    ...shown.map(
      (option) =>
        `  ${option.stages.map(({ teeth }) => `${teeth.driver} to ${teeth.driven}`).join(', ')}, ${offRatioText(option.offRatio, say, 3)}: ${reasons(option).join(' ')}`,
    ),
    ...(fewestChecks.length === 0 ? [] : [`Fewest checks in the way: ${fewestChecks.map((set) => set.join(' + ')).join('; or ')}.`]),
  ];
}

function findingLines({ findings, plan }: Answer, first: PlannedOption | undefined): readonly string[] {
  const ofPlan = findings.length === 0 ? [] : ['', 'Of the whole plan', ...findings.map(findingLine)];
  if (first === undefined || first.findings.length === 0) return ofPlan;
  const made = first.findings.filter((finding) => !finding.missing);
  const missing = [...new Set(first.findings.filter((finding) => finding.missing).map((finding) => finding.check))];
  return [
    ...ofPlan,
    '',
    `Of option 1 on ${plan.machine.name}`,
    ...made.map(findingLine),
    ...(missing.length === 0 ? [] : [`  not checked, because the input is not given: ${missing.join(', ')}`]),
  ];
}

const findingLine = (finding: Finding): string =>
  `  ${finding.severity}: ${finding.what}${finding.where.length === 0 ? '' : ` [${placeText(finding.where)}]`}`;
