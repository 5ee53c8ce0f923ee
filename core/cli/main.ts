import { writeFileSync } from 'node:fs';
import { en } from '../src/en.ts';
import { type Answer, answer, answerJson, type Finding, KEPT_OPTIONS, type Outcome, resolve, type ShopFile } from '../src/index.ts';
import { findingJson } from '../src/json.ts';
import { buy } from './buy.ts';
import { fromHere, openShopFile, problemLines } from './files.ts';
import { type Call, readFlags } from './flags.ts';
import { helpText } from './help.ts';
import { withMaterials } from './materials.ts';
import { optionsText } from './optionsText.ts';
import { print, printJson } from './print.ts';
import { withProgress } from './progress.ts';
import { quoteText } from './quoteText.ts';
import { ratioCheck } from './ratioCheck.ts';
import { reach } from './reach.ts';
import { sheetPage } from './sheetPage.ts';
import { tryRatio } from './tryRatio.ts';

const SHOWN_ROWS = 12;

// Whoever reads may stop before the end, as `head` does.
process.stdout.on('error', () => process.exit());

/** Exit codes: 0 an answer, 1 none inside the limits, 2 bad input, 3 a fault of the program itself. */
process.exitCode = guarded(process.argv.slice(2));

function guarded(args: readonly string[]): 0 | 1 | 2 | 3 {
  try {
    return run(args);
  } catch (error) {
    print(
      `${en`This is a fault of the program, not of the file. What it says of it:`}\n${error instanceof Error ? error.stack : error}\n`,
      'stderr',
    );
    return 3;
  }
}

function run(args: readonly string[]): 0 | 1 | 2 {
  const parsed = readFlags(args);
  if (parsed.kind === 'help') {
    print(helpText());
    return 0;
  }
  if (parsed.kind === 'bad') {
    print(`${parsed.problems.join('\n')}\n`, 'stderr');
    return 2;
  }
  const opened = openShopFile(parsed.call.file);
  if (!opened.ok) return refuse(opened.findings);
  const file = parsed.call.materialsCsv === null ? opened : withMaterials(opened.value, parsed.call.materialsCsv, parsed.call);
  if (!file.ok) return refuse(file.findings);
  if (file !== opened) print(problemLines(file.findings), 'stderr');
  switch (parsed.call.command) {
    case 'validate':
      return validate(file, parsed.call);
    case 'options':
      return parsed.call.tried === null
        ? options(file.value, file.findings, parsed.call)
        : tried(file.value, parsed.call.tried, parsed.call);
    case 'reach':
      return reached(file.value, parsed.call);
    case 'sheet':
      return sheet(file.value, parsed.call);
    case 'quote':
      return quote(file.value, parsed.call);
    case 'buy':
      return bought(file.value, opened.findings, parsed.call);
    case 'ratio-check':
      return checkedRatio(file.value, opened.findings, parsed.call);
  }
}

function answerWith(text: string, json: boolean): void {
  if (json) printJson(text);
  else print(text);
}

function refuse(findings: readonly Finding[]): 2 {
  print(problemLines(findings), 'stderr');
  return 2;
}

function validate(file: Outcome<ShopFile> & { readonly ok: true }, { json, file: name }: Call): 0 {
  const { machines, materials, racks } = file.value;
  const sound = en`${name}: ${machines.length} machines, ${materials.length} materials, ${racks.length} racks; sound.`;
  const text = `${sound}\n${problemLines(file.findings)}`;
  answerWith(json ? `${JSON.stringify({ sound: true, findings: file.findings.map(findingJson) }, null, 2)}\n` : text, json);
  return 0;
}

function planned(file: ShopFile, call: Call): Outcome<Answer> {
  const { selection, say, count } = call;
  return withProgress(process.stderr, en`searching`, (hooks) => answer(file, { selection, say, count, hooks }));
}

function options(file: ShopFile, ofFile: readonly Finding[], call: Call): 0 | 1 | 2 {
  const outcome = planned(file, call);
  if (!outcome.ok) return refuse(outcome.findings);
  const found = outcome.value;
  print(problemLines(ofFile), 'stderr');
  const rows = call.rows ?? (call.workings ? 1 : call.json ? KEPT_OPTIONS : SHOWN_ROWS);
  answerWith(
    call.json
      ? `${JSON.stringify(answerJson({ ...found, options: found.options.slice(0, rows) }, call.workings), null, 2)}\n`
      : optionsText(found, rows, call.order, call.say),
    call.json,
  );
  return found.options.some((option) => option.inside === true) ? 0 : 1;
}

function tried(file: ShopFile, text: string, call: Call): 0 | 1 | 2 {
  const plan = resolve(file, call.selection, call.say);
  if (!plan.ok) return refuse(plan.findings);
  const found = tryRatio(file, plan.value, text, call);
  if (!found.ok) {
    print(`--try: ${found.expected}\n`, 'stderr');
    return 2;
  }
  answerWith(found.value.text, call.json);
  return found.value.inside ? 0 : 1;
}

function bought(file: ShopFile, ofFile: readonly Finding[], call: Call): 0 | 1 | 2 {
  const found = buy(file, call);
  if (!found.ok) return refuse(found.findings);
  print(problemLines(ofFile), 'stderr');
  answerWith(found.value.text, call.json);
  return found.value.allServed ? 0 : 1;
}

function reached(file: ShopFile, call: Call): 0 | 1 | 2 {
  const found = reach(file, call);
  if (!found.ok) return refuse(found.findings);
  answerWith(found.value.text, call.json);
  return found.value.served ? 0 : 1;
}

function sheet(file: ShopFile, call: Call): 0 | 1 | 2 {
  const outcome = planned(file, call);
  if (!outcome.ok) return refuse(outcome.findings);
  const option = outcome.value.options[call.option - 1];
  if (option === undefined) {
    print(`${en`There is no option ${call.option}: the list holds ${outcome.value.options.length}. Nothing was written.`}\n`, 'stderr');
    return 1;
  }
  if (!written(call, () => sheetPage(outcome.value, option, call))) return 2;
  const { machine, material } = outcome.value.plan;
  print(`${en`${call.out}: change sheet for ${machine.name}, ${material.name}, option ${call.option}.`}\n`);
  return 0;
}

function quote(file: ShopFile, call: Call): 0 | 2 {
  if (call.window === null) throw new RangeError('quote: no window');
  const made = quoteText(file, call.window, call);
  if (!made.ok) return refuse(made.findings);
  if (call.out === null || call.json) answerWith(made.value.text, call.json);
  if (call.out === null) return 0;
  if (!written(call, made.value.html)) return 2;
  if (!call.json) print(`${en`${call.out}: quote page for ${made.value.machine}.`}\n`);
  return 0;
}

function checkedRatio(file: ShopFile, ofFile: readonly Finding[], call: Call): 0 | 1 | 2 {
  const made = ratioCheck(file, call);
  if (!made.ok) return refuse(made.findings);
  const { text, page, passed } = made.value;
  print(problemLines(ofFile), 'stderr');
  if (page !== null && !written(call, page.html)) return 2;
  answerWith(page === null || call.json ? text : `${call.out}: ${page.what}\n`, call.json);
  return passed ? 0 : 1;
}

/** Writes a page where the call says; false where that cannot be, which is then said. */
function written(call: Call, page: () => string): boolean {
  try {
    writeFileSync(fromHere(call.out ?? ''), page());
    return true;
  } catch (error) {
    print(`${en`${call.out} cannot be written: ${error instanceof Error ? error.message : String(error)}`}\n`, 'stderr');
    return false;
  }
}
