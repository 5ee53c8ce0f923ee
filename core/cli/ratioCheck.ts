import path from 'node:path';
import { checkCharts } from '../src/checkCharts.ts';
import { en } from '../src/en.ts';
import { SCRIPT_SAY } from '../src/figuresJson.ts';
import type { Finding, Outcome, ShopFile } from '../src/index.ts';
import { checkFacts } from '../src/ratioCheck/checkFacts.ts';
import { checksCsv } from '../src/ratioCheck/checksCsv.ts';
import { type Judged, judge } from '../src/ratioCheck/judge.ts';
import { ratioCheckJson } from '../src/ratioCheckJson.ts';
import { checkRecord } from '../src/sheet/checkRecord.ts';
import { checkRecordLines } from '../src/sheet/checkRecordLines.ts';
import { checkRecordBody, recordChart } from '../src/sheet/checkRecordPage.ts';
import { wholePage } from '../src/sheet/wholePage.ts';
import { workingGroups } from '../src/sheet/workingPage.ts';
import { quoted } from '../src/visible.ts';
import { before } from './checkBefore.ts';
import { newCheck } from './checkNew.ts';
import { keptChecksText } from './checksTable.ts';
import type { Call } from './flags.ts';

/** What `ratio-check` prints, the page to write if one is wished, and whether the exit code is 0. */
export interface CheckAnswer {
  readonly text: string;
  readonly page: { readonly html: () => string; readonly what: string } | null;
  readonly passed: boolean;
}

const NOT_FOUND = (id: string, kept: readonly string[]): Finding => ({
  check: 'ratioCheck.kept',
  severity: 'blocks',
  where: ['ratioChecks'],
  what:
    kept.length === 0
      ? en`There is no ratio check ${quoted(id)}; the file keeps none.`
      : en`There is no ratio check ${quoted(id)}; the file keeps ${kept.join(', ')}.`,
  figure: null,
  limit: null,
  source: en`the shop file`,
  missing: false,
});

/** Judges new catches or a kept check, says what to catch, or lists every kept check. */
export function ratioCheck(file: ShopFile, call: Call): Outcome<CheckAnswer> {
  const wish = call.check;
  if (wish === null) throw new RangeError('ratioCheck: nothing is asked for');
  switch (wish.of) {
    case 'all': {
      const text = call.csv ? checksCsv(file, call.say.decimal) : keptChecksText(file, call);
      return { ok: true, value: { text, page: null, passed: true }, findings: [] };
    }
    case 'before':
      return before(file, wish, call);
    case 'kept': {
      const at = file.ratioChecks.findIndex(({ id }) => id === wish.id);
      const row = file.ratioChecks[at];
      if (row === undefined)
        return {
          ok: false,
          findings: [
            NOT_FOUND(
              wish.id,
              file.ratioChecks.map(({ id }) => id),
            ),
          ],
        };
      return answerTo(file, judge(file, row, ['ratioChecks', at], sayOf(call)), call);
    }
    default: {
      const row = newCheck(file, wish, call);
      return row.ok ? answerTo(file, judge(file, row.value, [], sayOf(call)), call, row.findings) : row;
    }
  }
}

/** Words in JSON are worded for scripts. */
const sayOf = ({ json, say }: Call) => (json ? SCRIPT_SAY : say);

function answerTo(file: ShopFile, judged: Outcome<Judged>, call: Call, ofReading: readonly Finding[] = []): Outcome<CheckAnswer> {
  if (!judged.ok) return judged;
  const findings = [...ofReading, ...judged.findings];
  const { say } = call;
  const record = checkRecord(file, judged.value, findings, { file: path.basename(call.file), say });
  const charts = checkCharts(file, judged.value, say, recordChart(record));
  const lines = checkRecordLines(
    record,
    charts.map(({ sentence }) => sentence),
  );
  const text = call.json
    ? JSON.stringify(ratioCheckJson(file, judged.value, findings, call.workings), null, 2)
    : lines.join('\n').replaceAll('\u00a0', ' ');
  const html = () => {
    const working = call.workings ? workingGroups(checkFacts(judged.value, say), say) : [];
    const svgs = charts.map(({ svg }) => svg);
    return wholePage(record.title, checkRecordBody(record, svgs, working), call.paper);
  };
  const what = en`record of a ratio check on ${record.machine}, ${record.material}: ${record.verdict.word.toLowerCase()}.`;
  return {
    ok: true,
    value: { text: `${text}\n`, page: call.out === null ? null : { html, what }, passed: judged.value.evaluation.verdict === 'pass' },
    findings: [],
  };
}
