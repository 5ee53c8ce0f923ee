import { createBench } from './bench.ts';
import { entries } from './entries/index.ts';
import { type Flags, flagsOf, HELP } from './flags.ts';
import { FULL, QUICK } from './form.ts';
import { machineText } from './machine.ts';
import { randomRun } from './randomRun.ts';
import type { Outcome } from './report.ts';
import { textOf, withSearch, write } from './results.ts';
import { markdown, plainText } from './table.ts';

/** Runs what the flags name; answers whether every comparison of two ways came out the same. */
function run(flags: Flags): boolean {
  if (flags.help) console.log(HELP);
  else if (flags.only === 'list') console.log(entries.map(({ name }) => name).join('\n'));
  else if (flags.random !== null) return randomRun(flags.random) === 0;
  else return measure(flags);
  return true;
}

function measure(flags: Flags): boolean {
  const chosen = entries.filter(({ name }) => flags.only === null || name === flags.only);
  if (chosen.length === 0) throw new TypeError(`--only ${flags.only}: one of ${entries.map(({ name }) => name).join(', ')}`);
  const bench = createBench(flags.quick ? QUICK : FULL);
  const outcomes = chosen.map((entry): Outcome => {
    process.stderr.write(`${entry.name} ... `);
    const from_ms = performance.now();
    const outcome = entry.run(bench);
    process.stderr.write(`${((performance.now() - from_ms) / 1000).toFixed(1)} s\n`);
    return outcome;
  });
  const [rows, claims, differences] = [
    outcomes.flatMap((outcome) => outcome.rows),
    outcomes.flatMap((outcome) => outcome.claims),
    outcomes.flatMap((outcome) => outcome.differences),
  ];
  console.log(`\n${plainText(rows, claims)}`);
  for (const line of differences) console.log(`DIFFERENT: ${line}`);
  const machine = machineText();
  write(flags.json, `${JSON.stringify({ form: bench.form, machine, rows, claims, differences }, null, 2)}\n`);
  if (flags.table !== null) write(flags.table, withSearch(textOf(flags.table), markdown(machine, rows, claims)));
  return differences.length === 0;
}

try {
  process.exitCode = run(flagsOf(process.argv.slice(2))) ? 0 : 1;
} catch (error) {
  if (!(error instanceof TypeError)) throw error;
  console.error(`${error.message}\n\n${HELP}`);
  process.exitCode = 2;
}
