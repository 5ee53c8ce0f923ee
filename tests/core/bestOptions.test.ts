import { describe, expect, test } from 'vitest';
import { search } from '../../core/src/answer.ts';
import { bestOptionLines, bestOptionsJson, type Target } from '../../core/src/bestOptions.ts';
import { bestOptionsCsv, bestOptionsTabbed } from '../../core/src/bestOptionsCsv.ts';
import { readMaterials } from '../../core/src/file/materialCsv/index.ts';
import { firstOption } from '../../core/src/firstOption.ts';
import { type Plan, resolve, type Say, type ShopFile } from '../../core/src/index.ts';
import { demo } from '../file/demoPlan.ts';
import { opened } from '../file/shop.ts';

const say: Say = { decimal: '.', system: 'metric' };
const file: ShopFile = opened(JSON.stringify(demo));
const planOf = (of: ShopFile, machine: string, material: string): Plan => {
  const plan = resolve(of, { machine, material }, say);
  if (!plan.ok) throw new Error(`${material} does not resolve`);
  return plan.value;
};
const targetsOf = (of: ShopFile, machine: string): readonly Target[] =>
  of.materials.map(({ id, name }) => {
    const plan = planOf(of, machine, id);
    return { id, name, plan, best: firstOption(plan) };
  });
const bench1 = targetsOf(file, 'bench-1');
const lines = (csv: string) => csv.replace('\uFEFF', '').trimEnd().split('\r\n');

describe('the best option of every material', () => {
  test('E12, U40 and L5 on Bench 1 [the invented example, worked out apart from the program]', () => {
    expect(bestOptionLines(bench1, say).map((cells) => cells.join(' | ').replaceAll('\u00A0', ' '))).toEqual([
      ' | wanted by volume | limits | best option |  | off-ratio | limits | teeth | parts | flow of A and B',
      'E12 casting epoxy | 2.1723 : 1 | −2.00 to +2.00 % | 50 : 23 | 2.1739 : 1 | 0.075 % B-lean | inside | 23 to 25 | 2 | 315.4 to 1576.8 cc/min',
      'U40 elastomer | 2.8532 : 1 | −2.86 to +2.86 % | 20 : 7 | 2.8571 : 1 | 0.139 % B-lean | inside | 21 to 30 | 0 | 291.6 to 1458.0 cc/min',
      'L5 laminating resin | 5.0000 : 1 | −1.50 to +1.50 % | 14 : 3 | 4.6667 : 1 | 7.143 % B-rich | outside | 15 to 35 | 2 | 272.0 to 1311.4 cc/min',
    ]);
  });
  test.each(['bench-1', 'bench-2'])('is the first of the whole search on %s, also where the limits lie to one side', (machine) => {
    const text = [
      'name\tratio\tbasis\tlimits',
      ...['1:1', '3:2', '100:46', '2.2:1', '100:38.5', '3.1:1', '4.4:1', '6:1'].flatMap((ratio) =>
        ['±1', '-0.01 to 3', '-4 to 0.02', ''].map((limits) => `${ratio} ${limits}\t${ratio}\tvolume\t${limits}`),
      ),
    ].join('\n');
    const list = readMaterials(text, { say, limitsMean: '% of B per A', taken: [] });
    expect(list.faults).toEqual([]);
    const many = { ...file, materials: list.materials.map(({ material }) => material) };
    const targets = targetsOf(many, machine);
    expect(targets).toHaveLength(32);
    for (const target of targets)
      if (target.plan !== null) expect([target.name, target.best]).toEqual([target.name, search(target.plan, {}).options[0]]);
  });
});

