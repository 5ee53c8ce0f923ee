// Golden pages of the invented example, tag by tag: what is printed and drawn, down to the last line. They catch changes; what is
// true of the figures is tested apart, against sources, in the tests beside this one.
import { describe, expect, test } from 'vitest';
import { optionFacts } from '../../../core/src/facts/index.ts';
import { quoteBody } from '../../../core/src/quote/quote.ts';
import { changeSheetBody } from '../../../core/src/sheet/changeSheetPage.ts';
import { checkRecordBody } from '../../../core/src/sheet/checkRecordPage.ts';
import { driveSvg } from '../../../core/src/sheet/driveSvg.ts';
import { type WorkingGroup, workingGroups } from '../../../core/src/sheet/workingPage.ts';
import { quoted } from '../quote/demoQuote.ts';
import { inFull, recorded } from './demoRecord.ts';
import { E12_ON_BENCH_1, inch, type Made, made, metric, pair, thirdStage, U40_ON_BENCH_2 } from './demoSheet.ts';

const golden = (name: string): string => `../../golden/${name}.txt`;
/** One tag a line, no-break spaces shown. */
const tagByTag = (html: string): string => `${html.replaceAll('><', '>\n<').replaceAll('\u00a0', '~')}\n`;
const page = ({ html, size_pt }: { readonly html: string; readonly size_pt: number }): string => `${size_pt} pt\n${tagByTag(html)}`;
const inches = { ...U40_ON_BENCH_2, say: inch };
/** Bench 2 with a third stage behind its second. */
const threeStages = { ...U40_ON_BENCH_2, teeth: [pair(22, 32), pair(26, 17), pair(20, 23)], change: thirdStage };

describe('change sheets', () => {
  const sheetOf = ({ sheet, drawing }: Made, say = metric) => page(changeSheetBody(sheet, driveSvg(drawing, say)));
  test('E12 on Bench 1', async () => {
    await expect(sheetOf(made(E12_ON_BENCH_1))).toMatchFileSnapshot(golden('change-sheet-page-bench-1-e12'));
  });
  test('U40 on Bench 2, in inches', async () => {
    await expect(sheetOf(made(inches), inch)).toMatchFileSnapshot(golden('change-sheet-page-bench-2-u40-inch'));
  });
  test('a drive of three stages', async () => {
    await expect(sheetOf(made(threeStages))).toMatchFileSnapshot(golden('change-sheet-page-three-stages'));
  });
});

describe('quote pages', () => {
  test('Bench 1, for a customer', async () => {
    const quote = quoted({ customer: 'An example', note: 'Two weeks', validUntil: '2026-12-24' });
    await expect(page(quoteBody(quote))).toMatchFileSnapshot(golden('quote-page-body-bench-1'));
  });
  test('Bench 2, in inches', async () => {
    await expect(page(quoteBody(quoted({ machine: 'bench-2', say: inch })))).toMatchFileSnapshot(golden('quote-page-body-bench-2-inch'));
  });
});

describe('records of ratio checks, with their charts', () => {
  const recordOf = (wanted: Parameters<typeof recorded>[0]) => {
    const { record, charts } = recorded(wanted);
    return page(
      checkRecordBody(
        record,
        charts.map(({ svg }) => svg),
      ),
    );
  };
  test('a pass', async () => {
    await expect(recordOf({ index: 0 })).toMatchFileSnapshot(golden('check-record-page-pass'));
  });
  test('the third check, not proven', async () => {
    await expect(recordOf({ index: 2, say: inch })).toMatchFileSnapshot(golden('check-record-page-not-proven'));
  });
  test('gross and tare, volumes, and a catch that is left out', async () => {
    await expect(recordOf({ change: inFull })).toMatchFileSnapshot(golden('check-record-page-gross-tare'));
  });
});

describe('workings: every formula with what was put in', () => {
  const lines = (groups: readonly WorkingGroup[]) => `${JSON.stringify(groups, null, 1).replaceAll('\u00a0', '~')}\n`;
  test('of an option on Bench 1', async () => {
    const { plan, option } = made(E12_ON_BENCH_1);
    await expect(lines(workingGroups(optionFacts(plan, option, metric), metric))).toMatchFileSnapshot(golden('workings-bench-1-e12'));
  });
  test('of an option on Bench 2, in inches', async () => {
    const { plan, option } = made(inches);
    await expect(lines(workingGroups(optionFacts(plan, option, inch), inch))).toMatchFileSnapshot(golden('workings-bench-2-u40-inch'));
  });
  test('of a ratio check', async () => {
    await expect(lines(recorded({ index: 1 }).working)).toMatchFileSnapshot(golden('workings-check'));
  });
});
