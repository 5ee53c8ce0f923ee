import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Reply } from '../../renderer/src/state/lastAsked.ts';
import type { SentNear, TryRequest } from '../../renderer/src/state/messages.ts';
import { makeTries } from '../../renderer/src/state/tries.ts';
import { demoFile } from '../core/sheet/demoSheet.ts';

/** A worker that answers when the test says so. */
class HeldWorker {
  static made: HeldWorker[] = [];
  onmessage: ((event: { readonly data: Reply<readonly SentNear[]> }) => void) | null = null;
  onerror: ((event: { readonly message: string }) => void) | null = null;
  readonly heard: TryRequest[] = [];
  ended = false;
  constructor() {
    HeldWorker.made.push(this);
  }
  postMessage(request: TryRequest) {
    this.heard.push(request);
  }
  terminate() {
    this.ended = true;
  }
  /** The ratios it was asked for, by their numerators. */
  asked(): readonly bigint[] {
    return this.heard.flatMap((request) => (request.kind === 'try' ? [request.wanted[0]] : []));
  }
  answer() {
    const last = this.heard.at(-1);
    if (last?.kind !== 'try') throw new Error('nothing was asked');
    this.onmessage?.({ data: { id: last.id, kind: 'answer', answer: [] } });
  }
}

const plan = { file: demoFile(), selection: {}, say: { decimal: '.', system: 'metric' } } as const;
let told: string[] = [];
const near = (tries: ReturnType<typeof makeTries>, numerator: bigint) =>
  tries.near([numerator, 10n], 8, {
    found: () => told.push(String(numerator)),
    fault: (message) => told.push(message),
  });
const worker = (index: number): HeldWorker => {
  const made = HeldWorker.made[index];
  if (made === undefined) throw new Error(`worker ${index} was not made`);
  return made;
};

beforeEach(() => {
  HeldWorker.made = [];
  told = [];
  vi.stubGlobal('Worker', HeldWorker);
});
afterEach(() => {
  vi.unstubAllGlobals();
});

test('no worker is made before a ratio is tried, and it hears of the plan first', () => {
  const tries = makeTries();
  tries.plan(plan);
  expect(HeldWorker.made).toHaveLength(0);
  near(tries, 1n);
  expect(worker(0).heard.map(({ kind }) => kind)).toEqual(['plan', 'try']);
});

test('while one is worked on only the last that is asked waits, and its answer comes', () => {
  const tries = makeTries();
  tries.plan(plan);
  for (const numerator of [1n, 2n, 3n, 4n]) near(tries, numerator);
  expect(worker(0).asked()).toEqual([1n]);
  worker(0).answer();
  expect(worker(0).asked()).toEqual([1n, 4n]);
  worker(0).answer();
  expect(told).toEqual(['1', '4']);
});

test('a new plan ends what is worked on for the one before, and its late answer is not heard', () => {
  const tries = makeTries();
  tries.plan(plan);
  near(tries, 1n);
  near(tries, 2n);
  tries.plan(plan);
  expect(worker(0).ended).toBe(true);
  near(tries, 3n);
  worker(0).answer();
  worker(1).answer();
  expect(told).toEqual(['3']);
});

test('an idle worker is kept for the next plan', () => {
  const tries = makeTries();
  tries.plan(plan);
  near(tries, 1n);
  worker(0).answer();
  tries.plan(plan);
  near(tries, 2n);
  worker(0).answer();
  expect([HeldWorker.made.length, worker(0).ended, told]).toEqual([1, false, ['1', '2']]);
});

test('a worker that fails says so once, and the next try gets a new one', () => {
  const tries = makeTries();
  tries.plan(plan);
  near(tries, 1n);
  worker(0).onerror?.({ message: 'out of memory' });
  near(tries, 2n);
  worker(1).answer();
  expect(told).toEqual(['out of memory', '2']);
});
