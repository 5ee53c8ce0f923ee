/** The one row that Tab reaches. */
const stop = (): HTMLElement | null => document.querySelector<HTMLElement>('.optiontable tr[tabindex="0"]');

export function focusList(): void {
  stop()?.focus();
}

/** Where an arrow key leads from one of so many rows; null for other keys. */
export function nextRow(key: string, from: number, rows: number): number | null {
  switch (key) {
    case 'ArrowDown':
      return Math.min(rows - 1, from + 1);
    case 'ArrowUp':
      return Math.max(0, from - 1);
    case 'Home':
      return 0;
    case 'End':
      return rows - 1;
    default:
      return null;
  }
}
