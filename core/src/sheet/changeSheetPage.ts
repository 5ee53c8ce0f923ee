import { en } from '../en.ts';
import type { CatchTable } from './catchTable.ts';
import type { Cautions } from './cautions.ts';
import type { Care } from './chainCare.ts';
import type { ChangeRow } from './changeRows.ts';
import { type ChangeSheet, type Heading, NOT_TO_BE_BUILT } from './changeSheet.ts';
import type { ChangeGroup, Changes } from './changes.ts';
import { cautionColumns, stepColumns } from './columns.ts';
import { DRAWING_HEIGHT_mm } from './driveLayout.ts';
import { footBlock } from './foot.ts';
import { escaped, h2, list } from './html.ts';
import type { Paper } from './pageStyle.ts';
import type { RatioRow } from './ratioRows.ts';
import type { Steps } from './steps.ts';
import { em_mm, SLACK_AND_WEAR, typeSize_pt } from './typeSize.ts';
import { type SheetBody, wholePage } from './wholePage.ts';
import { type WorkingGroup, workingPages } from './workingPage.ts';

const BOX = '<span class="box"></span>';
const BLANK = '<td></td>';
/** Both wheels, the loop and the centres of a stage. */
const CELLS = 4;

export type { SheetBody };

/**
 * The content of the page without its frame, for a window that has its own.
 *
 * @param svg      the drive as `driveSvg` draws it; it is put in as it is
 * @param working  what follows on further pages; none where it is empty
 * @returns markup without style attributes; the user's own words are escaped
 */
export function changeSheetBody(sheet: ChangeSheet, svg: string, working: readonly WorkingGroup[] = []): SheetBody {
  const { heading, cautions, changes, ratio, running, steps, care, warnings, catches, signatures, footer } = sheet;
  const size_pt = typeSize_pt(sheet, pictureHeight_mm(svg));
  const blocks = [
    headingBlock(heading),
    ...stopBlock(heading.notToBeBuilt),
    cautionsBlock(cautions, size_pt),
    changesBlock(changes),
    `<section class="cols"><div>${ratioBlock(ratio.definition, ratio.rows)}${warningsBlock(warnings)}</div><div>${driveBlock(svg, care)}</div></section>`,
    ...(running.length === 0 ? [] : [runningBlock(running)]),
    stepsBlock(steps, size_pt),
    catchBlock(catches),
    `<section class="sign">${signatures.map((who) => `<div>${escaped(who)}</div>`).join('')}</section>`,
    footBlock(footer, heading.invented),
  ];
  const pages = working.length === 0 ? [] : [workingPages(en`Working: ${heading.title}`, working)];
  return { html: [`<div class="page">${blocks.join('\n')}</div>`, ...pages].join('\n'), size_pt };
}

/**
 * The change sheet as one page to print: complete HTML that needs nothing else, black on white.
 *
 * @param svg      the drive as `driveSvg` draws it; it is put in as it is
 * @param working  what follows on further pages; none where it is empty
 * @returns text of the page; the user's own words are escaped
 */
export function changeSheetPage(sheet: ChangeSheet, svg: string, paper: Paper, working: readonly WorkingGroup[] = []): string {
  const { html, size_pt } = changeSheetBody(sheet, svg, working);
  return wholePage(sheet.heading.title, { html, size_pt }, paper);
}

function headingBlock(heading: Heading): string {
  const { title, machine, shop, date, material, wanted, components, invented } = heading;
  // The shop's name comes last: it is what is cut where the line is full.
  const shopLine = [...(invented === null ? [] : [invented]), shop].map(escaped).join(' · ');
  return `<header class="top"><div><div class="title"><h1>${escaped(title)}</h1><span>${escaped(date)}</span></div><div class="two big">${escaped(machine)}</div><div class="one">${shopLine}</div></div>
<div class="right"><div class="two big">${escaped(material)}</div><div class="one big">${escaped(wanted)}</div><div class="two">${escaped(components)}</div></div></header>`;
}

const stopBlock = (reasons: readonly string[]): readonly string[] =>
  reasons.length === 0 ? [] : [`<section class="stop"><b>${escaped(NOT_TO_BE_BUILT)}</b>${list(reasons)}</section>`];

function cautionsBlock({ groups, own, deference }: Cautions, size_pt: number): string {
  const columns = groups.map(({ title, lines }) => `<div><b>${escaped(title)}</b>${list(lines)}</div>`);
  const { first, second } = cautionColumns(own, em_mm(size_pt));
  const material = own.length === 0 ? '' : `<b class="wide">${escaped(en`This material`)}</b>${list(first)}${list(second)}`;
  return `<section class="care">${columns.join('')}${material}<p class="wide">${escaped(deference)}</p></section>`;
}

