/** A number as spreadsheets write it, or a dash for none: harmless though it begins with a sign. */
const PLAIN_NUMBER = /^\s*[+-]?\d[\d.,]*(?:e[+-]?\d+)?%?$|^\s*-$/i;
/** Full-width signs begin a formula where such keyboards are used; what cannot be seen in front of one is dropped by some programs. */
const FORMULA = /^(?:[\t\r\n]|[\s\p{Cc}\p{Cf}]*[=+\-@＝＋－＠])/u;

const MONTH = '(?:jan|feb|mar|apr|may|jun|jul|aug|sep|sept|oct|nov|dec)[a-z]*';
const DAY_OR_MONTH = '(?:0?[1-9]|1[0-2])';
/** Texts that a spreadsheet reads as a number, a date or a time, and would write back as such. */
const MISREAD: readonly RegExp[] = [
  /^0\d+$/,
  /^\d{16,}$/,
  /^\d+[.,]\d*$/,
  /^\d+(?:[.,]\d*)?e[+-]?\d+$/i,
  /^\d+:\d+(?::\d+)?$/,
  /^\d{1,4}([/.-])\d{1,2}\1\d{1,4}$/,
  new RegExp(`^${DAY_OR_MONTH}[/-](?:\\d{1,2}|\\d{4})$|^(?:\\d{1,2}|\\d{4})[/-]${DAY_OR_MONTH}$`),
  new RegExp(`^(?:\\d{1,4}[ ./-]?)?${MONTH}[ ./-]?\\d{1,4}$|^\\d{1,4}[ ./-]?${MONTH}$`, 'i'),
];

/**
 * A text as it may stand in a table that a spreadsheet opens: a leading apostrophe keeps it text where it would be taken for a
 * formula, a date, a time or a number without its leading zeros.
 *
 * @param text  any text
 * @returns the text, or the text behind an apostrophe
 * @source our choice; which texts are misread: common practice, no source
 * @example spreadsheetText('=1+1')  // "'=1+1"
 */
export function spreadsheetText(text: string): string {
  const formula = FORMULA.test(text) && !PLAIN_NUMBER.test(text);
  return formula || text.startsWith("'") || MISREAD.some((misread) => misread.test(text)) ? `'${text}` : text;
}

/**
 * The text behind `spreadsheetText`: an apostrophe goes only where that put one.
 *
 * @param cell  a cell as read
 * @source inverse of `spreadsheetText`
 * @example textOfCell("'0055")  // '0055'
 */
export function textOfCell(cell: string): string {
  const text = cell.slice(1);
  return cell.startsWith("'") && spreadsheetText(text) === cell ? text : cell;
}
