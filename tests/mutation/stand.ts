import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect as plain } from 'vitest';

// Stands where the tests import vitest: it gathers the tests of a file, so that they can be run one by one and again and again in one
// process. What they expect is judged by vitest's own `expect`.

export interface Gathered {
  readonly title: string;
  run(): Promise<void>;
}

type Step = () => unknown;
interface Block {
  readonly before: { readonly all: Step[]; readonly each: Step[] };
  readonly afterEach: Step[];
  readonly outer: Block | null;
  readonly title: string;
  ready: boolean;
}

const blockIn = (outer: Block | null, title: string): Block => ({
  before: { all: [], each: [] },
  afterEach: [],
  outer,
  title,
  ready: false,
});

let file = '';
let block = blockIn(null, '');
let tests: Gathered[] = [];

/** Loads a file and gives its tests, in their order. */
export async function gather(place: string, load: () => Promise<unknown>): Promise<readonly Gathered[]> {
  file = place;
  block = blockIn(null, '');
  tests = [];
  await load();
  return tests;
}

/** A block and those around it, the outermost first. */
const chain = (inner: Block): readonly Block[] => [...(inner.outer === null ? [] : chain(inner.outer)), inner];

function testHere(title: string, body: Step): void {
  const inner = block;
  const place = file;
  tests.push({
    title: [...chain(inner).map((one) => one.title), title].filter((words) => words !== '').join(' > '),
    async run() {
      file = place;
      for (const one of chain(inner)) {
        if (!one.ready) for (const step of one.before.all) await step();
        one.ready = true;
      }
      for (const one of chain(inner)) for (const step of one.before.each) await step();
      try {
        await body();
      } finally {
        for (const one of chain(inner).toReversed()) for (const step of one.afterEach) await step();
      }
    },
  });
}

function describeHere(title: string, body: Step): void {
  const outer = block;
  block = blockIn(outer, title);
  body();
  block = outer;
}

/** One call for each row of a table; a row that is a list is handed over as arguments. */
const withEach = (call: (title: string, body: Step) => void) =>
  Object.assign(call, {
    each: (rows: readonly unknown[]) => (title: string, body: (...put: readonly unknown[]) => unknown) => {
      for (const [index, row] of rows.entries()) call(`${title} [row ${index + 1}]`, () => body(...(Array.isArray(row) ? row : [row])));
    },
  });

export const test = withEach(testHere);
export const it = test;
export const describe = withEach(describeHere);
export const beforeAll = (step: Step): number => block.before.all.push(step);
export const beforeEach = (step: Step): number => block.before.each.push(step);
export const afterEach = (step: Step): number => block.afterEach.push(step);

let kept = new Set<string>();
/** The kept texts that were read since it was asked last. */
export function takeKept(): readonly string[] {
  const taken = [...kept];
  kept = new Set();
  return taken;
}

/** Kept texts lie beside the tests and are only read. */
function keptText(place: string): string {
  const from = path.resolve(path.dirname(file), place);
  kept.add(from);
  return readFileSync(from, 'utf8');
}

export const expect = Object.assign(
  (received: unknown, ...words: string[]) =>
    Object.assign(plain(received, ...words), { toMatchFileSnapshot: (place: string) => plain(received).toBe(keptText(place)) }),
  plain,
);
export { vi } from 'vitest';
