import { createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import type { MachineRow } from '../../../core/src/file/machine.ts';
import type { RatioCheckRow } from '../../../core/src/file/ratioCheckRow.ts';
import type { SheetRecord } from '../../../core/src/file/sheetRecord.ts';
import type { UnfinishedCheck } from '../../../core/src/file/unfinishedCheck.ts';
import { type Finding, fittedPumps, fittedTeeth, type Outcome, type Place } from '../../../core/src/index.ts';
import type { Evaluation } from '../../../core/src/ratioCheck/evaluate.ts';
import { freshCheck, nextCheckId } from '../../../core/src/ratioCheck/freshCheck.ts';
import type { Judged } from '../../../core/src/ratioCheck/judge.ts';
import { type CheckSubject, checkRowOf, subjectFitted, subjectOfSheet } from '../../../core/src/ratioCheck/newCheck.ts';
import type { TypedCheck } from '../../../core/src/ratioCheck/readCheck.ts';
import { termsOf } from '../../../core/src/ratioCheck/terms.ts';
import { readWritten, type Written } from '../../../core/src/ratioCheck/unfinished.ts';
import { type App, placeKey } from './app.ts';
import { makeJobs } from './jobs.ts';
import { today } from './keepSheet.ts';
import { type Kept, keptOf } from './keptChecks.ts';
import { isOnBand, measuredOf } from './measured.ts';
import type { JudgeAsked } from './messages.ts';
import { put } from './put.ts';
import { revived } from './revive.ts';

/** A check that can be judged, with what it says. */
export interface Shown {
  readonly row: RatioCheckRow;
  readonly evaluation: Evaluation;
  readonly findings: readonly Finding[];
}

/** The check that is being written for the machine of the pages, those that are kept, and the one that is shown. */
export interface RatioCheckState {
  readonly machine: () => MachineRow | undefined;
  readonly check: () => UnfinishedCheck | null;
  /** Whether anything of it is in the file. */
  readonly begun: () => boolean;
  readonly place: (...rest: Place) => Place;
  /** One edit of the check; edits of one field in a row are one undo step. */
  readonly edit: (field: Place, change: (check: UnfinishedCheck) => void) => void;
  readonly sheets: () => readonly SheetRecord[];
  readonly prove: (sheet: SheetRecord | null) => void;
  readonly proved: () => Outcome<CheckSubject> | null;
  readonly written: () => Written | null;
  /** The first finding that blocks at a box, or at what it is part of. */
  readonly faultAt: (...rest: Place) => string | null;
  readonly kept: () => readonly Kept[];
  /** The kept check that is read; null while one is written. */
  readonly opened: () => Kept | null;
  readonly open: (id: string | null) => void;
  /** The check whose verdict and causes are in sight: the opened one, else the written one as far as it goes. */
  readonly shown: () => Shown | null;
  /** What the worker found last: of what is shown, or of the last kept check while nothing is written. */
  readonly judged: () => Judged | null;
  /** Whether that is for what is in sight. */
  readonly judgedIsCurrent: () => boolean;
  /** Keeps the written check and shows it: one undo step. */
  readonly keep: () => void;
  readonly remove: (id: string) => void;
  readonly discard: () => void;
}

export function createRatioCheck(app: App): RatioCheckState {
  const machine = () => app.shop.file?.machines[app.machine()];
  const index = createMemo(() => {
    const rows = app.shop.file?.unfinishedChecks ?? [];
    const at = rows.findIndex((one) => one.machine === machine()?.id);
    return at < 0 ? rows.length : at;
  });
  const stored = (): UnfinishedCheck | undefined => app.shop.file?.unfinishedChecks?.[index()];
  const check = createMemo((): UnfinishedCheck | null => {
    const [file, of, begun] = [app.shop.file, machine(), stored()];
    if (file === null || of === undefined) return null;
    return begun ?? freshCheck(file, of);
  });
  const place = (...rest: Place): Place => ['unfinishedChecks', index(), ...rest];
  const edit = (field: Place, change: (check: UnfinishedCheck) => void) => {
    const [of, at] = [machine(), index()];
    if (of === undefined) return;
    app.shop.edit(placeKey(place(...field)), (file) => {
      const rows = file.unfinishedChecks ?? [];
      const row = rows[at] ?? freshCheck(file, of);
      change(row);
      rows[at] = row;
      file.unfinishedChecks = rows;
    });
  };
  const sheets = createMemo(() => (app.shop.file?.changeSheets ?? []).filter((one) => one.machine === machine()?.id).toReversed());
  const proved = createMemo((): Outcome<CheckSubject> | null => {
    const { file } = app.shop;
    const [of, sheetId] = [machine(), check()?.changeSheet];
    if (file === null || of === undefined) return null;
    const sheet = sheets().find(({ id }) => id === sheetId);
    return sheet === undefined ? subjectFitted(file, app.selection(), app.say()) : subjectOfSheet(file, sheet.number, app.say());
  });
  const written = createMemo((): Written | null => {
    const [of, by] = [check(), proved()];
    if (of === null || by?.ok !== true) return null;
    const { plan } = by.value;
    return readWritten(of, termsOf(plan, { pumps: fittedPumps(plan), teeth: fittedTeeth(plan) }), place(), app.say());
  });

  const [openId, open] = createSignal<string | null>(null);
  const kept = createMemo(() => keptOf(app.shop.file?.ratioChecks ?? [], machine()?.id));
  const opened = createMemo(() => kept().find(({ row }) => row.id === openId()) ?? null);
  const rowOf = (typed: TypedCheck): RatioCheckRow | null => {
    const [of, by, file] = [check(), proved(), app.shop.file];
    if (of === null || by?.ok !== true || file === null) return null;
    const made = { ...typed, date: of.date === undefined || of.date === '' ? today() : of.date, ...(of.by !== undefined && { by: of.by }) };
    const row = checkRowOf(file, by.value, made);
    return row.ok ? { ...row.value, id: nextCheckId(file.ratioChecks), ...(of.note !== undefined && { note: of.note }) } : null;
  };
  const shown = createMemo((): Shown | null => {
    const read = opened();
    if (read !== null) return read.evaluation && { row: read.row, evaluation: read.evaluation, findings: read.findings };
    const of = written();
    if (of === null || of.evaluation === null || of.judged === null) return null;
    const row = rowOf(of.judged);
    return row && { row, evaluation: of.evaluation, findings: of.findings };
  });

  const judges = makeJobs<JudgeAsked, Judged>(
    () => new Worker(new URL('./judge.worker.ts', import.meta.url), { type: 'module' }),
    'itself',
  );
  onCleanup(judges.end);
  const [slow, setSlow] = createSignal<{ readonly of: RatioCheckRow; readonly judged: Judged } | null>(null);
  /** With nothing written yet the last kept check tells the trend. */
  const asked = createMemo(() => shown()?.row ?? kept().find(({ evaluation }) => evaluation !== null)?.row ?? null);
  createEffect(
    on(asked, (row) => {
      const file = app.shop.snapshot();
      if (row === null || file === null) {
        setSlow(null);
        return;
      }
      judges.ask({
        asked: { file, row: structuredClone(plain(row)), say: app.say() },
        on: {
          found: (judged) => setSlow({ of: row, judged: revived(judged) }),
          fault: (message) => app.tell(en`The causes were not looked for; this is a fault of the program: ${message}`),
        },
        rank: 0,
        latest: true,
      });
    }),
  );

  createEffect(() => {
    const of = opened() === null ? shown() : null;
    app.setMeasured('written', of !== null && isOnBand(app, of.row) ? measuredOf(of) : null);
  });
  onCleanup(() => app.setMeasured('written', null));

  const step = (key: string, change: Parameters<App['shop']['edit']>[1]) => {
    app.shop.pause();
    app.shop.edit(key, change);
    app.shop.pause();
  };
  return {
    machine,
    check,
    begun: () => stored() !== undefined,
    place,
    edit,
    sheets,
    prove: (sheet) => edit(['changeSheet'], (row) => put(row, 'changeSheet', sheet?.id)),
    proved,
    written,
    faultAt: (...rest) => {
      const key = placeKey(place(...rest));
      return written()?.findings.find(({ where }) => placeKey(where) === key)?.what ?? null;
    },
    kept,
    opened,
    open: (id) => void open(id),
    shown,
    judged: () => slow()?.judged ?? null,
    judgedIsCurrent: () => slow()?.of === asked(),
    keep() {
      const typed = written()?.typed ?? null;
      const row = typed && rowOf(typed);
      const at = index();
      if (row === null) return;
      step(`keep ${row.id}`, (file) => {
        file.ratioChecks.push(row);
        file.unfinishedChecks?.splice(at, 1);
        if (file.unfinishedChecks?.length === 0) put(file, 'unfinishedChecks', undefined);
      });
      open(row.id);
    },
    remove(id) {
      step(`delete ${id}`, (file) => {
        file.ratioChecks = file.ratioChecks.filter((one) => one.id !== id);
      });
      open(null);
    },
    discard() {
      const at = index();
      step(`discard ${at}`, (file) => {
        file.unfinishedChecks?.splice(at, 1);
        if (file.unfinishedChecks?.length === 0) put(file, 'unfinishedChecks', undefined);
      });
    },
  };
}

/** A row of the store as plain data, which is what a worker takes. */
const plain = (row: RatioCheckRow): RatioCheckRow => JSON.parse(JSON.stringify(row)) as RatioCheckRow;
