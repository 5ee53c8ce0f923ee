/** Enter goes to the next cell and Ctrl Enter to a new catch; arrows move as in a spreadsheet, within a text only from its ends. */
export function moveInTable(event: KeyboardEvent & { readonly currentTarget: HTMLTableElement }, add: () => void): void {
  const box = event.target;
  if (!(box instanceof HTMLInputElement) || event.altKey || event.metaKey) return;
  if (event.key === 'Enter' && event.ctrlKey) {
    event.preventDefault();
    add();
    return;
  }
  if (event.ctrlKey || event.shiftKey || box.dataset.column === undefined) return;
  const all = [...event.currentTarget.querySelectorAll<HTMLInputElement>('[data-column]')];
  const here = all.indexOf(box);
  const column = all.filter((one) => one.dataset.column === box.dataset.column);
  const inColumn = column.indexOf(box);
  const [atStart, atEnd] = [box.selectionEnd === 0, box.selectionStart === box.value.length];
  const whole = box.selectionStart === 0 && atEnd;
  const next: Readonly<Record<string, () => HTMLInputElement | undefined>> = {
    Enter: () => all[here + 1],
    ArrowDown: () => column[inColumn + 1],
    ArrowUp: () => column[inColumn - 1],
    ArrowRight: () => (atEnd || whole ? all[here + 1] : undefined),
    ArrowLeft: () => (atStart || whole ? all[here - 1] : undefined),
  };
  const to = next[event.key]?.();
  if (to !== undefined) {
    event.preventDefault();
    to.focus();
    to.select();
  } else if (event.key === 'Enter') {
    event.preventDefault();
    add();
  }
}
