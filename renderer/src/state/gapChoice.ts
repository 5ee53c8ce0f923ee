import { createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js';
import type { GapClosers } from '../../../core/src/buying/index.ts';
import { en } from '../../../core/src/en.ts';
import type { Fraction } from '../../../core/src/ratio.ts';
import type { ReachGap } from '../../../core/src/reach/figures.ts';
import type { App } from './app.ts';
import type { Buyable } from './buyable.ts';
import { type Jobs, makeJobs } from './jobs.ts';
import type { BuyAnswer, BuyAsked } from './messages.ts';
import type { FoundReach, ReachState } from './reach.ts';
import { revived } from './revive.ts';

/** The gap that is looked at, and which wheels close it. */
export interface GapChoice {
  /** One of the reach in sight; a gap that is no longer there is no longer chosen. */
  readonly chosen: () => ReachGap | null;
  readonly choose: (gap: ReachGap | null) => void;
  /** The next gap on the rule, to the right or to the left. */
  readonly step: (by: 1 | -1) => void;
  /** Null while it is not known yet. */
  readonly closers: () => GapClosers | null;
  readonly progress: () => number | null;
  readonly cancel: () => void;
  readonly again: () => void;
  /** Why no wheels are told. */
  readonly trouble: () => string | null;
}

/** Workers of their own, so that the rule never waits behind a plan. */
export const makeBuyJobs = (): Jobs<BuyAsked, BuyAnswer> =>
  makeJobs(() => new Worker(new URL('./reach.worker.ts', import.meta.url), { type: 'module' }));

const NOT_OF_THE_RACK = en`The search of this machine may take wheels that are not on the rack, so its gaps are not those of the rack. The Options page says what the search may use.`;

export function createGapChoice(app: App, reach: ReachState, buyable: () => Buyable | null): GapChoice {
  const jobs = makeBuyJobs();
  onCleanup(() => jobs.end());
  const [picked, pick] = createSignal<ReachGap | null>(null);
  const [answer, setAnswer] = createSignal<{ readonly of: FoundReach; readonly gap: ReachGap; readonly closers: GapClosers } | null>(null);
  const [progress, setProgress] = createSignal<number | null>(null);
  const [turn, again] = createSignal(0);
  const gaps = () => reach.found()?.reach.gaps ?? [];
  const chosen = createMemo((): ReachGap | null => {
    const wanted = picked();
    return wanted === null ? null : (gaps().find((gap) => isSame(gap, wanted)) ?? null);
  });
  const trouble = () => {
    const of = buyable();
    if (of?.ok !== true) return of?.trouble ?? null;
    return of.plan.choice.wheels === 'rack' ? null : NOT_OF_THE_RACK;
  };
  createEffect(
    on([() => reach.found(), buyable, chosen, turn], ([of, may, gap]) => {
      jobs.cancel();
      setAnswer(null);
      setProgress(null);
      const file = app.shop.snapshot();
      // A gap of a plan that has changed since is not asked about: the next answer tells whether it is still there.
      if (of === null || gap === null || file === null || may?.ok !== true || may.plan !== of.plan || trouble() !== null) return;
      jobs.plan({ file, selection: app.selection(), say: app.say() });
      setProgress(0);
      const { low, high, tolerance } = of.reach.wish;
      jobs.ask({
        asked: {
          kind: 'closers',
          gap: { low: gap.low, high: gap.high },
          window: { low, high, tolerance },
          wish: { most: 2, pumps: false, teeth: may.teeth },
        },
        rank: 0,
        latest: true,
        on: {
          progress: setProgress,
          found(found) {
            setProgress(null);
            if (found.kind === 'closers') setAnswer({ of, gap, closers: revived(found.closers) });
          },
          fault(message) {
            setProgress(null);
            app.tell(en`What closes the gap was not worked out; this is a fault of the program: ${message}`);
          },
        },
      });
    }),
  );
  return {
    chosen,
    choose: (gap) => void pick(gap),
    step(by) {
      const inLine = gaps().toSorted((a, b) => a.worstTarget.compare(b.worstTarget));
      const now = chosen();
      const from = now === null ? (by > 0 ? -1 : inLine.length) : inLine.indexOf(now);
      pick(inLine[from + by] ?? now);
    },
    closers: () => answer()?.closers ?? null,
    progress,
    cancel() {
      jobs.cancel();
      setProgress(null);
    },
    again: () => void again((n) => n + 1),
    trouble,
  };
}

const sameEnd = (a: Fraction | null, b: Fraction | null): boolean => (a === null || b === null ? a === b : a.equals(b));
const isSame = (a: ReachGap, b: ReachGap): boolean => sameEnd(a.low, b.low) && sameEnd(a.high, b.high);
