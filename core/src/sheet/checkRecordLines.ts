import type { CheckRecord } from './checkRecord.ts';
import type { RatioRow } from './ratioRows.ts';

/**
 * What is printed, as lines of text in the order of the page; cautions, signatures and foot belong to paper only.
 *
 * @param trends  what the charts show, in words
 */
export function checkRecordLines(record: CheckRecord, trends: readonly string[]): readonly string[] {
  const { catches, verdict } = record;
  const row = ({ what, figure, against }: RatioRow) => [what, figure, against].filter((part) => part !== '').join(' | ');
  return [
    record.title,
    `date: ${record.date}${record.by === null ? '' : `, by ${record.by}`}`,
    `machine: ${record.machine}`,
    `material: ${record.material}, ${record.wanted}`,
    `shop: ${record.shop}${record.invented === null ? '' : ` (${record.invented})`}`,
    record.proves,
    ...titled(`Caught: ${record.how}`, [catches.heads.join(' | '), ...catches.rows.map((cells) => cells.join(' | '))]),
    ...titled(`${verdict.word.toUpperCase()}. ${verdict.reason}`, [verdict.agree, verdict.rule]),
    ...titled(`What the catches say: ${record.definition}`, record.result.map(row)),
    ...titled('Check by check', trends),
    ...titled('Causes looked for', [...record.causes, ...(record.otherCauses === '' ? [] : [record.otherCauses])]),
    ...titled('What follows', record.advice),
    ...titled('About the catches', record.findings),
    ...(record.note === null ? [] : ['', `note: ${record.note}`]),
  ];
}

const titled = (title: string, lines: readonly string[]): readonly string[] => (lines.length === 0 ? [] : ['', `= ${title}`, ...lines]);
