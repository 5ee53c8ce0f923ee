import { isDate } from '../calendar.ts';
import { en } from '../en.ts';
import type { CatchRow, CaughtRow } from '../file/ratioCheckRow.ts';
import type { UnfinishedCatch, UnfinishedCheck } from '../file/unfinishedCheck.ts';
import type { Finding, Place } from '../finding.ts';
import type { Say } from '../format.ts';
import type { SideName } from '../plan.ts';
import type { TypedQuantity } from '../reading.ts';
import { quoted } from '../visible.ts';
import { writtenCatches } from './blankCatch.ts';
import { boxesOf, type CheckBox, readBox } from './boxes.ts';
import { type Evaluation, evaluate } from './evaluate.ts';
import type { CheckTerms } from './model.ts';
import { readCheck, type TypedCheck } from './readCheck.ts';

/** A check that is being written, read as far as it can be. */
export interface Written {
  /** At their boxes; what blocks must be put right before the check can be kept. */
  readonly findings: readonly Finding[];
  /** By the catches that can be counted so far; null while none can. */
  readonly evaluation: Evaluation | null;
  /** Numbers of the catches that do not count yet, from 1. */
  readonly waiting: readonly number[];
  /** What that judges: the catches that do not count yet are left out of it. */
  readonly judged: TypedCheck | null;
  /** As it would be kept; null while something blocks. */
  readonly typed: TypedCheck | null;
}

const NOT_YET = en`not complete yet`;

/**
 * Reads a check while it is typed: what cannot be read or is not complete is left aside, and the rest is judged already.
 *
 * @param terms  by which it is judged
 * @param place  of the unfinished check in the file
 * @source our choice
 */
export function readWritten(check: UnfinishedCheck, terms: CheckTerms, place: Place, say: Say): Written {
  const findings: Finding[] = [];
  const box = (name: CheckBox, text: string | undefined, where: Place, title: string): TypedQuantity | undefined => {
    const read = readBox(name, text, say);
    if (read.ok) return read.value;
    findings.push(blocks(where, `${title}: ${read.expected}`));
    return undefined;
  };
  const head = (name: Exclude<CheckBox, 'gross' | 'tare' | 'net' | 'volume'>) => box(name, check[name], [...place, name], TITLES[name]);
  const catches = writtenCatches(check).map(
    (row, index): CatchRow => ({
      ...bothSides((side) =>
        caughtOf(check, row[side], (name, text) =>
          box(name, text, [...place, 'catches', index, side, name], en`Catch ${index + 1}, ${side}`),
        ),
      ),
      ...leftOutOf(row, [...place, 'catches', index], index, findings),
    }),
  );
  const run = runOf(check, head);
  const step = head('step');
  const uncertainty = head('uncertainty');
  const confidence = head('confidence');
  if (check.date !== undefined && check.date !== '' && !isDate(check.date))
    findings.push(blocks([...place, 'date'], en`${quoted(check.date)} is no day: year, month and day are expected, as 2026-11-09.`));
  if (step === undefined) {
    if (check.step === undefined || check.step.trim() === '')
      findings.push(blocks([...place, 'step'], en`The smallest step of the scale is missing: what its last digit moves by, as 0.1 g.`));
    return { findings, evaluation: null, waiting: [], judged: null, typed: null };
  }
  const typed: TypedCheck = {
    ...(run && { run }),
    scale: { step, tared: check.weighing === 'tared', ...(uncertainty && { uncertainty }) },
    ...(confidence && { confidence }),
    catches,
  };
  const whole = readCheck(typed, terms, place);
  // of a side that cannot be read nothing else is said
  const unread = findings.map(({ where }) => where.slice(0, -1).join('.'));
  const all = [
    ...findings,
    ...whole.findings.filter(
      ({ where }) => ![where, where.slice(0, -1)].some((of) => unread.includes(of.join('.')) && of.length > place.length),
    ),
  ];
  const sound = all.every(({ severity }) => severity !== 'blocks');
  if (sound && whole.ok) return { findings: all, evaluation: evaluate(whole.value), waiting: [], judged: typed, typed };
  const waiting = catches.flatMap((_, index) => (all.some((one) => isOf(one, place, index)) ? [index] : []));
  const rest = catches.map((row, index) => (waiting.includes(index) && row.leftOut === undefined ? { ...row, leftOut: NOT_YET } : row));
  const judged = { ...typed, catches: rest };
  const part = readCheck(judged, terms, place);
  const numbers = waiting.map((index) => index + 1);
  return part.ok
    ? { findings: all, evaluation: evaluate(part.value), waiting: numbers, judged, typed: null }
    : { findings: all, evaluation: null, waiting: numbers, judged: null, typed: null };
}

const TITLES = {
  turns: en`Turns of a catch`,
  time: en`Time of a catch`,
  dial: en`Dial`,
  step: en`Step of the scale`,
  uncertainty: en`Uncertainty of the scale`,
  confidence: en`Confidence`,
} as const;

const bothSides = <T>(of: (side: SideName) => T): Record<SideName, T> => ({ A: of('A'), B: of('B') });

/** Only the boxes that are shown count; what stands in the others waits there. */
function caughtOf(
  check: UnfinishedCheck,
  side: UnfinishedCatch['A'],
  read: (name: CheckBox, text: string | undefined) => TypedQuantity | undefined,
): CaughtRow {
  return Object.fromEntries(
    boxesOf(check).flatMap((name) => {
      const value = read(name, side[name]);
      return value === undefined ? [] : [[name, value]];
    }),
  );
}

function leftOutOf({ leftOut }: UnfinishedCatch, where: Place, index: number, findings: Finding[]): { leftOut?: string } {
  if (leftOut === undefined) return {};
  if (leftOut.trim() === '') findings.push(blocks([...where, 'leftOut'], en`Catch ${index + 1} is left out: say why.`));
  return { leftOut };
}

function runOf(
  { runBy }: UnfinishedCheck,
  head: (name: 'turns' | 'time' | 'dial') => TypedQuantity | undefined,
): TypedCheck['run'] | undefined {
  const fields = runBy === 'turns' ? (['turns'] as const) : (['time', 'dial'] as const);
  const read = fields.flatMap((name) => {
    const value = head(name);
    return value === undefined ? [] : [[name, value] as const];
  });
  return read.length === 0 ? undefined : Object.fromEntries(read);
}

/** Whether a finding that blocks stands at one catch. */
const isOf = ({ severity, where }: Finding, place: Place, index: number): boolean =>
  severity === 'blocks' && where[place.length] === 'catches' && where[place.length + 1] === index;

const blocks = (where: Place, what: string): Finding => ({
  check: 'ratioCheck.writing',
  severity: 'blocks',
  where,
  what,
  figure: null,
  limit: null,
  source: en`what the file takes`,
  missing: false,
});
