import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseSync } from 'vite';
import { filesUnder, ROOT, textOf } from '../walls/sources.ts';
import { callCrew, type Task } from './crew.ts';
import { type Flags, flagsOf, HELP } from './flags.ts';
import { regionAt, regionsOf, withMutants } from './instrument.ts';
import { likelyFirst } from './likely.ts';
import { mutantsOf } from './mutants.ts';
import { callsFor, learnReach, type Reach, withinBudget } from './reach.ts';
import { isMutated, sampled } from './sample.ts';
import { type Fate, type Result, reportOf } from './score.ts';
import { NO_MUTANT, type PlacedMutant, work } from './worker.ts';

const SCRIPT = process.argv[1] ?? '';

const tell = (line: string) => process.stderr.write(`${line}\n`);

/** The mutants that are tried, and how many there are. */
function drawn({ only, count, seed, again }: Flags): { readonly mutants: readonly PlacedMutant[]; readonly all: number } {
  const places = filesUnder('core/src').filter((place) => isMutated(place) && (place === only || place.startsWith(`${only}/`)));
  const all = places.flatMap((place) => mutantsOf(textOf(place)).map((mutant) => ({ ...mutant, place })));
  if (all.length === 0) throw new TypeError(`--only ${only}: no file of core outside its search has this path`);
  const chosen = again === null ? sampled(all, count, seed) : all.filter(gotThroughIn(again));
  const mutants = chosen.map((mutant, id) => ({ ...mutant, id }));
  for (const place of new Set(mutants.map((one) => one.place))) expectReadable(place, mutants);
  return { mutants, all: all.length };
}

/** Whether a mutant got through when a file of results was written; one whose piece reads otherwise since is another. */
function gotThroughIn(file: string): (mutant: Omit<PlacedMutant, 'id'>) => boolean {
  const { results }: { readonly results: readonly Result[] } = JSON.parse(readFileSync(path.resolve(ROOT, file), 'utf8'));
  const keyOf = (...parts: readonly string[]) => parts.join('\n');
  const through = results.filter(({ fate }) => fate === 'survived' || fate === 'not covered');
  const keys = new Set(through.map(({ place, operator, before, after }) => keyOf(place, operator, before, after)));
  return ({ place, operator, start, end, after }) => keys.has(keyOf(place, operator, textOf(place).slice(start, end), after));
}

/** A text that cannot be read would fail every test, and all its mutants would seem to be killed. */
function expectReadable(place: string, mutants: readonly PlacedMutant[]): void {
  const text = withMutants(
    textOf(place),
    mutants.filter((one) => one.place === place),
  );
  const [error] = parseSync(place, text).errors;
  if (error !== undefined) throw new Error(`${place} with its mutants: ${error.message}`);
}

async function tryAll(mutants: readonly PlacedMutant[], reach: Reach, flags: Flags): Promise<readonly Result[]> {
  const texts = Object.fromEntries(mutants.map(({ place }) => [place, textOf(place)]));
  const crew = callCrew(SCRIPT, { root: ROOT, mutants, texts }, flags.processes);
  const results: Result[] = [];
  const order = likelyFirst();
  const until_ms = performance.now() + 60_000 * flags.minutes;
  await crew.each(mutants, async (member, mutant) => {
    if (performance.now() > until_ms) return;
    const { place, start, end, operator, after, id } = mutant;
    const text = texts[place] ?? '';
    const calls = callsFor(reach, place, regionAt(regionsOf(text), mutant));
    const { taken, left } = withinBudget(calls, 1000 * flags.budget_s, (file) => order.chance(place, file));
    const active = flags.idle ? NO_MUTANT : id;
    const report = calls.length === 0 ? undefined : await member.ask({ kind: 'try', active, calls: taken });
    const killedBy = report?.kind === 'tried' ? report.failed : null;
    const fate: Fate = report === undefined ? 'not covered' : report === null ? 'timed out' : killedBy === null ? 'survived' : 'killed';
    order.note(
      place,
      taken.map(({ file }) => file),
      killedBy?.split(' > ')[0] ?? null,
    );
    const line = text.slice(0, start).split('\n').length;
    const before = text.slice(start, end);
    results.push({ operator, place, line, before, after, fate, killedBy, testsLeft: killedBy === null ? left : 0 });
    const got = killedBy === null ? ` ${before} => ${after}` : '';
    tell(`${results.length}/${mutants.length} ${place}:${line} ${operator}: ${fate}${got.replace(/\s+/g, ' ')}`);
  });
  crew.dismiss();
  return results;
}

async function run(flags: Flags): Promise<void> {
  const { mutants, all } = drawn(flags);
  const learners = callCrew(SCRIPT, { root: ROOT, mutants: null, texts: {} }, flags.processes);
  let reach: Reach;
  try {
    reach = await learnReach(learners, path.join(ROOT, 'dist/mutation/reach.json'), tell);
  } finally {
    learners.dismiss();
  }
  const results = await tryAll(mutants, reach, flags);
  const file = path.resolve(ROOT, flags.json);
  mkdirSync(path.dirname(file), { recursive: true });
  writeFileSync(file, `${JSON.stringify({ ...flags, mutants: all, results }, null, 2)}\n`);
  console.log(reportOf(results));
  console.log(`\n${results.length} of ${all} mutants, seed ${flags.seed}`);
}

if (process.argv[2] === '--worker') process.once('message', (task: Task) => work(task));
else {
  try {
    const flags = flagsOf(process.argv.slice(2));
    if (flags.help) console.log(HELP);
    else await run(flags);
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    console.error(`${error.message}\n\n${HELP}`);
    process.exitCode = 2;
  }
}
