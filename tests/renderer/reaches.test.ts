import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type Fraction, ratioOf, whole } from '../../core/src/ratio.ts';
import type { ReachReply, ReachRequest } from '../../renderer/src/state/messages.ts';
import { makeReaches } from '../../renderer/src/state/reaches.ts';
import { revived } from '../../renderer/src/state/revive.ts';
import { demoFile } from '../core/sheet/demoSheet.ts';

/** A worker that answers when the test says so. */
class HeldWorker {
  static made: HeldWorker[] = [];
  onmessage: ((event: { readonly data: ReachReply }) => void) | null = null;
  onerror: ((event: { readonly message: string }) => void) | null = null;
  readonly heard: ReachRequest[] = [];
  ended = false;
  constructor() {
    HeldWorker.made.push(this);
  }
  postMessage(request: ReachRequest) {
    this.heard.push(request);
  }
  terminate() {
    this.ended = true;
  }
  /** What it was asked for: the low end of a window, or a material. */
  asked(): readonly string[] {
    return this.heard.flatMap((request) => {
      if (request.kind === 'plan') return [];
      if (request.kind === 'add') return ['add'];
      return request.kind === 'best' ? [request.material] : [String(request.window?.low.n)];
    });
  }
  answer() {
    const last = this.heard.at(-1);
    if (last === undefined || last.kind === 'plan') throw new Error('nothing was asked');
    if (last.kind === 'best') this.onmessage?.({ data: { id: last.id, kind: 'best', material: last.material, best: null } });
    else if (last.kind === 'add') this.onmessage?.({ data: { id: last.id, kind: 'add', words: ['words'] } });
    else this.onmessage?.({ data: { id: last.id, kind: 'fault', message: 'answered' } });
  }
}

const plan = { file: demoFile(), selection: {}, say: { decimal: '.', system: 'metric' } } as const;
let told: string[] = [];
type Reaches = ReturnType<typeof makeReaches>;
const reach = (reaches: Reaches, low: number) =>
  reaches.reach(
    { window: { low: whole(low), high: whole(90) }, around: [], tolerance: ratioOf(1, 50) },
    { progress: (done) => told.push(`${low} at ${done}`), found: () => told.push(`${low}`), fault: () => told.push(`${low}`) },
  );
const best = (reaches: Reaches, material: string) =>
  reaches.best(material, { found: () => told.push(material), fault: (message) => told.push(message) });
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

test('while one window is worked on only the last waits, and goes before every material; what to add goes last', () => {
  const reaches = makeReaches();
  reaches.plan(plan);
  reach(reaches, 1);
  reaches.add(['a', 'b'], { found: (words) => told.push(...words), fault: (message) => told.push(message) });
  best(reaches, 'a');
  best(reaches, 'b');
  reach(reaches, 2);
  reach(reaches, 3);
  for (let count = 0; count < 5; count += 1) worker(0).answer();
  expect(worker(0).asked()).toEqual(['1', '3', 'a', 'b', 'add']);
  expect(told).toEqual(['1', '3', 'a', 'b', 'words']);
});

test('a new plan ends what is worked on and forgets what waits; a late answer is not heard', () => {
  const reaches = makeReaches();
  reaches.plan(plan);
  reach(reaches, 1);
  best(reaches, 'a');
  reaches.plan(plan);
  expect(worker(0).ended).toBe(true);
  reach(reaches, 2);
  worker(0).answer();
  expect(worker(1).heard.map(({ kind }) => kind)).toEqual(['plan', 'reach']);
  worker(1).answer();
  expect(told).toEqual(['2']);
});

test('cancelled, nothing more is heard until something is asked again', () => {
  const reaches = makeReaches();
  reaches.plan(plan);
  reach(reaches, 1);
  reaches.cancel();
  expect(worker(0).ended).toBe(true);
  worker(0).answer();
  expect(told).toEqual([]);
  reach(reaches, 2);
  worker(1).answer();
  expect(told).toEqual(['2']);
});

test('an idle worker hears the next plan; one that breaks says so and the next job starts another', () => {
  const reaches = makeReaches();
  reaches.plan(plan);
  reach(reaches, 1);
  worker(0).answer();
  reaches.plan(plan);
  expect([worker(0).ended, worker(0).heard.at(-1)?.kind]).toEqual([false, 'plan']);
  best(reaches, 'a');
  worker(0).onerror?.({ message: 'broken' });
  best(reaches, 'b');
  worker(1).answer();
  expect(told).toEqual(['1', 'broken', 'b']);
});

test('exact numbers are fractions again behind a copy between threads, everything else is as it was', () => {
  const sent = { ratios: [ratioOf(14, 3), ratioOf(-1, 2)], none: null, name: 'n', counts: [1, 2] };
  const got: { readonly ratios: readonly Fraction[] } & typeof sent = revived(structuredClone(sent));
  expect(got.ratios.map((ratio) => ratio.add(1).toFraction())).toEqual(['17/3', '1/2']);
  expect({ ...got, ratios: [] }).toEqual({ ...sent, ratios: [] });
});
