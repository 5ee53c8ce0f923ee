import { describe, expect, test } from 'vitest';
import { optionFacts } from '../../../core/src/facts/index.ts';
import { changeSheetPage } from '../../../core/src/sheet/changeSheetPage.ts';
import { driveSvg } from '../../../core/src/sheet/driveSvg.ts';
import { workingGroups, workingPages } from '../../../core/src/sheet/workingPage.ts';
import { E12_ON_BENCH_1, made, metric } from './demoSheet.ts';

const { plan, option, sheet, drawing } = made(E12_ON_BENCH_1);
const groups = workingGroups(optionFacts(plan, option, metric), metric);
const all = groups.flatMap(({ workings }) => workings);
const named = (what: string) => all.find((one) => one.what === what);

describe('workings on paper (invented example)', () => {
  test('each stands once, numbered in order, and refers only to what stands before it', () => {
    expect(all.map(({ number }) => number)).toEqual(all.map((_, index) => index + 1));
    for (const { number, put } of all) {
      for (const reference of put.flatMap((line) => [...(/ \((\d+)\)$/.exec(line)?.slice(1) ?? [])]))
        expect(Number(reference)).toBeLessThan(number);
    }
  });

  test('flow of A: 12 cc/rev at 57.15 rpm are 685.8 cc/min [arithmetic]', () => {
    const flows = all.filter(({ what }) => what === 'flow of A');
    expect(flows.find(({ result }) => result.includes('685.8'))?.lines).toEqual(['Q = D · n', expect.stringContaining('0.9525')]);
  });

  test('torque of pump A: 28 bar and 12 cc at 0.88 take 6.08 N m [hydraulics textbooks: T = Δp D / (2π η), from memory]', () => {
    expect(named('torque of pump A')?.result).toContain('6.0768');
  });

  test('words of the shop are escaped, and the pages follow the sheet', () => {
    const page = workingPages('<b>', groups);
    expect(page).toContain('&lt;b&gt;');
    const svg = driveSvg(drawing, metric);
    expect(changeSheetPage(sheet, svg, 'A4', groups)).toContain('class="work"');
    expect(changeSheetPage(sheet, svg, 'A4')).not.toContain('class="work"');
  });
});
