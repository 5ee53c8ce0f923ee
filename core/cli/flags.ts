import { parseArgs } from 'node:util';
import { isDate, MOST_DAYS } from '../src/calendar.ts';
import { en } from '../src/en.ts';
import type { Say, Selection } from '../src/index.ts';
import type { Order } from '../src/optionList.ts';
import { CUSTOMER_LENGTH, NOTE_LENGTH } from '../src/quote/quote.ts';
import { quoted } from '../src/visible.ts';
import { type CheckWish, readCheckWish } from './checkFlags.ts';
import { type PriceRow, type PumpPrices, readPrices, readPumpPrices } from './prices.ts';
import { readWindow, type Window } from './windowFlag.ts';

export const COMMANDS = ['options', 'reach', 'sheet', 'quote', 'buy', 'ratio-check', 'validate'] as const;
export type Command = (typeof COMMANDS)[number];

/** One flag: what it takes, which commands know it, and its line in the help. */
interface Flag {
  readonly takes: string | null;
  readonly commands: readonly Command[];
  readonly help: string;
}

const ONE_MATERIAL = ['options', 'reach', 'sheet', 'quote'] as const;
const PRINTED = ['sheet', 'quote', 'ratio-check'] as const;
const CHECK = ['ratio-check'] as const;
const PLANNING = ['options', 'reach', 'sheet', 'quote', 'buy'] as const;

