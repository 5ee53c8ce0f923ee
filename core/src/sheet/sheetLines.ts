import { en } from '../en.ts';
import { type ChangeSheet, NOT_TO_BE_BUILT } from './changeSheet.ts';

/** What is printed, as lines of text in the order of the page: the copy of a sheet that is kept in the shop file. */
export function sheetLines({
  heading,
  cautions,
  changes,
  ratio,
  running,
  steps,
  care,
  warnings,
  catches,
  signatures,
  footer,
}: ChangeSheet): readonly string[] {
  return [
    en`title: ${heading.title}`,
    en`machine: ${heading.machine}`,
    en`shop: ${heading.shop}`,
    en`date: ${heading.date}`,
    en`material: ${heading.material}`,
    en`wanted: ${heading.wanted}`,
    en`components: ${heading.components}`,
    ...(heading.invented === null ? [] : [heading.invented]),
    ...titled(NOT_TO_BE_BUILT, heading.notToBeBuilt),
    ...cautions.groups.flatMap(({ title, lines: group }) => titled(title, group)),
    ...titled(en`This material`, cautions.own),
    cautions.deference,
    ...titled(en`Take off, put on: ${changes.summary}`, [
      ...changes.groups.flatMap(({ title, detail, rows }) => [
        `${title} | ${detail}`,
        ...rows.map(({ place, off, on, from, detail: fits, isNew }) =>
          `  ${place} | ${off} | ${on}${isNew ? ' *' : ''} | ${from} | ${fits}`.trimEnd(),
        ),
      ]),
      ...changes.stays,
    ]),
    ...titled(
      en`Ratio after the change: ${ratio.definition}`,
      ratio.rows.map(({ what, figure, against }) => `${what} | ${figure} | ${against}`),
    ),
    ...titled(
      en`Running it`,
      running.map(({ what, figure, against }) => `${what} | ${figure} | ${against}`),
    ),
    ...titled(
      en`Slack and wear: ${care.definition}`,
      [care.heads, ...care.rows].map((cells) => cells.join(' | ')),
    ),
    ...titled(en`Warnings`, warnings),
    ...titled(
      en`Steps`,
      [...steps.lines, ...steps.own].map((step) => `[ ] ${step}`),
    ),
    ...titled(en`Ratio check: ${catches.how}`, [
      [catches.heads.a, catches.heads.b, catches.heads.ratio, en`limits ${catches.limits ?? en`not given`}`].join(' | '),
      en`rows: ${catches.rows.join(', ')}`,
      `${catches.rule} ${catches.otherwise}`,
    ]),
    ...titled(en`Signatures`, signatures),
    footer,
  ];
}

const titled = (title: string, lines: readonly string[]): readonly string[] => (lines.length === 0 ? [] : ['', `= ${title}`, ...lines]);
