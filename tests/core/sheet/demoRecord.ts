import { checkCharts } from '../../../core/src/checkCharts.ts';
import type { CatchRow, RatioCheckRow } from '../../../core/src/file/ratioCheckRow.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import type { Say } from '../../../core/src/format.ts';
import { checkFacts } from '../../../core/src/ratioCheck/checkFacts.ts';
import { type Judged, judge } from '../../../core/src/ratioCheck/judge.ts';
import { type CheckRecord, checkRecord } from '../../../core/src/sheet/checkRecord.ts';
import { recordChart } from '../../../core/src/sheet/checkRecordPage.ts';
import { type WorkingGroup, workingGroups } from '../../../core/src/sheet/workingPage.ts';
import type { TrendChart } from '../../../core/src/trendChart.ts';
import { demoFile, metric } from './demoSheet.ts';

interface Wanted {
  /** Of the three kept checks, from 0. */
  readonly index?: number;
  readonly say?: Say;
  readonly change?: (file: ShopFile, row: RatioCheckRow) => void;
}

export interface Recorded {
  readonly judged: Judged;
  readonly record: CheckRecord;
  readonly charts: readonly TrendChart[];
  readonly working: readonly WorkingGroup[];
}

/** The record of a kept check of the demo, as it is or as changed. */
export function recorded({ index = 0, say = metric, change }: Wanted): Recorded {
  const file = demoFile((all) => {
    const row = all.ratioChecks[index];
    if (row !== undefined) change?.(all, row);
  });
  const row = file.ratioChecks[index];
  if (row === undefined) throw new Error('no such check');
  const judged = judge(file, row, ['ratioChecks', index], say);
  if (!judged.ok) throw new Error(judged.findings.map(({ what }) => what).join(' '));
  const record = checkRecord(file, judged.value, judged.findings, { file: 'demo.ratiowright', say });
  return {
    judged: judged.value,
    record,
    charts: checkCharts(file, judged.value, say, recordChart(record)),
    working: workingGroups(checkFacts(judged.value, say), say),
  };
}

const g = (value: string) => ({ value, unit: 'g' });

/** Everything a catch may hold: gross, tare, volume of both sides; one of them left out. */
export function inFull(_: ShopFile, row: RatioCheckRow): void {
  const one = (A: string, B: string): CatchRow => ({
    A: { gross: g(A), tare: g('12.3'), volume: { value: '240', unit: 'cc' } },
    B: { gross: g(B), tare: g('11,9'), volume: { value: '83.8', unit: 'mL' } },
  });
  row.catches = [
    one('256.9', '113.8'),
    one('256.4', '113.5'),
    { ...one('250.0', '20.0'), leftOut: 'the cup of B tipped over' },
    one('256.7', '113.7'),
  ];
  row.by = 'A. Example';
}
