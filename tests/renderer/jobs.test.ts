import { beforeEach, expect, test } from 'vitest';
import { type Jobs, makeJobs } from '../../renderer/src/state/jobs.ts';
import { HeldWorker, heldPlan } from './heldWorker.ts';

let made: HeldWorker<string, string>[] = [];
let told: string[] = [];
let jobs: Jobs<string, string>;
beforeEach(() => {
  made = [];
  told = [];
  jobs = makeJobs<string, string>(() => {
    const held = new HeldWorker<string, string>();
    made.push(held);
    return held as unknown as Worker;
  });
});
const worker = (index: number): HeldWorker<string, string> => {
  const held = made[index];
  if (held === undefined) throw new Error(`worker ${index} was not made`);
  return held;
};
const ask = (asked: string, rank = 0, latest = true) =>
  jobs.ask({
    asked,
    rank,
    latest,
    on: {
      progress: (done) => told.push(`${asked} at ${done}`),
      found: (answer) => told.push(answer),
      fault: (message) => told.push(`${asked}: ${message}`),
    },
  });

test('no worker is made before something is asked, and it hears of the plan first', () => {
  jobs.plan(heldPlan);
  expect(made).toHaveLength(0);
  ask('a');
  expect(worker(0).heard.map(({ kind }) => kind)).toEqual(['plan', 'job']);
});

test('while one is worked on only the last that is asked waits, and its answer comes', () => {
  jobs.plan(heldPlan);
  for (const asked of ['a', 'b', 'c', 'd']) ask(asked);
  expect(worker(0).asked()).toEqual(['a']);
  worker(0).answer('A');
  expect(worker(0).asked()).toEqual(['a', 'd']);
  worker(0).answer('D');
  expect(told).toEqual(['A', 'D']);
});

test('the least rank goes first; of one rank all wait in their turn, or only the last', () => {
  jobs.plan(heldPlan);
  ask('now');
  ask('last', 2);
  ask('a', 1, false);
  ask('b', 1, false);
  ask('early', 0);
  ask('later', 0);
  for (let count = 0; count < 5; count += 1) worker(0).answer(String(count));
  expect(worker(0).asked()).toEqual(['now', 'later', 'a', 'b', 'last']);
  expect(told).toEqual(['0', '1', '2', '3', '4']);
});

test('progress is told to whom it belongs, and the job goes on', () => {
  jobs.plan(heldPlan);
  ask('a');
  worker(0).onmessage?.({ data: { id: worker(0).id(), kind: 'progress', done: 0.5 } });
  worker(0).answer('A');
  expect(told).toEqual(['a at 0.5', 'A']);
});

test('a new plan ends what is worked on and forgets what waits; a late answer is not heard', () => {
  jobs.plan(heldPlan);
  ask('a');
  ask('b');
  jobs.plan(heldPlan);
  expect(worker(0).ended).toBe(true);
  ask('c');
  worker(0).answer('A');
  expect(worker(1).heard.map(({ kind }) => kind)).toEqual(['plan', 'job']);
  worker(1).answer('C');
  expect(told).toEqual(['C']);
});

test('an idle worker is kept for the next plan', () => {
  jobs.plan(heldPlan);
  ask('a');
  worker(0).answer('A');
  jobs.plan(heldPlan);
  expect([worker(0).ended, worker(0).heard.at(-1)?.kind]).toEqual([false, 'plan']);
  ask('b');
  worker(0).answer('B');
  expect([made.length, told]).toEqual([1, ['A', 'B']]);
});

test('cancelled, nothing more is heard until something is asked again; an idle worker stays, and goes at the end', () => {
  jobs.plan(heldPlan);
  ask('a');
  jobs.cancel();
  worker(0).answer('A');
  expect([worker(0).ended, told]).toEqual([true, []]);
  ask('b');
  worker(1).answer('B');
  jobs.cancel();
  expect([worker(1).ended, told]).toEqual([false, ['B']]);
  jobs.end();
  expect(worker(1).ended).toBe(true);
});

test('what the worker cannot do is a fault of that job, and the next goes on', () => {
  jobs.plan(heldPlan);
  ask('a');
  ask('b');
  worker(0).onmessage?.({ data: { id: worker(0).id(), kind: 'fault', message: 'cannot' } });
  worker(0).answer('B');
  expect(told).toEqual(['a: cannot', 'B']);
});

test('a worker that breaks says so once, and the next job gets a new one', () => {
  jobs.plan(heldPlan);
  ask('a');
  worker(0).onerror?.({ message: 'out of memory' });
  ask('b');
  worker(1).answer('B');
  expect(told).toEqual(['a: out of memory', 'B']);
});
