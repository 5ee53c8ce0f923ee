import { en } from '../en.ts';
import { NO_RELEASE, type QuotePage } from './quotePage.ts';
import type { RatioRow } from './ratioRows.ts';

/** What is printed, as lines of text in the order of the page. */
export function quoteLines(page: QuotePage): readonly string[] {
  const row = ({ what, figure, against }: RatioRow) => `${what} | ${figure} | ${against}`.trimEnd();
  const titled = (title: string, lines: readonly string[]) => (lines.length === 0 ? [] : ['', `= ${title}`, ...lines]);
  return [
    page.title,
    `${page.number}, ${page.date}`,
    page.valid,
    en`machine: ${page.machine}`,
    en`shop: ${page.shop}`,
    ...(page.customer === '' ? [] : [en`customer: ${page.customer}`]),
    ...(page.invented === '' ? [] : [page.invented]),
    ...(page.note === '' ? [] : [page.note]),
    ...titled(NO_RELEASE, page.cautions),
    ...titled(en`Reach: ${page.window}`, [page.legend, ...page.reach.map(row)]),
    ...titled(en`Your materials`, [
      ...[page.materials.heads, ...page.materials.rows].map((cells) => cells.join(' | ')),
      ...(page.materials.rest === '' ? [] : [page.materials.rest]),
      ...page.definitions,
    ]),
    ...titled(en`What to add`, page.add),
    ...titled(en`What this rests on`, page.assumptions),
    ...titled(en`Signatures`, page.signatures),
    page.footer,
  ];
}