export const FLAGS: Readonly<Record<string, Flag>> = {
  machine: { takes: 'ID', commands: [...PLANNING, ...CHECK], help: en`which machine; may be left out where the file holds one` },
  material: { takes: 'ID', commands: [...ONE_MATERIAL, ...CHECK], help: en`which material; may be left out where the file holds one` },
  materials: { takes: 'ID,ID', commands: ['buy'], help: en`which materials; all of the file that have limits if left out` },
  'materials-csv': {
    takes: 'FILE.csv',
    commands: ['reach', 'quote', 'buy'],
    help: en`a list of materials in place of the file's: name, ratio, basis, limits, densities; a limit without a definition is % of B per A`,
  },
  best: {
    takes: null,
    commands: ['reach'],
    help: en`every material of the file or list with its best option; --window may then be left out`,
  },
  csv: { takes: null, commands: ['reach', 'ratio-check'], help: en`print that table alone, as CSV; of ratio-check with --all` },
  rack: { takes: 'ID', commands: PLANNING, help: en`which rack; otherwise the machine's own, or the only one` },
  buy: { takes: 'N', commands: ONE_MATERIAL, help: en`up to N wheels may be bought, 1 to 8` },
  teeth: { takes: 'LO-HI', commands: PLANNING, help: en`with --buy and in buy: teeth that may be bought; alone: any wheel of that range` },
  most: { takes: 'N', commands: ['buy'], help: en`up to N parts to buy, 1 to 8; 3 if left out` },
  window: {
    takes: 'LO:HI',
    commands: ['reach', 'quote', 'buy'],
    help: en`every ratio from LO to HI parts of A to 1 of B by volume as run; in buy instead of materials`,
  },
  tolerance: { takes: 'PERCENT', commands: ['reach', 'quote', 'buy'], help: en`with --window: how far off a ratio may be; 2 if left out` },
  prices: {
    takes: 'TEETH=PRICE,...',
    commands: ['buy'],
    help: en`price of a wheel by its teeth, as 13-20=18,21-40=25.50: also finds the cheapest plan, however many it takes`,
  },
  'pump-prices': {
    takes: 'ID=PRICE,...',
    commands: ['buy'],
    help: en`with --any-pump and --prices: price of a pump by its id, as b-2=350,b-3=410.50`,
  },
  'any-pump': {
    takes: null,
    commands: PLANNING,
    help: en`also try the other pumps each side may carry; in buy each of them is one part to buy`,
  },
  'as-measured': { takes: null, commands: PLANNING, help: en`count the deliveries the pumps were measured at in the ratio` },
  inch: { takes: null, commands: [...PLANNING, ...CHECK], help: en`lengths in inches (JSON keeps its stated units)` },
  comma: { takes: null, commands: [...PLANNING, ...CHECK], help: en`print a decimal comma (JSON keeps the point)` },
  rows: {
    takes: 'N',
    commands: ['options', 'reach', 'buy'],
    help: en`rows to print, 1 to 200; without it 12, with --try 8; in JSON all, with --workings one; of reach the gaps, 12 or in JSON 50; plans of buy, else 5`,
  },
  order: {
    takes: 'closest|least-work|trade-off',
    commands: ['options'],
    help: en`order of the rows that are printed; closest if left out (JSON keeps that order)`,
  },
  try: {
    takes: 'RATIO',
    commands: ['options'],
    help: en`instead: what can be built near another ratio, written as the material writes its own`,
  },
  ratios: { takes: null, commands: ['reach'], help: en`also list every ratio of the window with its teeth and flow (JSON always does)` },
  count: { takes: null, commands: ['options'], help: en`count every option, however many there are` },
  json: { takes: null, commands: ['options', 'reach', 'quote', 'buy', 'ratio-check', 'validate'], help: en`print JSON` },
  workings: {
    takes: null,
    commands: ['options', 'sheet', 'ratio-check'],
    help: en`with JSON: how each figure came about; on paper: as further pages`,
  },
  option: { takes: 'N', commands: ['sheet'], help: en`the option by its number in the list; 1 is the first` },
  paper: { takes: 'A4|Letter', commands: PRINTED, help: en`paper size; A4 if left out` },
  number: { takes: 'TEXT', commands: ['sheet', 'quote'], help: en`number of the change sheet or quote page, to be printed on it` },
  date: { takes: 'YYYY-MM-DD', commands: PRINTED, help: en`date to be printed, or of the catches; today if left out` },
  customer: { takes: 'NAME', commands: ['quote'], help: en`whom the quote page is for, at most ${CUSTOMER_LENGTH} characters` },
  note: { takes: 'TEXT', commands: ['quote'], help: en`a line of your own on the quote page, at most ${NOTE_LENGTH} characters` },
  'valid-days': {
    takes: 'DAYS',
    commands: ['quote'],
    help: en`how long the quote holds from its date, 1 to ${MOST_DAYS}; as long as nothing changes if left out`,
  },
  out: {
    takes: 'FILE.html',
    commands: PRINTED,
    help: en`where the page is written; a quote or a ratio check without it is printed as text`,
  },
  sheet: { takes: 'N', commands: CHECK, help: en`number of the change sheet that is proved; without it what is fitted` },
  catches: { takes: 'FILE.csv', commands: CHECK, help: en`what was caught: columns A net g, B net g, or gross and tare, volume, left out` },
  turns: { takes: 'N', commands: CHECK, help: en`turns of the motor for each catch` },
  time: { takes: 'TIME', commands: CHECK, help: en`instead of turns, with --dial: how long each catch ran, as 20s` },
  dial: { takes: 'PERCENT', commands: CHECK, help: en`with --time: where the dial stood` },
  step: { takes: 'MASS', commands: CHECK, help: en`step of the scale, as 0.1g; the scale of the last kept check if left out` },
  tared: { takes: null, commands: CHECK, help: en`with --step: the scale was tared and read once a weighing` },
  'scale-uncertainty': { takes: 'MASS', commands: CHECK, help: en`with --step: ± of the scale from its certificate at 95 %` },
  confidence: { takes: 'PERCENT', commands: CHECK, help: en`of the interval, 60 to 99.9; 95 if left out` },
  by: { takes: 'NAME', commands: CHECK, help: en`who caught and weighed` },
  before: { takes: null, commands: CHECK, help: en`instead of catches: what to catch, how little and how often` },
  check: { takes: 'ID', commands: CHECK, help: en`instead of catches: a check that the file keeps` },
  all: { takes: null, commands: CHECK, help: en`instead of catches: every check that the file keeps` },
};

/** A value on the command line has no space in it. */
const ORDER_WORDS = {
  closest: 'closest',
  'least-work': 'least work',
  'trade-off': 'trade-off',
} as const satisfies Readonly<Record<string, Order>>;

