import { createMemo, createSignal, onCleanup } from 'solid-js';
import type { Mounted } from '../../../../core/src/index.ts';
import { fittedMount, listedOptions, sameMount } from '../../../../core/src/optionList.ts';
import type { App } from '../../state/app.ts';

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
}

export interface OptionLines {
  /** In the order in which they stand on the page. */
  readonly lines: () => readonly Line[];
  /** Options that were found but are not shown yet. */
  readonly left: () => number;
  readonly showAll: () => void;
  readonly blockedCount: () => number;
  readonly hidesBlocked: () => boolean;
  readonly hideBlocked: (hide: boolean) => void;
  readonly selected: () => Line | null;
  readonly pick: (line: Line) => void;
}

/** Rows shown before somebody asks for all; the rest then comes a few at a time, so that the window never waits. */
const FIRST = 25;
const STEP = 15;

export function createOptionLines(app: App): OptionLines {
  const { solution } = app;
  const [hides, setHides] = createSignal(false);
  const [picked, setPicked] = createSignal('');
  const every = createMemo(() => {
    const of = solution.answered();
    // Every answer begins with a short list again.
    const [buildable, show] = createSignal(FIRST);
    if (of === null) return { head: [], ranked: [], buildable, show };
    const { plan, ranked } = of;
    const plain = { rank: null, changed: null, noGain: false, blocked: false } as const;
    const best = ranked.best.length < 2 ? [] : ranked.best.filter(({ changed }) => changed > 0);
    return {
      buildable,
      show,
      head: [
        { ...plain, key: 'fitted', group: 'fitted', mounted: fittedMount(plan) },
        ...best.map(
          ({ changed, option, noGain }): Line => ({ ...plain, key: `best-${changed}`, group: 'best', mounted: option, changed, noGain }),
        ),
      ] satisfies readonly Line[],
      ranked: listedOptions(plan, ranked).map(
        ({ mounted, rank }, index): Line => ({ ...plain, key: `line-${index}`, group: 'ranked', mounted, rank, blocked: rank === null }),
      ),
    };
  });
  const wanted = createMemo(() => every().ranked.filter((line) => !(hides() && line.blocked)));
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
    showAll: showMore,
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

/** Where so many buildable lines end; blocked ones do not count. */
function endOf(lines: readonly Line[], most: number): number {
  let buildable = 0;
  const end = lines.findIndex((line) => {
    if (!line.blocked) buildable += 1;
    return buildable > most;
  });
  return end < 0 ? lines.length : end;
}
