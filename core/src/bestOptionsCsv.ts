import { laidBest, type Target } from './bestOptions.ts';
import { csvLines, writeCsv } from './file/csv.ts';
import { spreadsheetText } from './file/spreadsheet.ts';
import { fixed, type Say } from './format.ts';
import { senseWord } from './json.ts';
import { type Fraction, ONE, whole, ZERO } from './ratio.ts';
import { amountText } from './shown.ts';

const RATIO_PLACES = 6;
const PERCENT_PLACES = 4;

/**
 * The table of best options as a file that opens in spreadsheets: numbers as numbers in the shop's decimal sign, everything else as text.
 *
 * @param targets  in the order of the file
 * @returns one row a material; an off-ratio carries its sign, plus is B-rich; the exact ratio names its sides, so that none takes it for a time of day;
 *   driver and driven of every stage stand in columns of their own, as numbers
 * @source our choice
 * @example bestOptionsCsv(E12 on Bench 1 of the demo, say)  // …,50A : 23B,2.173913,-0.0750,B-lean,inside,23 to 25,23,25,2,…
 */
export const bestOptionsCsv = (targets: readonly Target[], say: Say): string => writeCsv(bestOptionRows(targets, say), say.decimal);

/** The same for the clipboard, with tabs between cells. */
export const bestOptionsTabbed = (targets: readonly Target[], say: Say): string => csvLines(bestOptionRows(targets, say), '\t');

function bestOptionRows(targets: readonly Target[], say: Say): readonly (readonly string[])[] {
  const flowUnit = amountText(ZERO, 'flow', say).split('\u00A0')[1] ?? '';
  const head = [
    'material',
    'ratio wanted',
    'basis',
    'A per B by volume wanted',
    'limit low %',
    'limit high %',
    'best option exact',
    'A per B by volume made',
    'off-ratio %',
    'sense',
    'inside',
    'teeth driver to driven',
    ...stageHeads(targets),
    'parts changed',
    'to buy',
    'pumps',
    `least flow ${flowUnit}`,
    `most flow ${flowUnit}`,
    'missing',
  ];
  return [head, ...targets.map((target) => rowOf(target, say, head.length))];
}

/** The stages of the machine, which all targets share; none where no plan is complete. */
function stageHeads(targets: readonly Target[]): readonly string[] {
  const stages = targets.find(({ plan }) => plan !== null)?.plan?.stages ?? [];
  return stages.flatMap(({ name }) => [`${name} driver teeth`, `${name} driven teeth`].map(spreadsheetText));
}

function rowOf(target: Target, say: Say, columns: number): readonly string[] {
  const name = spreadsheetText(target.name);
  if (target.plan === null) return padded([name], spreadsheetText(target.missing.join(' ')), columns);
  const { sheet, wantedBPerA, limits } = target.plan.mix;
  const asked = [
    name,
    spreadsheetText(sheet.written),
    sheet.basis,
    number(ONE.div(wantedBPerA), RATIO_PLACES, say),
    limits === null ? '' : percent(limits.low, say),
    limits === null ? '' : percent(limits.high, say),
  ];
  if (target.best === null) return padded(asked, 'nothing can be built', columns);
  const { option, flow_m3_per_s: flow } = laidBest(target.plan, target.best, say);
  const R = ONE.div(option.bPerA);
  const flowNumber = (end: Fraction) => plainMinus(amountText(end, 'flow', say).split('\u00A0')[0] ?? '');
  return [
    ...asked,
    `${R.n}A : ${R.d}B`,
    number(R, RATIO_PLACES, say),
    percent(option.offRatio, say),
    senseWord(option.offRatio),
    option.inside === null ? 'no limits' : option.inside ? 'inside' : 'outside',
    option.teeth.map(({ driver, driven }) => `${driver} to ${driven}`).join(', '),
    ...option.teeth.flatMap(({ driver, driven }) => [String(driver), String(driven)]),
    String(option.changed),
    String(option.purchases),
    spreadsheetText(`${option.pumps.A.name}, ${option.pumps.B.name}`),
    flow === null ? '' : flowNumber(flow.from),
    flow === null ? '' : flowNumber(flow.to),
    '',
  ];
}

const padded = (cells: readonly string[], last: string, columns: number): readonly string[] => [
  ...cells,
  ...Array.from({ length: columns - cells.length - 1 }, () => ''),
  last,
];

/** A spreadsheet takes a true minus for text. */
const plainMinus = (text: string): string => text.replace('\u2212', '-');
const number = (value: Fraction, places: number, say: Say): string => plainMinus(fixed(value, places, say));
const percent = (share: Fraction, say: Say): string => number(share.mul(whole(100)), PERCENT_PLACES, say);