export interface Call {
  readonly command: Command;
  readonly file: string;
  readonly selection: Selection;
  readonly say: Say;
  readonly rows: number | null;
  readonly order: Order;
  /** Another ratio to be tried in place of the material's own. */
  readonly tried: string | null;
  /** Null: all that have limits. */
  readonly materials: readonly string[] | null;
  readonly mostPurchases: number;
  readonly prices: readonly PriceRow[] | null;
  readonly pumpPrices: PumpPrices | null;
  /** Of ratios: what reach is asked for, and in buy what takes the place of the materials. */
  readonly window: Window | null;
  /** Whether every ratio of a reach is listed. */
  readonly ratios: boolean;
  /** A list that stands in for the materials of the file. */
  readonly materialsCsv: string | null;
  /** Of reach: the materials, each with its best option; and that table alone as CSV. */
  readonly best: boolean;
  /** Of ratio-check; null for all others. */
  readonly check: CheckWish | null;
  readonly csv: boolean;
  readonly count: boolean;
  readonly json: boolean;
  readonly workings: boolean;
  readonly option: number;
  readonly paper: 'A4' | 'Letter';
  readonly number: string;
  readonly date: string | null;
  readonly customer: string;
  readonly note: string;
  /** Null: as long as nothing changes. */
  readonly validDays: number | null;
  readonly out: string | null;
}

export type Parsed =
  | { readonly kind: 'help' }
  | { readonly kind: 'bad'; readonly problems: readonly string[] }
  | { readonly kind: 'call'; readonly call: Call };

/** Reads the command line; everything wrong with it is said at once. */
export function readFlags(args: readonly string[]): Parsed {
  const options = Object.fromEntries(
    Object.entries(FLAGS).map(([name, flag]) => [name, { type: flag.takes === null ? ('boolean' as const) : ('string' as const) }]),
  );
  const { tokens, positionals } = parseArgs({ args: [...args], options, strict: false, allowPositionals: true, tokens: true });
  const given = new Map<string, string>();
  const problems: string[] = [];
  const [word, file, ...rest] = positionals;
  if (args.length === 0 || args.includes('--help') || args.includes('-h') || word === 'help') return { kind: 'help' };

  const command = COMMANDS.find((one) => one === word);
  if (command === undefined) problems.push(en`${quoted(word ?? '')} is no command. Expected one of: ${COMMANDS.join(', ')}.`);
  if (command !== undefined && file === undefined) problems.push(en`${command} needs a shop file.`);
  if (rest.length > 0) problems.push(en`Only one file is read; ${quoted(rest.join(' '))} is too much.`);
  for (const token of tokens) {
    if (token.kind !== 'option') continue;
    const flag = Object.hasOwn(FLAGS, token.name) ? FLAGS[token.name] : undefined;
    if (flag === undefined) problems.push(en`${token.rawName} is no flag. See --help.`);
    else if (command !== undefined && !flag.commands.includes(command)) problems.push(en`${token.rawName} does not belong to ${command}.`);
    else if (flag.takes !== null && (token.value === undefined || token.value === ''))
      problems.push(en`${token.rawName} needs a value: ${flag.takes}.`);
    else if (flag.takes === null && token.value !== undefined) problems.push(en`${token.rawName} takes no value.`);
    else if (given.has(token.name)) problems.push(en`${token.rawName} is given twice.`);
    else given.set(token.name, token.value ?? '');
  }
  const call = readValues(command ?? 'options', file ?? '', given, problems);
  return problems.length > 0 ? { kind: 'bad', problems } : { kind: 'call', call };
}

