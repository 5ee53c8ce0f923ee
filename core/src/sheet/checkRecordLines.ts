import { en } from '../en.ts';
import { type CheckRecord, madeText } from './checkRecord.ts';
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
    en`date: ${madeText(record)}`,
    en`machine: ${record.machine}`,
    en`material: ${record.material}, ${record.wanted}`,
    en`shop: ${record.invented === null ? record.shop : `${record.shop} (${record.invented})`}`,
    record.proves,
    ...titled(en`Caught: ${record.how}`, [catches.heads.join(' | '), ...catches.rows.map((cells) => cells.join(' | '))]),
    ...titled(`${verdict.word.toUpperCase()}. ${verdict.reason}`, [verdict.agree, verdict.rule]),
    ...titled(en`What the catches say: ${record.definition}`, record.result.map(row)),
    ...titled(en`Check by check`, trends),
    ...titled(en`Causes looked for`, [...record.causes, ...(record.otherCauses === '' ? [] : [record.otherCauses])]),
    ...titled(en`What follows`, record.advice),
    ...titled(en`About the catches`, record.findings),
    ...(record.note === null ? [] : ['', en`note: ${record.note}`]),
  ];
}

const titled = (title: string, lines: readonly string[]): readonly string[] => (lines.length === 0 ? [] : ['', `= ${title}`, ...lines]);
