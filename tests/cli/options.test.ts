import { describe, expect, test } from 'vitest';
import { ratiowright } from './run.ts';

interface Exact {
  readonly exact: string;
  readonly number: number;
}
interface OptionJson {
  readonly inside: boolean | null;
  readonly partsChanged: number;
  readonly minutes: number;
  readonly ratioAPerBByVolume: Exact;
  readonly ratioBPerAByVolume: Exact;
  readonly offRatio: Exact;
  readonly sense: string;
  readonly stages: readonly { readonly driverTeeth: number; readonly drivenTeeth: number; readonly centre_mm: number | null }[];
  readonly findings: readonly { readonly check: string; readonly severity: string; readonly source: string }[];
}
interface AnswerJson {
  readonly options: readonly OptionJson[];
  readonly blocked: { readonly options: readonly OptionJson[]; readonly fewestChecks: readonly (readonly string[])[] };
  readonly wanted: { readonly limits: object | null };
  readonly findings: readonly { readonly check: string }[];
}
const jsonOf = (...args: string[]): AnswerJson => JSON.parse(ratiowright('options', ...args, '--json').out) as AnswerJson;
const teeth = (option: OptionJson | undefined) => option?.stages.map((stage) => [stage.driverTeeth, stage.drivenTeeth]);

describe('options', () => {
  const demo = ['demo.ratiowright', '--machine', 'bench-1', '--material', 'e12'] as const;

  test('exit 0 and the closest option first where one is inside the limits', () => {
    const ran = ratiowright('options', ...demo);
    expect(ran.exit).toBe(0);
    expect(ran.err).toBe('');
    expect(ran.out).toMatch(/^1 +23 to 25 +50 : 23 +2\.1739 +38\.871 +0\.075 % B-lean +inside +2 +37 +64 +253\.97 mm/m);
    expect(ran.out).toContain('invented example');
  });
  test('exit 1 with the reasons where none is inside', () => {
    const ran = ratiowright('options', 'demo.ratiowright', '--machine', 'bench-1', '--material', 'l5');
    expect(ran.exit).toBe(1);
    expect(ran.out).toContain('Fewest checks in the way: slot.guard.');
    expect(ran.out).toContain('165.9 mm; the guard clears 162.0 mm');
  });
  test('exit 0 once the one missing wheel may be bought', () => {
    const ran = ratiowright('options', 'demo.ratiowright', '--machine', 'bench-1', '--material', 'l5', '--buy', '1', '--teeth', '13-40');
    expect(ran.exit).toBe(0);
    expect(ran.out).toMatch(/^1 +14 to 35 +5 : 1/m);
  });
  test('JSON carries every ratio as a reduced fraction and a number, with units in its keys', () => {
    const found = jsonOf(...demo);
    const first = found.options[0];
    expect(first?.ratioAPerBByVolume).toEqual({ exact: '50/23', number: 50 / 23 });
    expect(first?.ratioBPerAByVolume.exact).toBe('23/50');
    expect(first?.sense).toBe('B-lean');
    expect(first?.minutes).toBe(37);
    expect(first?.stages[0]?.centre_mm).toBeCloseTo(253.97, 2);
    expect(found.options).toHaveLength(200);
    expect(found.blocked.options.map(teeth)).toEqual([[[35, 38]]]);
    for (const option of [...found.options, ...found.blocked.options]) {
      for (const finding of option.findings) expect(finding.source.length).toBeGreaterThan(10);
    }
  });
  test('the same file gives the same bytes, run for run', () => {
    expect(ratiowright('options', ...demo, '--json').out).toBe(ratiowright('options', ...demo, '--json').out);
  });
  test('rows are cut where asked, and the text says how many are left out', () => {
    expect(jsonOf(...demo, '--rows', '3').options).toHaveLength(3);
    expect(ratiowright('options', ...demo, '--rows', '3').out).toContain('197 more rows are left out here');
  });
  test('decimal comma and inches on paper, never in JSON', () => {
    const ran = ratiowright('options', ...demo, '--comma', '--inch');
    expect(ran.out).toMatch(/2,1739 +38,871 +0,075 % B-lean/);
    expect(ran.out).toMatch(/9,9987 in/);
    expect(jsonOf(...demo, '--inch').options[0]?.stages[0]?.centre_mm).toBeCloseTo(253.97, 2);
  });
});

describe('published gear-train problem', () => {
  test('four gears, 12 to 60 teeth, 1/6.931: 304/2107 is the optimum and unique [Sandgren 1990 problem; optimum reported in many papers]', () => {
    const found = jsonOf('four-gear.ratiowright');
    const best = found.options.filter((option) => option.offRatio.exact === found.options[0]?.offRatio.exact);
    expect(best.map((option) => option.ratioBPerAByVolume.exact)).toEqual(['304/2107', '304/2107', '304/2107', '304/2107']);
    expect(best.map(teeth)).toEqual([
      [
        [16, 43],
        [19, 49],
      ],
      [
        [16, 49],
        [19, 43],
      ],
      [
        [19, 43],
        [16, 49],
      ],
      [
        [19, 49],
        [16, 43],
      ],
    ]);
    // (1/6.931 - 304/2107)^2, the form in which the papers print it
    const error = 1000 / 6931 - 304 / 2107;
    expect(error * error).toBeCloseTo(2.7008571488865e-12, 22);
  });
  test('no limits given: exit 1, no option is called inside, and a finding says so', () => {
    expect(ratiowright('options', 'four-gear.ratiowright').exit).toBe(1);
    const found = jsonOf('four-gear.ratiowright');
    expect(new Set(found.options.map((option) => option.inside))).toEqual(new Set([null]));
    expect(found.wanted.limits).toBeNull();
    expect(found.findings.map((finding) => finding.check)).toContain('material.limits');
  });
  test('three pairs: 5681/39375 [recomputed by brute force over all triple products, not published]', () => {
    const first = jsonOf('three-pair.ratiowright').options[0];
    expect(first?.ratioBPerAByVolume.exact).toBe('5681/39375');
    expect(1e6 * Math.abs(first?.offRatio.number ?? 1)).toBeCloseTo(0.27936508, 7);
  });
});
