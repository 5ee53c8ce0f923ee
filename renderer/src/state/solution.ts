import { batch, createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js';
import {
  type Finding,
  fittedPumps,
  fittedTeeth,
  layOption,
  type Mounted,
  type Outcome,
  type Plan,
  type PlannedOption,
  planOption,
  type Ranked,
  resolve,
  type Say,
  type Selection,
  searchNotes,
} from '../../../core/src/index.ts';
import type { ShopStore } from './shopStore.ts';
import { makeSolver } from './solver.ts';

/** A finished search with the plan it belongs to: rows are laid out on that plan, even while a newer one is searched. */
export interface Answered {
  readonly plan: Plan;
  readonly ranked: Ranked<Mounted>;
  readonly findings: readonly Finding[];
}

/** All that follows from the file: nothing here is stored. */
export interface Solution {
  /** The plan of the chosen machine and material, or what stands against it; null while no file is open. */
  readonly plan: () => Outcome<Plan> | null;
  /** The last finished search. */
  readonly answered: () => Answered | null;
  /** Share of the running search that is done, 0 to 1; null while none runs. */
  readonly progress: () => number | null;
  /** Whether the answer belongs to the present plan. */
  readonly current: () => boolean;
  /** Our fault, in words to copy; null while all is well. */
  readonly fault: () => string | null;
  readonly cancel: () => void;
  /** Searches again after a cancel. */
  readonly again: () => void;
  /** What is on the machine now, on the answered plan. */
  readonly fitted: () => PlannedOption | null;
  /** An option laid out on the answered plan; kept until the next answer. */
  readonly lay: (mounted: Mounted) => PlannedOption;
  readonly chosen: () => PlannedOption | null;
  readonly chosenMount: () => Mounted | null;
  readonly choose: (mounted: Mounted | null) => void;
}

/** Typing settles before a search starts; below a blink, so it feels at once. */
const SETTLE_ms = 60;

export function createSolution(shop: ShopStore, selection: () => Selection, say: () => Say): Solution {
  const solver = makeSolver();
  const idle = requestIdleCallback(() => solver.ready());
  onCleanup(() => {
    cancelIdleCallback(idle);
    solver.stop();
  });
  const plan = createMemo(() => (shop.file === null ? null : resolve(shop.file, selection(), say())));
  const [answered, setAnswered] = createSignal<Answered | null>(null);
  const [progress, setProgress] = createSignal<number | null>(null);
  const [fault, setFault] = createSignal<string | null>(null);
  const [picked, choose] = createSignal<Mounted | null>(null);
  const [asked, again] = createSignal(0);

  createEffect(
    on([plan, asked], ([outcome]) => {
      solver.cancel();
      setFault(null);
      const file = shop.snapshot();
      if (outcome === null || !outcome.ok || file === null) {
        batch(() => {
          setProgress(null);
          setAnswered(null);
        });
        return;
      }
      setProgress(0);
      const found = outcome.value;
      const timer = setTimeout(
        () =>
          solver.start(
            { file, selection: selection(), say: say() },
            {
              progress: setProgress,
              found: (ranked) =>
                batch(() => {
                  setProgress(null);
                  setAnswered({ plan: found, ranked, findings: [...found.findings, ...searchNotes(ranked)] });
                }),
              fault: (message) =>
                batch(() => {
                  setProgress(null);
                  setFault(message);
                }),
            },
          ),
        // a file just opened is not being typed
        answered() === null ? 0 : SETTLE_ms,
      );
      onCleanup(() => clearTimeout(timer));
    }),
  );

  const fitted = createMemo(() => {
    const of = answered()?.plan;
    return of === undefined ? null : planOption(of, fittedPumps(of), fittedTeeth(of), say());
  });
  const laid = createMemo(() => {
    answered();
    return new Map<string, PlannedOption>();
  });
  const lay = (mounted: Mounted): PlannedOption => {
    const key = JSON.stringify(mounted);
    const cached = laid().get(key);
    const of = answered();
    if (cached !== undefined || of === null) return cached ?? unreachable();
    const option = layOption(of.plan, mounted, say());
    laid().set(key, option);
    return option;
  };
  const chosenMount = createMemo(() => {
    const of = answered();
    if (of === null) return null;
    const wanted = picked();
    return wanted !== null && fits(of.plan, wanted) ? wanted : (of.ranked.options[0] ?? null);
  });
  const chosen = createMemo(() => {
    const mounted = chosenMount();
    return mounted === null ? null : lay(mounted);
  });

  return {
    plan,
    answered,
    progress,
    current: () => {
      const outcome = plan();
      return outcome?.ok === true && outcome.value === answered()?.plan;
    },
    fault,
    cancel: () => {
      solver.cancel();
      setProgress(null);
    },
    again: () => void again((n) => n + 1),
    fitted,
    lay,
    chosen,
    chosenMount,
    choose: (mounted) => void choose(() => mounted),
  };
}

function unreachable(): never {
  throw new RangeError('an option is laid out only on an answered plan');
}

/** An option picked for one plan may not exist on the next. */
function fits(plan: Plan, { pumps, teeth }: Mounted): boolean {
  const there = (['A', 'B'] as const).every((side) => plan.sides[side].pumps.some(({ id }) => id === pumps[side]));
  return there && teeth.length === plan.stages.length;
}
