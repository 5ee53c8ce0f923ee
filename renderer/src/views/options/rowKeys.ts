import type { PageKey } from '../../help/pageKeys.ts';

/** The one row that Tab reaches. */
const stop = (): HTMLElement | null => document.querySelector<HTMLElement>('.optiontable tr[tabindex="0"]');

export function focusList(): void {
  stop()?.focus();
}

/** Where an arrow key leads from one of so many rows; null for other keys. */
export function nextRow(key: string, from: number, rows: number): number | null {
  const to: Readonly<Record<string, number>> = {
    ArrowDown: Math.min(rows - 1, from + 1),
    ArrowUp: Math.max(0, from - 1),
    Home: 0,
    End: rows - 1,
  } satisfies Record<Exclude<PageKey<'list'>, 'Enter'>, number>;
  return to[key] ?? null;
}
