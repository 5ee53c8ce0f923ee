import { dayCount } from '../src/days.ts';
import { en } from '../src/en.ts';
import { readCatchCsv } from '../src/file/catchCsv.ts';
import { LARGEST_CSV_BYTES } from '../src/file/csv.ts';
import type { RatioCheckRow } from '../src/file/ratioCheckRow.ts';
import type { Finding, Outcome, ShopFile } from '../src/index.ts';
import { type CheckSubject, checkRowOf, subjectFitted, subjectOfSheet } from '../src/ratioCheck/newCheck.ts';
import type { CheckWish } from './checkFlags.ts';
import { readText } from './files.ts';
import type { Call } from './flags.ts';

export type NewWish = Extract<CheckWish, { readonly sheet: string | null }>;

const finding = (severity: Finding['severity'], what: string): Finding => ({
  check: 'ratioCheck.catches',
  severity,
  where: [],
  what,
  figure: null,
  limit: null,
  source: en`the table of catches`,
  missing: false,
});

/** The clock that core does not have is read here. */
export const dayOf = (call: Call): string => call.date ?? new Date().toISOString().slice(0, 10);

export const subjectOf = (file: ShopFile, { sheet }: NewWish, { selection, say }: Call): Outcome<CheckSubject> =>
  sheet === null ? subjectFitted(file, selection, say) : subjectOfSheet(file, sheet, say);

/** The scale as it is given, or that of the last kept check of the machine, which is then said. */
export function scaleFor(file: ShopFile, { plan }: CheckSubject, { step, tared, uncertainty }: NewWish): Outcome<RatioCheckRow['scale']> {
  if (step !== null) return { ok: true, value: { step, tared, ...(uncertainty !== null && { uncertainty }) }, findings: [] };
  const [last] = file.ratioChecks.filter(({ machine }) => machine === plan.machine.id).sort((a, b) => dayCount(b.date) - dayCount(a.date));
  if (last === undefined)
    return {
      ok: false,
      findings: [finding('blocks', en`--step is needed: the file keeps no ratio check of this machine to take the scale from.`)],
    };
  const { value, unit } = last.scale.step;
  const read = `${value}\u00A0${unit}`;
  const what = last.scale.tared
    ? en`The scale is that of ${last.id}: ${read}, tared.`
    : en`The scale is that of ${last.id}: ${read}, gross and tare.`;
  return { ok: true, value: last.scale, findings: [finding('notes', what)] };
}

/** What `readCheck` takes as the length of a catch; nothing where nobody counted. */
export function runFor({ turns, time, dial }: NewWish): RatioCheckRow['run'] {
  if (turns !== null) return { turns };
  return time !== null && dial !== null ? { time, dial } : undefined;
}

/** A new check out of a table of catches, or everything that stands against it. */
export function newCheck(file: ShopFile, wish: NewWish, call: Call): Outcome<RatioCheckRow> {
  const subject = subjectOf(file, wish, call);
  const scale = subject.ok ? scaleFor(file, subject.value, wish) : null;
  const text = readText(wish.catches, LARGEST_CSV_BYTES);
  const read = text.ok ? readCatchCsv(text.value) : null;
  const faults = read === null || read.ok ? [] : read.faults;
  const against = [
    ...(subject.ok ? [] : subject.findings),
    ...(scale === null || scale.ok ? [] : scale.findings),
    ...(text.ok ? [] : text.findings),
    ...faults.map(({ line, column, what }) =>
      finding(
        'blocks',
        column === null ? en`${wish.catches}, line ${line}: ${what}` : en`${wish.catches}, line ${line}, ${column}: ${what}`,
      ),
    ),
  ];
  const [first, ...others] = against;
  if (first !== undefined) return { ok: false, findings: [first, ...others] };
  if (!subject.ok || !scale?.ok || !read?.ok) throw new RangeError('newCheck: refused without a reason');
  const run = runFor(wish);
  const row = checkRowOf(file, subject.value, {
    date: dayOf(call),
    ...(run !== undefined && { run }),
    scale: scale.value,
    ...(wish.confidence !== null && { confidence: wish.confidence }),
    catches: read.catches,
    ...(wish.by !== null && { by: wish.by }),
  });
  if (!row.ok) return row;
  const ignored = read.ignored.length === 0 ? [] : [finding('notes', en`Columns not read: ${read.ignored.join(', ')}.`)];
  return { ...row, findings: [...scale.findings, ...ignored] };
}
