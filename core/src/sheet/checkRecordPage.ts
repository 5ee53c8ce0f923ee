import { en } from '../en.ts';
import { type CheckRecord, madeText } from './checkRecord.ts';
import { CHARTS_KEY, CHARTS_TITLE, isCrowded, recordSize_pt } from './checkRecordSize.ts';
import { footBlock } from './foot.ts';
import { escaped, h2, list } from './html.ts';
import type { RatioRow } from './ratioRows.ts';
import type { SheetBody } from './wholePage.ts';
import { type WorkingGroup, workingPages } from './workingPage.ts';

/** Size of each of the three trends that stand side by side. */
export const recordChart = (record: CheckRecord) => ({ width_mm: 60, height_mm: isCrowded(record) ? 20 : 31 });

/**
 * The content of the check record without its frame.
 *
 * @param charts   drawings of the size of `recordChart`, at most three; put in as they are
 * @param working  what follows on further pages; none where it is empty
 * @returns markup without style attributes; the user's own words are escaped
 */
export function checkRecordBody(record: CheckRecord, charts: readonly string[], working: readonly WorkingGroup[] = []): SheetBody {
  const blocks = [
    headingBlock(record),
    `<section class="care">${list(record.cautions)}</section>`,
    verdictBlock(record),
    `<section>${h2(en`Catches`, record.how)}${tableBlock(record)}</section>`,
    `<section>${h2(en`What the catches say`)}${rowsBlock(record.result)}<p class="note">${escaped(record.definition)}</p></section>`,
    ...(charts.length === 0 ? [] : [`<section>${h2(CHARTS_TITLE, CHARTS_KEY)}<div class="trends">${charts.join('')}</div></section>`]),
    ...listBlock(en`Causes looked for`, [...record.causes, ...(record.otherCauses === '' ? [] : [record.otherCauses])]),
    ...listBlock(en`What follows`, record.advice),
    ...listBlock(en`About the catches`, [...record.findings, ...(record.note === null ? [] : [en`Note: ${record.note}`])]),
    `<section class="sign">${record.signatures.map((who) => `<div>${escaped(who)}</div>`).join('')}</section>`,
    footBlock(record.footer, record.invented),
  ];
  const pages = working.length === 0 ? [] : [workingPages(en`Working: ${record.title}, ${record.date}`, working)];
  const size_pt = recordSize_pt(record, charts.length === 0 ? 0 : recordChart(record).height_mm);
  return { html: [`<div class="page record">${blocks.join('\n')}</div>`, ...pages].join('\n'), size_pt };
}

function headingBlock(record: CheckRecord): string {
  const { title, machine, shop, material, wanted, proves, invented } = record;
  const shopLine = [...(invented === null ? [] : [invented]), shop].map(escaped).join(' · ');
  return `<header class="top"><div><h1 class="two">${escaped(title)}</h1><div class="two">${escaped(madeText(record))}</div><div class="one">${shopLine}</div></div>
<div class="right"><div class="two big">${escaped(machine)}</div><div class="two big">${escaped(material)}</div><div>${escaped(wanted)}</div><div>${escaped(proves)}</div></div></header>`;
}

const verdictBlock = ({ verdict: { word, reason, agree, rule } }: CheckRecord): string =>
  `<section class="stop verdict"><b>${escaped(word)}</b><div>${escaped(reason)}<br><b>${escaped(agree)}</b><small>${escaped(rule)}</small></div></section>`;

const listBlock = (title: string, words: readonly string[]): readonly string[] =>
  words.length === 0 ? [] : [`<section class="warn">${h2(title)}${list(words)}</section>`];

const rowsBlock = (rows: readonly RatioRow[]): string =>
  `<dl class="reachrows">${rows.map(({ what, figure, against }) => `<div><dt>${escaped(what)}</dt><dd><b>${escaped(figure)}</b></dd><dd>${escaped(against)}</dd></div>`).join('')}</dl>`;

function tableBlock(record: CheckRecord): string {
  const { heads, rows } = record.catches;
  const head = heads.map((word) => `<th scope="col">${escaped(word)}</th>`).join('');
  const cell = (words: string, index: number, all: readonly string[]) => {
    const span = index === all.length - 1 ? heads.length - index : 1;
    return `<td${span > 1 ? ` colspan="${span}"` : ''}>${escaped(words)}</td>`;
  };
  return `<table class="offers${isCrowded(record) ? ' dense' : ''}"><tr>${head}</tr>${rows.map((cells) => `<tr>${cells.map(cell).join('')}</tr>`).join('')}</table>`;
}