describe('as CSV', () => {
  test('numbers are numbers, the exact ratio cannot be taken for a time, a plus is B-rich', () => {
    const [head, e12, , l5] = lines(bestOptionsCsv(bench1, say));
    expect(head).toBe(
      'material,ratio wanted,basis,A per B by volume wanted,limit low %,limit high %,best option exact,A per B by volume made,off-ratio %,sense,inside,teeth driver to driven,s1 driver teeth,s1 driven teeth,parts changed,to buy,pumps,least flow cc/min,most flow cc/min,missing',
    );
    expect(e12).toBe(
      'E12 casting epoxy,100 : 38.9 by weight,weight,2.172289,-2.0000,2.0000,50A : 23B,2.173913,-0.0747,B-lean,inside,23 to 25,23,25,2,0,"PA12, PB6",315.4,1576.8,',
    );
    expect(l5).toContain(',14A : 3B,4.666667,7.1429,B-rich,outside,15 to 35,');
  });
  test('with several stages driver and driven of each are numbers in columns of their own; no cell is one that a spreadsheet takes for a date or a time [spreadsheet practice]', () => {
    const targets = targetsOf(file, 'bench-2');
    const [head = [], ...rows] = bestOptionsTabbed(targets, say)
      .split('\r\n')
      .map((line) => line.split('\t'));
    const stages = targets[0]?.plan?.stages ?? [];
    expect(stages.length).toBeGreaterThan(1);
    rows.forEach((cells, row) => {
      expect(cells).toHaveLength(head.length);
      stages.forEach(({ name }, stage) => {
        const target = targets[row];
        const teeth = target?.plan == null ? undefined : target.best?.teeth[stage];
        expect([cells[head.indexOf(`${name} driver teeth`)], cells[head.indexOf(`${name} driven teeth`)]]).toEqual([
          String(teeth?.driver),
          String(teeth?.driven),
        ]);
      });
      for (const cell of cells) expect(cell).not.toMatch(/^\d+ ?[/:] ?\d+$/);
    });
  });
  test('a decimal comma and semicolons, inch units, and tabs for the clipboard', () => {
    const inch: Say = { decimal: ',', system: 'inch' };
    const [head, e12] = lines(bestOptionsCsv(bench1, inch));
    expect(head).toContain(';least flow in³/min;');
    // 18 rev/min × (12 + 6 × 23/25) cc = 315.36 cc/min over 16.387064 cc to the cubic inch [exact inch]
    expect(e12).toContain(';2,173913;-0,0747;B-lean;inside;23 to 25;23;25;2;0;PA12, PB6;19,24;');
    expect(lines(bestOptionsTabbed(bench1, say))[1]?.split('\t')).toHaveLength(20);
  });
  test('what nothing can be built for, what has no limits, what is not complete, and a name that is a formula', () => {
    const [e12] = bench1;
    if (e12?.plan == null) throw new Error('the demo has no E12');
    const unlimited: Plan = { ...e12.plan, mix: { ...e12.plan.mix, limits: null } };
    const targets: readonly Target[] = [
      { id: 'a', name: '=E12', plan: e12.plan, best: null },
      { ...e12, plan: unlimited },
      { id: 'c', name: 'W', plan: null, missing: ['The density of A is missing.', 'The density of B is missing.'] },
    ];
    const [head, ...rows] = lines(bestOptionsTabbed(targets, say)).map((line) => line.split('\t'));
    expect(rows.map((cells) => cells.length)).toEqual([20, 20, 20]);
    expect(rows.map((cells) => cells[head?.indexOf('inside') ?? 0])).toEqual(['', 'no limits', '']);
    expect([rows[0]?.[0], rows[0]?.at(-1)]).toEqual(["'=E12", 'nothing can be built']);
    expect(rows[2]?.at(-1)).toBe('The density of A is missing. The density of B is missing.');
    expect(
      bestOptionLines(targets, say)
        .slice(1)
        .map((cells) => [cells.length, cells[1], cells[3]]),
    ).toEqual([
      [10, '2.1723 : 1', 'nothing can be built'],
      [10, '2.1723 : 1', '50 : 23'],
      [10, 'not complete', ''],
    ]);
  });
});

test('as JSON: every ratio exact and as a number, what is not known null', () => {
  const [e12] = bestOptionsJson([...bench1.slice(0, 1), { id: 'c', name: 'W', plan: null, missing: ['x'] }], say);
  expect(e12).toMatchObject({
    material: { id: 'e12', name: 'E12 casting epoxy' },
    missing: [],
    wanted: { basis: 'weight', limits: { lowOffRatio_percent: { exact: '-2/1' }, highOffRatio_percent: { exact: '2/1' } } },
    best: {
      inside: true,
      ratioAPerBByVolume: { exact: '50/23' },
      sense: 'B-lean',
      partsChanged: 2,
      purchases: 0,
      stages: [{ stage: 's1', driverTeeth: 23, drivenTeeth: 25 }],
      flow: { to: { unit: 'cc/min' } },
    },
  });
  expect(bestOptionsJson([{ id: 'c', name: 'W', plan: null, missing: ['x'] }], say)).toEqual([
    { material: { id: 'c', name: 'W' }, missing: ['x'], wanted: null, best: null },
  ]);
});
