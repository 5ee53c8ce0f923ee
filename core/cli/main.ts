import { writeFileSync } from 'node:fs';
import { type Answer, answer, answerJson, type Finding, KEPT_OPTIONS, type Outcome, resolve, type ShopFile } from '../src/index.ts';
import { findingJson } from '../src/json.ts';
import { buy } from './buy.ts';
import { fromHere, openShopFile, problemLines } from './files.ts';
import { type Call, readFlags } from './flags.ts';
import { helpText } from './help.ts';
import { withMaterials } from './materials.ts';
import { optionsText } from './optionsText.ts';
import { quoteText } from './quoteText.ts';
import { ratioCheck } from './ratioCheck.ts';
import { reach } from './reach.ts';
import { sheetPage } from './sheetPage.ts';
import { tryRatio } from './tryRatio.ts';

const SHOWN_ROWS = 12;

/** Exit codes: 0 an answer, 1 none inside the limits, 2 bad input. */
process.exitCode = run(process.argv.slice(2));

function run(args: readonly string[]): 0 | 1 | 2 {
  const parsed = readFlags(args);
  if (parsed.kind === 'help') {
    process.stdout.write(helpText());
    return 0;
  }
  if (parsed.kind === 'bad') {
    process.stderr.write(`${parsed.problems.join('\n')}\n`);
    return 2;
  }
  const opened = openShopFile(parsed.call.file);
  if (!opened.ok) return refuse(opened.findings);
  const file = parsed.call.materialsCsv === null ? opened : withMaterials(opened.value, parsed.call.materialsCsv, parsed.call);
  if (!file.ok) return refuse(file.findings);
  if (file !== opened) process.stderr.write(problemLines(file.findings));
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

function refuse(findings: readonly Finding[]): 2 {
  process.stderr.write(problemLines(findings));
  return 2;
}

function validate(file: Outcome<ShopFile> & { readonly ok: true }, { json, file: name }: Call): 0 {
  const { machines, materials, racks } = file.value;
  const text = `${name}: ${machines.length} machines, ${materials.length} materials, ${racks.length} racks; sound.\n${problemLines(file.findings)}`;
  process.stdout.write(json ? `${JSON.stringify({ sound: true, findings: file.findings.map(findingJson) }, null, 2)}\n` : text);
  return 0;
}

function planned(file: ShopFile, call: Call): Outcome<Answer> {
  return answer(file, { selection: call.selection, say: call.say, count: call.count });
}

function options(file: ShopFile, ofFile: readonly Finding[], call: Call): 0 | 1 | 2 {
  const outcome = planned(file, call);
  if (!outcome.ok) return refuse(outcome.findings);
  const found = outcome.value;
  process.stderr.write(problemLines(ofFile));
  const rows = call.rows ?? (call.workings ? 1 : call.json ? KEPT_OPTIONS : SHOWN_ROWS);
  process.stdout.write(
    call.json
      ? `${JSON.stringify(answerJson({ ...found, options: found.options.slice(0, rows) }, call.workings), null, 2)}\n`
      : optionsText(found, rows, call.order, call.say),
  );
  return found.options.some((option) => option.inside === true) ? 0 : 1;
}

function tried(file: ShopFile, text: string, call: Call): 0 | 1 | 2 {
  const plan = resolve(file, call.selection, call.say);
  if (!plan.ok) return refuse(plan.findings);
  const found = tryRatio(file, plan.value, text, call);
  if (!found.ok) {
    process.stderr.write(`--try: ${found.expected}\n`);
    return 2;
  }
  process.stdout.write(found.value.text);
  return found.value.inside ? 0 : 1;
}

function bought(file: ShopFile, ofFile: readonly Finding[], call: Call): 0 | 1 | 2 {
  const found = buy(file, call);
  if (!found.ok) return refuse(found.findings);
  process.stderr.write(problemLines(ofFile));
  process.stdout.write(found.value.text);
  return found.value.allServed ? 0 : 1;
}

function reached(file: ShopFile, call: Call): 0 | 1 | 2 {
  const found = reach(file, call);
  if (!found.ok) return refuse(found.findings);
  process.stdout.write(found.value.text);
  return found.value.served ? 0 : 1;
}

function sheet(file: ShopFile, call: Call): 0 | 1 | 2 {
  const outcome = planned(file, call);
  if (!outcome.ok) return refuse(outcome.findings);
  const option = outcome.value.options[call.option - 1];
  if (option === undefined) {
    process.stderr.write(`There is no option ${call.option}: the list holds ${outcome.value.options.length}. Nothing was written.\n`);
    return 1;
  }
  if (!written(call, () => sheetPage(outcome.value, option, call))) return 2;
  process.stdout.write(
    `${call.out}: change sheet for ${outcome.value.plan.machine.name}, ${outcome.value.plan.material.name}, option ${call.option}.\n`,
  );
  return 0;
}

function quote(file: ShopFile, call: Call): 0 | 2 {
  if (call.window === null) throw new RangeError('quote: no window');
  const made = quoteText(file, call.window, call);
  if (!made.ok) return refuse(made.findings);
  if (call.out === null || call.json) process.stdout.write(made.value.text);
  if (call.out === null) return 0;
  if (!written(call, made.value.html)) return 2;
  if (!call.json) process.stdout.write(`${call.out}: quote page for ${made.value.machine}.\n`);
  return 0;
}

function checkedRatio(file: ShopFile, ofFile: readonly Finding[], call: Call): 0 | 1 | 2 {
  const made = ratioCheck(file, call);
  if (!made.ok) return refuse(made.findings);
  const { text, page, passed } = made.value;
  process.stderr.write(problemLines(ofFile));
  if (page !== null && !written(call, page.html)) return 2;
  process.stdout.write(page === null || call.json ? text : `${call.out}: ${page.what}\n`);
  return passed ? 0 : 1;
}

/** Writes a page where the call says; false where that cannot be, which is then said. */
function written(call: Call, page: () => string): boolean {
  try {
    writeFileSync(fromHere(call.out ?? ''), page());
    return true;
  } catch (error) {
    process.stderr.write(`${call.out} cannot be written: ${error instanceof Error ? error.message : String(error)}\n`);
    return false;
  }
}