function changesBlock({ summary, groups, stays }: Changes): string {
  const table = groups.length === 0 ? '' : `<table class="changes">${groups.map(groupRow).join('')}</table>`;
  return `<section>${h2(en`Take off → put on`, summary)}${table}${stays.map((line) => `<p class="stays">${escaped(line)}</p>`).join('')}</section>`;
}

function groupRow({ title, detail, rows }: ChangeGroup): string {
  const spare = `<td colspan="${CELLS - rows.length}"></td>`;
  const cells = rows.map(changeCell).join('') + (rows.length < CELLS ? spare : '');
  return `<tr><th scope="row"><b class="two">${escaped(title)}</b>${escaped(detail)}</th>${cells}</tr>`;
}

function changeCell({ place, detail, off, on, from, isNew }: ChangeRow): string {
  const figures = isNew ? `${escaped(off)} → <b>${escaped(on)}</b>` : escaped(on);
  const small = detail === '' ? '' : `<small>${escaped(detail)}</small>`;
  return `<td><small>${escaped(place)}</small><div class="figures">${figures}</div><div class="two">${escaped(from)}</div>${small}</td>`;
}

function driveBlock(svg: string, { definition, heads, rows }: Care): string {
  const cells = (words: readonly string[], tag: 'th' | 'td') =>
    `<tr>${words.map((word) => `<${tag}>${escaped(word)}</${tag}>`).join('')}</tr>`;
  const table =
    rows.length === 0
      ? ''
      : `${h2(SLACK_AND_WEAR, definition)}<table class="wear">${cells(heads, 'th')}${rows.map((row) => cells(row, 'td')).join('')}</table>`;
  return `${h2(en`Drive`)}${svg}${table}`;
}

const warningsBlock = (warnings: readonly string[]): string =>
  warnings.length === 0 ? '' : `<div class="warn">${h2(en`Warnings`)}${list(warnings)}</div>`;

function ratioBlock(definition: string, rows: readonly RatioRow[]): string {
  const items = rows.map(
    ({ what, figure, against }) =>
      `<div><dt>${escaped(what)}</dt><dd><b>${escaped(figure)}</b></dd><dd class="against">${escaped(against)}</dd></div>`,
  );
  return `${h2(en`Ratio after the change`)}<dl class="ratio">${items.join('')}</dl><p class="note">${escaped(definition)}</p>`;
}

function runningBlock(rows: readonly RatioRow[]): string {
  const cells = rows.map(
    ({ what, figure, against }) => `<dt>${escaped(what)}</dt><dd><b>${escaped(figure)}</b></dd><dd>${escaped(against)}</dd>`,
  );
  return `<section>${h2(en`Running it`)}<dl class="running">${cells.map((cell) => `<div>${cell}</div>`).join('')}</dl></section>`;
}

function stepsBlock({ lines: done, own }: Steps, size_pt: number): string {
  const { first, second } = stepColumns([...done, ...own], em_mm(size_pt));
  const column = (steps: readonly string[], from: number) =>
    `<ol start="${from}">${steps.map((step) => `<li>${BOX}${escaped(step)}</li>`).join('')}</ol>`;
  return `<section>${h2(en`Steps`)}<div class="steps">${column(first, 1)}${column(second, first.length + 1)}</div></section>`;
}

function catchBlock({ how, heads, limits, rows, rule, otherwise }: CatchTable): string {
  const head = [en`Catch`, heads.a, heads.b, heads.ratio, en`Limits`, en`Inside?`]
    .map((word) => `<th scope="col">${escaped(word)}</th>`)
    .join('');
  const verdict = limits === null ? BLANK : `<td>${BOX}${escaped(en`yes`)} ${BOX}${escaped(en`no`)}</td>`;
  const row = (name: string) =>
    `<tr class="blank"><td>${escaped(name)}</td>${BLANK}${BLANK}${BLANK}<td>${escaped(limits ?? en`not given`)}</td>${verdict}</tr>`;
  return `<section>${h2(en`Ratio check`, how)}<table class="catch"><tr>${head}</tr>${rows.map(row).join('')}</table><p class="rule"><b>${escaped(rule)}</b> ${escaped(otherwise)}</p></section>`;
}

/** The height that a picture states of itself; the whole box where it states none. */
function pictureHeight_mm(svg: string): number {
  return Number(/^<svg[^>]* height="([\d.]+)mm"/.exec(svg)?.[1] ?? DRAWING_HEIGHT_mm);
}
