import { en } from '../en.ts';
import { LINE, sentenceColumns, textHeight_em } from './columns.ts';
import { footBlock } from './foot.ts';
import { escaped, h2, list } from './html.ts';
import { OFFER_COLUMNS_mm, SHEET_HEIGHT_mm, SHEET_WIDTH_mm } from './pageStyle.ts';
import type { RatioRow } from './ratioRows.ts';
import { em_mm } from './typeSize.ts';
import type { SheetBody } from './wholePage.ts';

/** A table of words with its heads. */
export interface QuoteTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** What is not in it; empty where all is. */
  readonly rest: string;
}

/** What a machine can mix, for a customer, every figure worded for reading. */
export interface QuotePage {
  readonly title: string;
  readonly number: string;
  readonly date: string;
  readonly valid: string;
  readonly machine: string;
  /** Empty where none is named; the note too. */
  readonly customer: string;
  readonly note: string;
  readonly shop: string;
  readonly window: string;
  /** What stands for what on the rule. */
  readonly legend: string;
  /** Empty for a real shop. */
  readonly invented: string;
  readonly cautions: readonly string[];
  readonly reach: readonly RatioRow[];
  readonly materials: QuoteTable;
  /** Of the words in the table. */
  readonly definitions: readonly string[];
  /** Empty where nothing is known of what might be bought. */
  readonly add: readonly string[];
  readonly assumptions: readonly string[];
  readonly signatures: readonly string[];
  readonly footer: string;
}

/** Above its cautions. */
export const NO_RELEASE = en`NOT A RELEASE FOR PRODUCTION`;
const LARGEST_pt = 10;
/** Below this it would not be read; what does not fit then goes on to a second page rather than be lost. */
const SMALLEST_pt = 5;
const STEP_pt = 0.1;
const GAP_mm = 1.2;
/** Bold letters take more room. */
const BOLD = 0.88;
/** Room for the words of a list behind their dot. */
const LIST_mm = SHEET_WIDTH_mm - 6;

/**
 * The content of the quote page without its frame.
 *
 * @param svg        the rule of the reach; put in as it is
 * @param height_mm  of that drawing
 * @returns markup without style attributes; the user's own words are escaped
 */
export function quotePageBody(page: QuotePage, svg: string, height_mm: number): SheetBody {
  const size_pt = typeSize_pt(page, height_mm);
  const blocks = [
    headingBlock(page),
    ...(page.note === '' ? [] : [`<p class="own">${escaped(page.note)}</p>`]),
    `<section class="stop"><b>${escaped(NO_RELEASE)}</b>${list(page.cautions)}</section>`,
    `<section>${h2(en`Reach`, page.window)}${svg}${noteBlock(page.legend)}${rowsBlock(page.reach)}</section>`,
    `<section>${h2(en`Your materials`)}${tableBlock(page.materials)}${page.definitions.map(noteBlock).join('')}</section>`,
    ...(page.add.length === 0 ? [] : [`<section>${h2(en`What to add`)}<div class="listed">${list(page.add)}</div></section>`]),
    `<section>${h2(en`What this rests on`)}${columnsBlock(page.assumptions, size_pt)}</section>`,
    `<section class="sign">${page.signatures.map((who) => `<div>${escaped(who)}</div>`).join('')}</section>`,
    footBlock(page.footer, page.invented === '' ? null : page.invented),
  ];
  return { html: `<div class="page quote">${blocks.join('\n')}</div>`, size_pt };
}

function headingBlock({ title, number, date, valid, customer, shop, invented }: QuotePage): string {
  const shopLine = [...(invented === '' ? [] : [invented]), shop].map(escaped).join(' · ');
  const whom = customer === '' ? '' : `<div class="big">${escaped(en`for ${customer}`)}</div>`;
  return `<header class="top"><div><h1 class="two">${escaped(title)}</h1><div class="one">${shopLine}</div></div><div class="right">${whom}<div>${escaped(number)}, ${escaped(date)}</div><div>${escaped(valid)}</div></div></header>`;
}

const noteBlock = (words: string): string => `<p class="note">${escaped(words)}</p>`;

