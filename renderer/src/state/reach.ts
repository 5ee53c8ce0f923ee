import { createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { type Mounted, type Plan, resolve } from '../../../core/src/index.ts';
import { type Fraction, ONE, ratioOf } from '../../../core/src/ratio.ts';
import type { Reach } from '../../../core/src/reach/figures.ts';
import { type ReachWindow, readTolerance, readWindowEnd } from '../../../core/src/reachWindow.ts';
import { spokenReading } from '../../../core/src/reading.ts';
import { visible } from '../../../core/src/visible.ts';
import type { App } from './app.ts';
import { makeReaches } from './reaches.ts';

/** A material of the shop on the machine; no plan where something of it is missing, which is then said. */
export interface ShopMaterial {
  readonly id: string;
  readonly name: string;
  readonly plan: Plan | null;
  readonly missing: readonly string[];
}

/** An answer with the plan it belongs to; both stay in sight while a later one is worked out. */
export interface FoundReach {
  readonly plan: Plan;
  readonly reach: Reach;
}

/** What the machine can make in a window, worked out beside the window of the program. */
export interface ReachState {
  /** What is shown, even while its exact figures are still awaited; null before there is any answer. */
  readonly window: () => ReachWindow | null;
  readonly show: (window: ReachWindow) => void;
  /** The window as its fields have it. */
  readonly text: (end: keyof ReachWindow) => string;
  /** Whether that text is of the last answer, as nothing was typed or dragged. */
  readonly isAnswered: (end: keyof ReachWindow) => boolean;
  readonly type: (end: keyof ReachWindow, text: string) => string | null;
  /** Back to all that can be built. */
  readonly showAll: () => void;
  /** Share of B per A. */
  readonly tolerance: () => Fraction;
  readonly toleranceText: () => string;
  readonly typeTolerance: (text: string) => string | null;
  readonly found: () => FoundReach | null;
  /** Whether the figures in sight are those of what is shown. */
  readonly current: () => boolean;
  readonly progress: () => number | null;
  readonly cancel: () => void;
  readonly again: () => void;
  readonly materials: () => readonly ShopMaterial[];
  /** Undefined while it is not known yet; null where nothing can be built. */
  readonly best: (material: string) => Mounted | null | undefined;
  /** What might be added to the rack, in sentences; null while it is not known yet. */
  readonly add: () => readonly string[] | null;
  /** Has that worked out. */
  readonly findAdd: () => void;
}

export function createReach(app: App): ReachState {
  const reaches = makeReaches();
  onCleanup(() => reaches.stop());
  const plan = createMemo((): Plan | null => {
    const outcome = app.solution.plan();
    return outcome?.ok === true ? outcome.value : null;
  });
  const materials = createMemo((): readonly ShopMaterial[] => {
    const { file } = app.shop;
    if (file === null || plan() === null) return [];
    return file.materials.map(({ id, name }) => {
      const outcome = resolve(file, { ...app.selection(), material: id }, app.say());
      return {
        id,
        name: visible(name),
        plan: outcome.ok ? outcome.value : null,
        missing: outcome.ok ? [] : outcome.findings.map(({ what }) => what),
      };
    });
  });
  const asked = app.reachAsked;
  const [found, setFound] = createSignal<FoundReach | null>(null);
  /** Null: all that can be built. An end that was not typed is that of the last answer. */
  const window = createMemo(
    (): ReachWindow | null => {
      const { low, high } = asked();
      if (low === '' && high === '') return null;
      const end = (typed: string, which: keyof ReachWindow) => {
        const read = readWindowEnd(typed);
        return read.ok ? read.value : (found()?.reach.wish[which] ?? null);
      };
      const [from, to] = [end(low, 'low'), end(high, 'high')];
      return from !== null && to !== null && from.compare(to) < 0 ? { low: from, high: to } : null;
    },
    null,
    { equals: sameWindow },
  );
  const tolerance = createMemo((): Fraction => {
    const read = readTolerance(asked().tolerance);
    return read.ok ? read.value : ratioOf(1, 50);
  });
  const [progress, setProgress] = createSignal<number | null>(null);
  const [bests, setBests] = createSignal<ReadonlyMap<string, Mounted | null>>(new Map());
  const [add, setAdd] = createSignal<readonly string[] | null>(null);
  const [turn, again] = createSignal(0);
  const fault = (message: string) => {
    setProgress(null);
    app.tell(en`The reach was not worked out; this is a fault of the program: ${message}`);
  };

  createEffect(
    on([plan, turn], ([of]) => {
      const file = app.shop.snapshot();
      setBests(new Map());
      setAdd(null);
      if (of === null || file === null) {
        reaches.cancel();
        setFound(null);
        setProgress(null);
        return;
      }
      reaches.plan({ file, selection: app.selection(), say: app.say() });
    }),
  );
  createEffect(
    on([plan, window, tolerance, turn], ([of, shown, within]) => {
      if (of === null) return;
      const around = materials().flatMap((material) => (material.plan === null ? [] : [ONE.div(material.plan.mix.wantedBPerA)]));
      setProgress((before) => before ?? 0);
      reaches.reach(
        { window: shown, around, tolerance: within },
        {
          progress: setProgress,
          found(reach) {
            setFound({ plan: of, reach });
            if (fits(reach)) setProgress(null);
          },
          fault,
        },
      );
    }),
  );
  // After the reach, which goes before them.
  createEffect(
    on([plan, turn], () => {
      for (const { id, plan: of } of materials())
        if (of !== null) reaches.best(id, { found: (best) => setBests((known) => new Map(known).set(id, best)), fault });
    }),
  );
  /** Whether an answer is the one to what is asked now. */
  const fits = ({ wish }: Reach): boolean => {
    const shown = window();
    return wish.tolerance.equals(tolerance()) && (shown === null || sameWindow(shown, wish));
  };
  const shown = (): ReachWindow | null => window() ?? found()?.reach.wish ?? null;
  const written = (value: Fraction) => spokenReading(value, app.say().decimal).replace(/ \(.*/, '').replace('/', ':');
  const text = (end: keyof ReachWindow): string => {
    if (asked()[end] !== '') return asked()[end];
    const of = shown();
    return of === null ? '' : written(of[end]);
  };

  return {
    window: shown,
    show: ({ low, high }) => app.askReach({ ...asked(), low: written(low), high: written(high) }),
    text,
    isAnswered: (end) => asked()[end] === '',
    type(end, typed) {
      const read = readWindowEnd(typed);
      if (!read.ok) return read.expected;
      const other = readWindowEnd(text(end === 'low' ? 'high' : 'low'));
      if (other.ok && read.value.compare(other.value) * (end === 'low' ? 1 : -1) >= 0)
        return en`The first must be smaller than the second.`;
      app.askReach({ ...asked(), low: text('low'), high: text('high'), [end]: typed });
      return null;
    },
    showAll: () => app.askReach({ ...asked(), low: '', high: '' }),
    tolerance,
    toleranceText: () => asked().tolerance,
    typeTolerance(typed) {
      const read = readTolerance(typed);
      if (!read.ok) return read.expected;
      app.askReach({ ...asked(), tolerance: typed });
      return null;
    },
    found,
    current: () => {
      const of = found();
      return of !== null && of.plan === plan() && fits(of.reach);
    },
    progress,
    cancel: () => {
      reaches.cancel();
      setProgress(null);
    },
    again: () => void again((n) => n + 1),
    materials,
    best: (material) => bests().get(material),
    add,
    findAdd: () => {
      if (add() !== null) return;
      const limited = materials().flatMap(({ id, plan: of }) => (of?.mix.limits ? [id] : []));
      reaches.add(limited, { found: setAdd, fault });
    },
  };
}

const sameWindow = (a: ReachWindow | null, b: ReachWindow | null): boolean =>
  a === null || b === null ? a === b : a.low.equals(b.low) && a.high.equals(b.high);
