/**
 * Cells as a spreadsheet puts them on the clipboard: lines, with tabs between the cells.
 *
 * @param text  as pasted
 * @returns line by line; a heading, which has no figure in it, and empty lines at the end are left out
 * @source common practice of spreadsheet programs, no source
 * @example pastedCells('A\tB\n244.6\t101.9\n')  // [['244.6', '101.9']]
 */
export function pastedCells(text: string): readonly (readonly string[])[] {
  const lines = text.split(/\r\n|\r|\n/).map((line) => line.split('\t').map((cell) => cell.trim().replace(/^"(.*)"$/, '$1')));
  const last = lines.findLastIndex((cells) => cells.some((cell) => cell !== ''));
  const first = lines.length > 1 && lines[0]?.every((cell) => !/\d/.test(cell)) ? 1 : 0;
  return lines.slice(first, last + 1);
}
