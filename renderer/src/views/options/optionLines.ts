import { createMemo, createSignal, onCleanup } from 'solid-js';
import type { Mounted } from '../../../../core/src/index.ts';
import { fittedMount, type ListedOption, ORDERS, type Order, orderedOptions, sameMount } from '../../../../core/src/optionList.ts';
import type { App } from '../../state/app.ts';
import type { Answered } from '../../state/solution.ts';

/** A row of the list: what is fitted, the best for a number of parts, or an option in its order. */
export interface Line {
  readonly key: string;
  readonly group: 'fitted' | 'best' | 'ranked';
  readonly mounted: Mounted;
  readonly rank: number | null;
  /** Parts changed by the best of just so many; null in the other groups. */
  readonly changed: number | null;
  readonly noGain: boolean;
  readonly blocked: boolean;
  /** Whether it stands folded away under another one. */
  readonly dominated: boolean;
  /** What this one dominates, folded away under it. */
  readonly under: readonly Line[];
}

export interface OptionLines {
  /** In the order in which they stand on the page. */
  readonly lines: () => readonly Line[];
  /** Options that were found but are not shown yet. */
  readonly left: () => number;
  /** Those that can be built, shown or not. */
  readonly total: () => number;
  readonly showAll: () => void;
  readonly order: () => Order;
  readonly orderBy: (order: Order) => void;
  readonly nextOrder: () => void;
  readonly isUnfolded: (line: Line) => boolean;
  readonly fold: (line: Line, away: boolean) => void;
  readonly blockedCount: () => number;
  readonly hidesBlocked: () => boolean;
  readonly hideBlocked: (hide: boolean) => void;
  readonly selected: () => Line | null;
  readonly pick: (line: Line) => void;
}

/** Rows shown before somebody asks for all; the rest then comes a few at a time, so that the window never waits. */
const FIRST = 25;
const STEP = 15;

/** Kept while the window is open, whichever page is shown. */
const [order, orderBy] = createSignal<Order>('closest');

export function createOptionLines(app: App): OptionLines {
  const { solution } = app;
  const [hides, setHides] = createSignal(false);
  const [picked, setPicked] = createSignal('');
  const every = createMemo(() => {
    const of = solution.answered();
    // Every answer and every order begins with a short list again, all of it folded.
    const [buildable, show] = createSignal(FIRST);
    const [unfolded, unfold] = createSignal<ReadonlySet<string>>(new Set());
    return {
      head: of === null ? [] : headLines(of, order()),
      ranked: of === null ? [] : rankedLines(of, order()),
      buildable,
      show,
      unfolded,
      unfold,
    };
  });
  const wanted = createMemo(() => {
    const { ranked, unfolded } = every();
    const listed = ranked.flatMap((line) => (unfolded().has(line.key) ? [line, ...line.under] : [line]));
    return listed.filter((line) => !(hides() && line.blocked));
  });
  const shown = createMemo(() => wanted().slice(0, endOf(wanted(), every().buildable())));
  const showMore = () => {
    if (shown().length === wanted().length) return;
    every().show((count) => count + STEP);
    timer = setTimeout(showMore);
  };
  let timer: ReturnType<typeof setTimeout> | undefined;
  onCleanup(() => clearTimeout(timer));
  const lines = createMemo((): readonly Line[] => [...every().head, ...shown()]);
  const selected = createMemo(() => {
    const mount = solution.chosenMount();
    if (mount === null) return null;
    const same = [...shown(), ...every().head].filter((line) => sameMount(line.mounted, mount));
    return same.find((line) => line.key === picked()) ?? same[0] ?? null;
  });
  return {
    lines,
    left: () => wanted().length - shown().length,
    total: () => wanted().filter((line) => !line.blocked).length,
    showAll: showMore,
    order,
    orderBy,
    nextOrder: () => orderBy((now) => ORDERS[(ORDERS.indexOf(now) + 1) % ORDERS.length] ?? 'closest'),
    isUnfolded: (line) => every().unfolded().has(line.key),
    fold(line, away) {
      every().unfold((before) => new Set(away ? [...before].filter((key) => key !== line.key) : [...before, line.key]));
      // What stands below must not fall off the end of a short list.
      if (!away) showMore();
    },
    blockedCount: () => every().ranked.filter((line) => line.blocked).length,
    hidesBlocked: hides,
    hideBlocked: (hide) => void setHides(hide),
    selected,
    pick(line) {
      setPicked(line.key);
      solution.choose(line.mounted);
    },
  };
}

const PLAIN = { rank: null, changed: null, noGain: false, blocked: false, dominated: false, under: [] } as const;

/** What is fitted, and beside the closest the best for each number of parts. */
function headLines({ plan, ranked }: Answered, by: Order): readonly Line[] {
  const best = by !== 'closest' || ranked.best.length < 2 ? [] : ranked.best.filter(({ changed }) => changed > 0);
  return [
    { ...PLAIN, key: 'fitted', group: 'fitted', mounted: fittedMount(plan) },
    ...best.map(
      ({ changed, option, noGain }): Line => ({ ...PLAIN, key: `best-${changed}`, group: 'best', mounted: option, changed, noGain }),
    ),
  ];
}

function rankedLines({ plan, ranked }: Answered, by: Order): readonly Line[] {
  const lineOf = ({ dominated, ...listed }: ListedOption, key: string): Line => ({
    ...PLAIN,
    ...listed,
    key,
    group: 'ranked',
    under: dominated.map((under, index) => ({ ...lineOf(under, `${key}-${index}`), dominated: true })),
  });
  return orderedOptions(plan, ranked, by).map((listed, index) => lineOf(listed, `line-${index}`));
}

/** Where so many buildable lines end; blocked ones do not count. */
function endOf(lines: readonly Line[], most: number): number {
  let buildable = 0;
  const end = lines.findIndex((line) => {
    if (!line.blocked) buildable += 1;
    return buildable > most;
  });
  return end < 0 ? lines.length : end;
}