function columnsBlock(words: readonly string[], size_pt: number): string {
  const { first, second } = sentenceColumns(words, em_mm(size_pt));
  return `<div class="listed halves">${list(first)}${list(second)}</div>`;
}

const rowsBlock = (rows: readonly RatioRow[]): string =>
  `<dl class="reachrows">${rows.map(({ what, figure, against }) => `<div><dt>${escaped(what)}</dt><dd><b>${escaped(figure)}</b></dd><dd>${escaped(against)}</dd></div>`).join('')}</dl>`;

function tableBlock({ heads, rows, rest }: QuoteTable): string {
  const head = heads.map((word) => `<th scope="col">${escaped(word)}</th>`).join('');
  const body = rows.map((cells) => `<tr>${cells.map((cell) => `<td>${escaped(cell)}</td>`).join('')}</tr>`).join('');
  return `<table class="offers"><tr>${head}</tr>${body}</table>${rest === '' ? '' : noteBlock(rest)}`;
}

/** The largest type at which the page stays one; heights are reckoned from the numbers of its style, with the widths of a wide font. */
function typeSize_pt(page: QuotePage, picture_mm: number): number {
  for (let size_pt = LARGEST_pt; size_pt > SMALLEST_pt; size_pt -= STEP_pt)
    if (height_mm(page, picture_mm, em_mm(size_pt)) <= SHEET_HEIGHT_mm) return Math.round(size_pt * 10) / 10;
  return SMALLEST_pt;
}

function height_mm(page: QuotePage, picture_mm: number, em: number): number {
  const h2_mm = 1.4 * em + 0.35;
  const listed_mm = (words: readonly string[], size: number) => textHeight_em(words, LIST_mm, size, em) * em;
  const whom_em = page.customer === '' ? 0 : textHeight_em([en`for ${page.customer}`], BOLD * 88, 1.3, em);
  const title_em = Math.min(2 * 1.75 * LINE, textHeight_em([page.title], BOLD * 90, 1.75, em));
  const heading_em = Math.max(title_em + LINE, whom_em + textHeight_em([`${page.number}, ${page.date}`, page.valid], 88, 1, em));
  const own_mm = page.note === '' ? [] : [textHeight_em([page.note], SHEET_WIDTH_mm, 1, em) * em];
  const row_em = ({ what, figure, against }: RatioRow) =>
    Math.max(textHeight_em([what], 45, 1, em), textHeight_em([figure], BOLD * 46, 1, em), textHeight_em([against], 86, 1, em));
  const rows_mm = page.reach.reduce((sum, row) => sum + (row_em(row) + 0.24) * em + 0.15, 0);
  const line_em = (cells: readonly string[]) =>
    Math.max(...cells.map((cell, index) => textHeight_em([cell], (OFFER_COLUMNS_mm[index] ?? 0) - 0.6 * em, 0.9, em)));
  const table_mm = [page.materials.heads, ...page.materials.rows].reduce((sum, cells) => sum + (line_em(cells) + 0.36) * em + 0.15, 0);
  const notes = [...(page.materials.rest === '' ? [] : [page.materials.rest]), ...page.definitions];
  const notes_mm = listed_mm(notes, 0.9) + 0.2 * notes.length * em;
  const legend_mm = listed_mm([page.legend], 0.9) + 0.2 * em;
  const blocks_mm = [
    heading_em * em,
    ...own_mm,
    1.95 * em + 0.6 * em + 2.4 + listed_mm(page.cautions, 1),
    h2_mm + picture_mm + legend_mm + rows_mm + 2,
    h2_mm + table_mm + notes_mm,
    ...(page.add.length === 0 ? [] : [h2_mm + listed_mm(page.add, 0.9)]),
    h2_mm + sentenceColumns(page.assumptions, em).height_em * em,
    7.7 + 1.3 * em,
    Math.max(6 + 1.1 * em, 2 * textHeight_em([page.footer], 80, 0.85, em) * em),
  ];
  return blocks_mm.reduce((sum, block) => sum + block + GAP_mm, -GAP_mm);
}