function readValues(command: Command, file: string, given: ReadonlyMap<string, string>, problems: string[]): Call {
  const whole = (name: string, least: number, most: number): number | null => {
    const text = given.get(name);
    if (text === undefined) return null;
    if (/^\d{1,6}$/.test(text) && Number(text) >= least && Number(text) <= most) return Number(text);
    problems.push(en`--${name} takes a whole number from ${least} to ${most}, not ${quoted(text)}.`);
    return null;
  };
  const oneOf = <T extends string>(name: string, values: readonly [T, ...T[]]): T => {
    const text = given.get(name);
    const found = values.find((value) => value.toLowerCase() === text?.toLowerCase());
    if (text !== undefined && found === undefined) problems.push(en`--${name} takes ${values.join(en` or `)}, not ${quoted(text)}.`);
    return found ?? values[0];
  };
  const teeth = readTeeth(given.get('teeth'), problems);
  const buy = whole('buy', 1, 8);
  const date = given.get('date') ?? null;
  if (date !== null && !isDate(date)) problems.push(en`--date takes a date as 2026-11-24, not ${quoted(date)}.`);
  const words = (name: 'customer' | 'note', most: number): string => {
    const text = given.get(name) ?? '';
    if (text.length > most) problems.push(en`--${name} takes at most ${most} characters, not ${text.length}.`);
    return text;
  };
  const out = given.get('out') ?? null;
  if (command === 'sheet' && out === null) problems.push(en`sheet needs --out FILE.html.`);
  const best = given.has('best') || given.has('csv');
  if ((command === 'quote' || (command === 'reach' && !best)) && !given.has('window'))
    problems.push(
      command === 'reach' ? en`${command} needs --window LO:HI, as 1:5, or --best.` : en`${command} needs --window LO:HI, as 1:5.`,
    );
  for (const name of ['window', 'json'])
    if (command === 'reach' && given.has('csv') && given.has(name))
      problems.push(en`--csv prints the table of best options alone: leave out --${name}.`);
  if (given.has('ratios') && best && !given.has('window')) problems.push(en`--ratios belongs to --window.`);
  if (out !== null && !/\.html?$/i.test(out)) problems.push(en`--out takes a file that ends in .html, not ${quoted(out)}.`);
  if (command === 'options' && given.has('workings') && !given.has('json'))
    problems.push(en`--workings of options are printed as JSON: add --json.`);
  for (const name of ['order', 'count', 'workings'])
    if (given.has('try') && given.has(name)) problems.push(en`--${name} belongs to the list of options, not to --try.`);
  for (const name of ['prices', 'pump-prices', 'rows'])
    if (command === 'buy' && given.has('window') && given.has(name))
      problems.push(en`--${name} belongs to the plan for materials, not to --window.`);
  for (const name of ['any-pump', 'prices'])
    if (given.has('pump-prices') && !given.has(name)) problems.push(en`--pump-prices needs --${name}.`);
  const id = (name: 'machine' | 'material' | 'rack') => {
    const value = given.get(name);
    return value === undefined ? {} : { [name]: value };
  };
  return {
    command,
    file,
    selection: {
      ...id('machine'),
      ...id('material'),
      ...id('rack'),
      ...(buy !== null && { purchases: buy }),
      ...(teeth !== null && { teeth }),
      ...(given.has('any-pump') && { anyPump: true }),
      ...(given.has('as-measured') && { asMeasured: true }),
    },
    say: { decimal: given.has('comma') ? ',' : '.', system: given.has('inch') ? 'inch' : 'metric' },
    rows: whole('rows', 1, 200),
    order: ORDER_WORDS[oneOf('order', ['closest', 'least-work', 'trade-off'])],
    tried: given.get('try') ?? null,
    materials: given.get('materials')?.split(',') ?? null,
    mostPurchases: whole('most', 1, 8) ?? 3,
    window: readWindow(given.get('window'), given.get('tolerance'), problems),
    prices: readPrices(given.get('prices'), problems),
    pumpPrices: readPumpPrices(given.get('pump-prices'), problems),
    ratios: given.has('ratios'),
    materialsCsv: given.get('materials-csv') ?? null,
    best,
    check: command === 'ratio-check' ? readCheckWish(given, problems) : null,
    csv: given.has('csv'),
    count: given.has('count'),
    json: given.has('json'),
    workings: given.has('workings'),
    option: whole('option', 1, 200) ?? 1,
    paper: oneOf('paper', ['A4', 'Letter']),
    number: given.get('number') ?? '',
    date,
    customer: words('customer', CUSTOMER_LENGTH),
    note: words('note', NOTE_LENGTH),
    validDays: whole('valid-days', 1, MOST_DAYS),
    out,
  };
}

function readTeeth(text: string | undefined, problems: string[]): { from: number; to: number } | null {
  if (text === undefined) return null;
  const match = /^(\d{1,3})-(\d{1,3})$/.exec(text);
  const [from, to] = [Number(match?.[1]), Number(match?.[2])];
  if (match !== null && from >= 5 && to <= 400 && from <= to) return { from, to };
  problems.push(en`--teeth takes a range as 13-40, from 5 to 400 teeth, not ${quoted(text)}.`);
  return null;
}
