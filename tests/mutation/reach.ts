import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { filesUnder, ROOT } from '../walls/sources.ts';
import type { Crew } from './crew.ts';
import type { Call, Report, Seen } from './worker.ts';

/** Folders whose tests count; those of the built app are no quick answer to a mutant. */
const FOLDERS = ['tests/core', 'tests/file', 'tests/hostile', 'tests/renderer'];
/** What tests read beside the modules they load and the texts they keep. */
const READ = ['tests/examples', 'tests/sources', 'tests/file/files'];

type Learnt = Report & { readonly kind: 'learnt' };
/** What a test file reaches, as long as every file it loads reads the same. */
interface Kept {
  readonly digest: string;
  readonly learnt: Learnt;
}
export type Reach = ReadonlyMap<string, Learnt>;

const digests = new Map<string, string>();
function digestOf(place: string): string {
  const known = digests.get(place);
  if (known !== undefined) return known;
  const file = path.join(ROOT, place);
  const digest = existsSync(file) ? createHash('sha256').update(readFileSync(file)).digest('hex') : 'none';
  digests.set(place, digest);
  return digest;
}
const digestOfAll = (places: readonly string[]): string => createHash('sha256').update(places.map(digestOf).join()).digest('hex');

/**
 * Which functions every test enters, learnt by running each test once without a mutant and kept in `store` until something changes.
 *
 * @throws TypeError where a test fails without a mutant
 */
export async function learnReach(crew: Crew, store: string, tell: (line: string) => void): Promise<Reach> {
  const kept: Record<string, Kept> = existsSync(store) ? JSON.parse(readFileSync(store, 'utf8')) : {};
  const data = READ.flatMap((folder) => filesUnder(folder));
  const digest = ({ modules }: Learnt) => digestOfAll([...modules, ...data]);
  // A test that loads core anew is left out: here one copy is loaded, in which mutants are switched on.
  const files = FOLDERS.flatMap((folder) => filesUnder(folder, '.test.ts')).filter(
    (file) => !readFileSync(path.join(ROOT, file), 'utf8').includes('vi.resetModules'),
  );
  const reach = new Map<string, Learnt>();
  const stale = files.filter((file) => {
    const known = kept[file];
    if (known === undefined || digest(known.learnt) !== known.digest) return true;
    reach.set(file, known.learnt);
    return false;
  });
  const save = () => {
    mkdirSync(path.dirname(store), { recursive: true });
    const entries = [...reach].map(([file, learnt]) => [file, { digest: digest(learnt), learnt } satisfies Kept]);
    writeFileSync(store, JSON.stringify(Object.fromEntries(entries)));
  };
  const failed: string[] = [];
  await crew.each(stale, async (member, file) => {
    const report = await member.ask({ kind: 'learn', file });
    if (report?.kind !== 'learnt') throw new TypeError(`${file} ends its process`);
    failed.push(...report.failed);
    if (report.failed.length === 0) reach.set(file, report);
    tell(`${file}: ${report.tests.length} tests`);
  });
  save();
  if (failed.length > 0) throw new TypeError(`Tests that fail without a mutant:\n${failed.join('\n')}`);
  return new Map([...reach].sort(([one], [other]) => (one < other ? -1 : 1)));
}

const SLOW_MS = 300;

const enters = (seen: Seen, place: string, region: number): boolean => seen[place]?.includes(region) ?? false;

/** A call with the time it usually takes. */
export interface Timed {
  readonly call: Call;
  readonly cpu_ms: number;
}

/** The tests that enter a region, the quick ones of a file together, each slow one for itself. What is run on loading concerns all tests of a file. */
export function callsFor(reach: Reach, place: string, region: number): readonly Timed[] {
  return [...reach].flatMap(([file, { load_ms, atLoad, tests }]): readonly Timed[] => {
    const whole = enters(atLoad, place, region);
    const reached = tests
      .map(({ cpu_ms, seen }, index) => ({ index, cpu_ms, seen }))
      .filter(({ seen }) => whole || enters(seen, place, region))
      .map(({ index, cpu_ms }) => ({ index, cpu_ms }));
    const quick = reached.filter(({ cpu_ms }) => cpu_ms < SLOW_MS);
    const slow = reached.filter(({ cpu_ms }) => cpu_ms >= SLOW_MS);
    return [...(quick.length > 0 ? [quick] : []), ...slow.map((test) => [test])].map((some) => ({
      call: { file, tests: some },
      cpu_ms: load_ms + some.reduce((sum, { cpu_ms }) => sum + cpu_ms, 0),
    }));
  });
}

/** The calls in the order of their time as weighed, as many as the budget takes, and how many tests are left. */
export function withinBudget(calls: readonly Timed[], budget_ms: number, weightOf: (file: string) => number) {
  const ordered = calls.toSorted((one, other) => one.cpu_ms / weightOf(one.call.file) - other.cpu_ms / weightOf(other.call.file));
  const taken: Call[] = [];
  let left = 0;
  let sum = 0;
  for (const { call, cpu_ms } of ordered) {
    if (sum + cpu_ms <= budget_ms || taken.length === 0) {
      taken.push(call);
      sum += cpu_ms;
    } else left += call.tests.length;
  }
  return { taken, left };
}
