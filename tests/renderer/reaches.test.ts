import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type Fraction, ratioOf, whole } from '../../core/src/ratio.ts';
import type { ReachAnswer, ReachAsked } from '../../renderer/src/state/messages.ts';
import { makeReaches } from '../../renderer/src/state/reaches.ts';
import { revived } from '../../renderer/src/state/revive.ts';
import { HeldWorker, heldPlan } from './heldWorker.ts';

let made: HeldWorker<ReachAsked, ReachAnswer>[] = [];
beforeEach(() => {
  made = [];
  vi.stubGlobal(
    'Worker',
    class extends HeldWorker<ReachAsked, ReachAnswer> {
      constructor() {
        super();
        made.push(this);
      }
    },
  );
});
afterEach(() => {
  vi.unstubAllGlobals();
});

test('a window goes before every material, of windows only the last waits, and what to add goes last', () => {
  const told: string[] = [];
  const fault = (message: string) => told.push(message);
  const reaches = makeReaches();
  const reach = (low: number) =>
    reaches.reach(
      { window: { low: whole(low), high: whole(90) }, around: [], tolerance: ratioOf(1, 50) },
      { found: () => told.push('reach'), fault },
    );
  const best = (material: string) => reaches.best(material, { found: () => told.push(`best for ${material}`), fault });
  reaches.plan(heldPlan);
  reach(1);
  reaches.add(['a', 'b'], { found: (words) => told.push(...words), fault });
  best('a');
  best('b');
  reach(2);
  reach(3);
  const [worker] = made;
  if (worker === undefined) throw new Error('no worker was made');
  // what is of another kind is not heard
  worker.answer({ kind: 'add', words: ['stray'] });
  worker.onmessage?.({ data: { id: worker.id(), kind: 'fault', message: 'no reach' } });
  worker.answer({ kind: 'best', best: null });
  worker.answer({ kind: 'best', best: null });
  worker.answer({ kind: 'add', words: ['words'] });
  const asked = worker
    .asked()
    .map((one) => (one.kind === 'reach' ? String(one.window?.low.n) : one.kind === 'best' ? one.material : one.kind));
  expect(asked).toEqual(['1', '3', 'a', 'b', 'add']);
  expect(told).toEqual(['no reach', 'best for a', 'best for b', 'words']);
});

test('exact numbers are fractions again behind a copy between threads, everything else is as it was', () => {
  const sent = { ratios: [ratioOf(14, 3), ratioOf(-1, 2)], none: null, name: 'n', counts: [1, 2] };
  const got: { readonly ratios: readonly Fraction[] } & typeof sent = revived(structuredClone(sent));
  expect(got.ratios.map((ratio) => ratio.add(1).toFraction())).toEqual(['17/3', '1/2']);
  expect({ ...got, ratios: [] }).toEqual({ ...sent, ratios: [] });
});
