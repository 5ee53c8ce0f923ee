import { Worker } from 'node:worker_threads';
import fc from 'fast-check';
import type { Task } from './crew.ts';
import { regionsOf, withMutants, withRegions } from './instrument.ts';
import type { Mutant } from './mutants.ts';
import { isMutated } from './sample.ts';
import type { Gathered } from './stand.ts';
import { openWorkshop, type Workshop } from './workshop.ts';

// One process that runs tests again and again. It is ended from within where a mutant never comes to an end.

export type PlacedMutant = Mutant & { readonly id: number; readonly place: string };

/** Regions by file: their indexes there. */
export type Seen = Readonly<Record<string, readonly number[]>>;

export interface Call {
  readonly file: string;
  readonly tests: readonly { readonly index: number; readonly cpu_ms: number }[];
}

export type Order =
  | { readonly kind: 'learn'; readonly file: string }
  | { readonly kind: 'try'; readonly active: number; readonly calls: readonly Call[] };

export type Report =
  | {
      readonly kind: 'learnt';
      readonly load_ms: number;
      readonly atLoad: Seen;
      readonly modules: readonly string[];
      readonly tests: readonly { readonly title: string; readonly cpu_ms: number; readonly seen: Seen }[];
      readonly failed: readonly string[];
    }
  | { readonly kind: 'tried'; readonly failed: string | null };

/** Processor time a test may take: a loop without end is told from a slow machine by what it uses, not by the clock. */
const LIMIT_MS = 10_000;
const LIMIT_TIMES = 12;
/** Tests that wait for what never comes use no time. */
const WAIT_MS = 60_000;

/** Switches every mutant off. */
export const NO_MUTANT = -1;

let active = NO_MUTANT;
/** One byte for each region, 1 where it was entered. */
const entered = new Uint8Array(1 << 16);
const enter = (region: number) => {
  entered[region] = 1;
};
Object.assign(globalThis, { $mutants: { on: (id: number) => id === active, enter } });
// The same random cases for every mutant, and none made smaller: one failure is enough.
fc.configureGlobal({ seed: 1, endOnFailure: true });

const cpu_ms = (): number => {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
};

/** Ends this process once it has used more than `until[0]` ms; 0 is no limit. */
const until = new Float64Array(new SharedArrayBuffer(8));
const GUARD = `const { workerData } = require('node:worker_threads');
setInterval(() => {
  const { user, system } = process.cpuUsage();
  if (workerData[0] > 0 && (user + system) / 1000 > workerData[0]) process.kill(process.pid, 'SIGKILL');
}, 100);`;

async function timed(work: () => Promise<unknown>, usual_ms: number): Promise<number> {
  const from = cpu_ms();
  until[0] = from + LIMIT_MS + LIMIT_TIMES * usual_ms;
  let wait: NodeJS.Timeout | undefined;
  const late = new Promise((_, refuse) => {
    wait = setTimeout(() => refuse(new Error('waits without end')), WAIT_MS + LIMIT_TIMES * usual_ms);
  });
  try {
    await Promise.race([work(), late]);
  } finally {
    clearTimeout(wait);
    until[0] = 0;
  }
  return cpu_ms() - from;
}

export function work({ root, mutants, texts }: Task): void {
  new Worker(GUARD, { eval: true, workerData: until }).unref();
  /** Where the regions of a file are numbered from. */
  const firsts: { readonly place: string; readonly first: number; readonly next: number }[] = [];
  const change = (place: string, text: string): string => {
    if (!isMutated(place)) return text;
    if (mutants !== null) {
      const own = mutants.filter((one) => one.place === place);
      return withMutants(texts[place] ?? text, own);
    }
    const regions = regionsOf(text);
    const first = (firsts.at(-1)?.next ?? 0) + 1;
    firsts.push({ place, first, next: first + regions.length });
    return withRegions(text, regions, first);
  };
  const takeSeen = (): Seen => {
    const taken = firsts.map(({ place, first, next }): readonly [string, readonly number[]] => {
      const marks = Array.from(entered.subarray(first - 1, next), (mark, index) => (mark === 1 ? [index - 1] : []));
      return [place, marks.flat()];
    });
    entered.fill(0);
    return Object.fromEntries(taken.filter(([, marks]) => marks.length > 0));
  };
  const opening = openWorkshop(root, change);

  async function learn(workshop: Workshop, file: string): Promise<Report> {
    const failed: string[] = [];
    const attempt = async (title: string, run: () => Promise<unknown>): Promise<number> => {
      const from = cpu_ms();
      try {
        await run();
      } catch (error) {
        failed.push(`${file} > ${title}: ${error}`);
      }
      return cpu_ms() - from;
    };
    let current: readonly Gathered[] = [];
    const load = () =>
      attempt('loading', async () => {
        current = await workshop.load(file);
      });
    // The first time compiles.
    workshop.forget();
    await load();
    workshop.forget();
    takeSeen();
    const load_ms = await load();
    const atLoad = takeSeen();
    const tests = [];
    for (const { title, run } of current) tests.push({ title, cpu_ms: await attempt(title, run), seen: takeSeen() });
    const modules = await workshop.loaded();
    return { kind: 'learnt', load_ms, atLoad, modules, tests, failed };
  }

  async function tryCall(workshop: Workshop, call: Call): Promise<string | null> {
    let current: readonly Gathered[] = [];
    workshop.forget();
    try {
      await timed(async () => {
        current = await workshop.load(call.file);
      }, 0);
    } catch {
      return `${call.file} > loading`;
    }
    for (const { index, cpu_ms } of call.tests) {
      const test = current[index];
      if (test === undefined) return `${call.file} > its tests`;
      try {
        await timed(() => test.run(), cpu_ms);
      } catch {
        return `${call.file} > ${test.title}`;
      }
    }
    return null;
  }

  async function tryMutant(workshop: Workshop, order: Order & { readonly kind: 'try' }): Promise<Report> {
    active = order.active;
    for (const call of order.calls) {
      const failed = await tryCall(workshop, call);
      if (failed !== null) return { kind: 'tried', failed };
    }
    return { kind: 'tried', failed: null };
  }

  process.on('message', async (order: Order) => {
    const workshop = await opening;
    process.send?.(await (order.kind === 'learn' ? learn(workshop, order.file) : tryMutant(workshop, order)));
  });
}
