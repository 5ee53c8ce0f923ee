import { describe, expect, test } from 'vitest';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { bench, E12_ON_BENCH_1, inch, made, metric, pair, thirdStage, U40_ON_BENCH_2 } from './demoSheet.ts';
import { goldenText } from './goldenText.ts';

const golden = (name: string): string => `../../golden/change-sheet-${name}.txt`;

// Golden texts catch changes; what is true of them is tested apart.
describe('golden text of the sheet (invented example)', () => {
  test('E12 on Bench 1, two sprockets', async () => {
    await expect(goldenText(made(E12_ON_BENCH_1).sheet)).toMatchFileSnapshot(golden('bench-1-e12'));
  });

  test('U40 on Bench 2, four sprockets on two stages, in inches with a decimal comma', async () => {
    await expect(goldenText(made({ ...U40_ON_BENCH_2, say: inch }).sheet)).toMatchFileSnapshot(golden('bench-2-u40-inch'));
  });

  test('E12 on Bench 1, a pair that the guard stops', async () => {
    await expect(goldenText(made({ ...E12_ON_BENCH_1, teeth: [pair(35, 38)] }).sheet)).toMatchFileSnapshot(golden('blocked'));
  });
});

describe('E12 on Bench 1 [invented example, worked out apart from this program]', () => {
  const { sheet } = made(E12_ON_BENCH_1);
  const figures = Object.fromEntries(sheet.ratio.rows.map(({ what, figure, against }) => [what, `${figure}; ${against}`]));

  test('exact ratio, wanted ratio and off-ratio', () => {
    expect(figures['By volume, exact']).toBe('50 : 23 = 2.1739 : 1; wanted 2.1723 : 1');
    expect(figures['Off-ratio']).toMatch(/^0\.07\u00A0% B-lean; inside limits/);
    expect(figures['Before the change']).toMatch(/^20 : 7 = 2\.8571 : 1; 23\.97\u00A0% B-lean/);
  });

  test('as the data sheet counts: 38.87 of B to 100 of A, limits 2 % either side of 38.9', () => {
    expect(figures['By weight']).toBe('100 : 38.87; wanted 100 : 38.9 by weight, limits 38.12 to 39.68');
  });

  test('the ratio of the pumps times that of the sprockets is the ratio made [arithmetic: 2 x 25/23 = 50/23]', () => {
    expect(figures['Pumps × sprockets']).toMatch(/^\(2 : 1\) × \(25 : 23\)/);
  });

  test('chain and centre: 66 to 64 pitches, 254.0 mm in a window of 250 to 263 mm', () => {
    const [group] = sheet.changes.groups;
    expect(group?.rows.map(({ off, on, from }) => [off, on, from])).toEqual([
      ['21', '23', '0823-25, rack R1-08'],
      ['30', '25', '0825-25, rack R1-10'],
      ['66', '64', 'take out 2'],
      ['256.5', '254.0', '250.0 to 263.0'],
    ]);
  });

  test('37 minutes', () => {
    expect(sheet.changes.summary).toBe('2 parts, about 37\u00A0min');
  });

  test('catch: A 275.5 g, B 107.1 g, limits 105.0 to 109.3 g', () => {
    expect(sheet.catches.rule).toBe('If A is 275.5\u00A0g, B must be 105.0 to 109.3\u00A0g');
    expect(sheet.catches.heads).toEqual({ a: 'A, g (about 275.5)', b: 'B, g (about 107.1)', ratio: '100 × B / A' });
  });

  test('20 turns at 63.5 % of 90 rpm take 21.0 s [arithmetic]', () => {
    expect(sheet.catches.how).toContain('21.0\u00A0s at dial 63.5\u00A0%');
  });

  test('a dial in steps of 0.02 %: both lines name the setting itself, 1000 of 1576.8 cc/min [arithmetic: 63.42 %]', () => {
    const finer = (file: ShopFile) => {
      bench(file, 'bench-1').motor.dialStep = { value: '0.02', unit: '%' };
    };
    const { running, catches } = made({ ...E12_ON_BENCH_1, change: finer }).sheet;
    expect(running.find(({ what }) => what === 'Dial')?.figure).toBe('63.42\u00A0%');
    expect(catches.how).toContain('at dial 63.42\u00A0%');
  });

  test('slack 4 to 6 % of the span, 20 pitches of half an inch at most 1.5 % longer [machinerys-handbook, from memory; chain-maker-answers]', () => {
    // A span of 253.94 mm: the centres by the cosine of the angle that half the difference of the pitch diameters makes.
    expect(sheet.care.rows).toEqual([['s1, 08B', '10.2 to 15.2 of 253.9\u00A0mm', '257.8\u00A0mm, +1.5\u00A0%']]);
  });
});

describe('where a wheel comes from', () => {
  const from = (wanted: Parameters<typeof made>[0]) => made(wanted).sheet.changes.groups.flatMap(({ rows }) => rows.map((row) => row.from));

  test('a wheel that comes off another slot in the same change is named by that slot', () => {
    const swapped = { selection: U40_ON_BENCH_2.selection, teeth: [pair(20, 24), pair(23, 20)] };
    expect(from(swapped).slice(0, 2)).toEqual(['from s2 driven', 'from s2 driver']);
  });

  test('a wheel that is not in stock is to be bought where it may be, and otherwise none is left', () => {
    const selection = { machine: 'bench-1', material: 'l5' };
    expect(from({ selection: { ...selection, purchases: 1, teeth: { from: 13, to: 40 } }, teeth: [pair(14, 35)] })[0]).toBe('to be bought');
    expect(from({ selection, teeth: [pair(14, 35)] })[0]).toBe('none left');
  });

  test('without a part number the rack place is enough, and without both the word rack', () => {
    const bare = (keep: 'place' | 'nothing') =>
      from({
        ...E12_ON_BENCH_1,
        change: (file) => {
          for (const piece of file.racks.flatMap((rack) => rack.pieces)) {
            delete piece.part;
            if (keep === 'nothing') delete piece.place;
          }
        },
      })[0];
    expect([bare('place'), bare('nothing')]).toEqual(['rack R1-08', 'rack']);
  });
});

describe('what stands against a change', () => {
  test('a finding that blocks marks the sheet as not to be built, with its sentence', () => {
    const { sheet } = made({ ...E12_ON_BENCH_1, teeth: [pair(35, 38)] });
    expect(sheet.heading.notToBeBuilt).toHaveLength(1);
    expect(sheet.heading.notToBeBuilt[0]).toContain('165.9\u00A0mm; the guard clears 162.0\u00A0mm');
    expect(made(E12_ON_BENCH_1).sheet.heading.notToBeBuilt).toEqual([]);
  });

  test('what warns stands under warnings; what merely notes does not', () => {
    const { sheet, option } = made({ ...E12_ON_BENCH_1, teeth: [pair(16, 18)] });
    expect(option.findings.some(({ severity }) => severity === 'notes')).toBe(true);
    expect(sheet.warnings.filter((line) => line.includes('16 teeth'))).toHaveLength(1);
    expect(sheet.warnings.join()).not.toContain('share the factor');
  });

  test('a ratio outside the limits is called that, and off-ratio says by how much', () => {
    expect(made({ ...E12_ON_BENCH_1, teeth: [pair(21, 30)] }).sheet.warnings[0]).toContain(
      'outside the limits of the material, 23.97\u00A0% B-lean',
    );
    expect(made(E12_ON_BENCH_1).sheet.warnings.join()).not.toContain('outside the limits');
  });

  test('checks that could not be made are counted', () => {
    const notGiven = (change: (file: ShopFile) => void) => {
      const line = made({ ...E12_ON_BENCH_1, change }).sheet.warnings.at(-1) ?? '';
      return Number(/^Not given, and so not checked: (\d+) points?; the list of findings names (?:it|them)\.$/.exec(line)?.[1]);
    };
    const before = notGiven(() => undefined);
    const without = notGiven((file) => {
      for (const stage of bench(file, 'bench-1').stages) delete stage.driver.guard;
    });
    expect(without).toBe(before + 1);
  });

  test('without limits nothing is called inside', () => {
    const { sheet } = made({
      ...E12_ON_BENCH_1,
      change: (file) => {
        for (const material of file.materials) delete material.limits;
      },
    });
    expect(sheet.catches.limits).toBeNull();
    expect(sheet.catches.rule).toBe('Expected: A 275.5\u00A0g, B 107.1\u00A0g.');
    expect(sheet.ratio.rows.map(({ against }) => against).join()).not.toMatch(/inside/);
    expect(sheet.steps.lines.at(-1)).not.toMatch(/[Ii]nside/);
  });
});

describe('what changes and what stays', () => {
  test('a stage that stays is one line; both pumps are another', () => {
    const { sheet } = made({ selection: { machine: 'bench-2', material: 'e12' }, teeth: [pair(27, 17), pair(20, 23)] });
    expect(sheet.changes.groups.map(({ title }) => title)).toEqual(['s1']);
    expect(sheet.changes.stays).toEqual([
      's2 stays: 20 to 23 T, chain 06B of 64 pitches, centres 202.4\u00A0mm.',
      'Pumps stay: A PA15, 15\u00A0cc/rev; B PB5, 5\u00A0cc/rev.',
    ]);
  });

  test('a pump that changes has its displacements, its step, and 90 minutes of work [invented example]', () => {
    const { sheet } = made({
      selection: E12_ON_BENCH_1.selection,
      pumps: { A: 'pa12', B: 'pb8' },
      change: (file) => {
        bench(file, 'bench-1').B.pumps.push({ id: 'pb8', name: 'PB8', displacement: { value: '8.25', unit: 'cc/rev' } });
      },
    });
    expect(sheet.changes.summary).toBe('1 part, about 90\u00A0min');
    expect(sheet.changes.groups).toEqual([
      {
        title: 'Pumps',
        detail: '',
        rows: [{ place: 'pump B, cc/rev', detail: '', off: '6', on: '8.25', from: 'PB8 for PB6', isNew: true }],
      },
    ]);
    expect(sheet.steps.lines.filter((step) => step.startsWith('Pump B: PB8 on.'))).toHaveLength(1);
    expect(sheet.changes.stays.at(-1)).toBe('Pump stays: A PA12, 12\u00A0cc/rev.');
  });

  test('nothing to change leaves only the run and the ratio check', () => {
    const { sheet } = made({ selection: E12_ON_BENCH_1.selection });
    expect(sheet.changes.summary).toBe('nothing changes');
    expect(sheet.steps.lines).toHaveLength(2);
  });

  test('a chain of unknown length is to be counted, a stage without centres to be measured', () => {
    const rows = (...left: readonly ('pitches' | 'centre' | 'centreNow')[]) =>
      made({
        ...E12_ON_BENCH_1,
        change: (file) => {
          for (const stage of bench(file, 'bench-1').stages) for (const field of left) delete stage[field];
        },
      }).sheet.changes.groups.flatMap((group) => group.rows.map(({ place, off, on, from }) => `${place}: ${off}, ${on}, ${from}`));
    expect(rows('pitches')[2]).toBe('chain, pitches: –, 64, count the old one');
    expect(rows('pitches', 'centre', 'centreNow').slice(2)).toEqual(['chain, pitches: –, –, centres not given: measure it']);
  });

  test('an odd count says that it needs an offset link, a fixed centre that it is fixed', () => {
    const { sheet } = made({
      ...E12_ON_BENCH_1,
      change: (file) => {
        for (const stage of bench(file, 'bench-1').stages) {
          stage.centre = { fixed: { value: '260', unit: 'mm' } };
          stage.centreNow = { value: '260', unit: 'mm' };
          stage.offsetLink = true;
        }
      },
    });
    const rows = sheet.changes.groups.flatMap((group) => group.rows);
    expect(rows[2]).toMatchObject({ on: '65', from: 'take out 1, with offset link' });
    expect(rows[3]).toMatchObject({ off: '–', on: '260.0', from: expect.stringMatching(/^fixed/) });
  });
});

describe('the shop’s own words', () => {
  test('checklist lines close the steps, cautions of the material stand with the cautions', () => {
    const { sheet } = made({
      ...E12_ON_BENCH_1,
      change: (file) => {
        bench(file, 'bench-1').checklist = ['Photo to the line lead'];
        for (const material of file.materials) material.cautions = ['Eye wash checked'];
      },
    });
    expect(sheet.steps.own).toEqual(['Photo to the line lead']);
    expect(sheet.cautions.own).toEqual(['Eye wash checked']);
  });

  test('long names of stages are cut in sentences, also in those of findings, and stand in full in the table', () => {
    const long = 'The stage between the motor and the jackshaft behind the left-hand column';
    const { sheet } = made({
      ...E12_ON_BENCH_1,
      teeth: [pair(16, 18)],
      change: (file) => {
        for (const stage of bench(file, 'bench-1').stages) stage.name = long;
      },
    });
    expect(sheet.changes.groups[0]?.title).toBe(long);
    for (const sentence of [...sheet.warnings, ...sheet.steps.lines]) expect(sentence).not.toContain(long);
    expect(sheet.warnings.join()).toContain('The stage between t… driver, 16 teeth');
  });

  test('a component without a name is called by its letter, with its temperature', () => {
    const { sheet } = made({
      ...E12_ON_BENCH_1,
      change: (file) => {
        for (const material of file.materials) delete material.A.name;
      },
    });
    expect(sheet.heading.components).toBe('A: at 42\u00A0°C, B: E12 hardener at 25\u00A0°C');
  });

  test('invented stands on the sheet of an invented shop only', () => {
    expect(made(E12_ON_BENCH_1).sheet.heading.invented).toBe('invented example');
    const real = made({
      ...E12_ON_BENCH_1,
      change: (file) => {
        file.shop.invented = false;
      },
    });
    expect(real.sheet.heading.invented).toBeNull();
  });
});

test('three stages, every wheel new: each stage has its row of four and its place in every step [invented example]', () => {
  const { sheet } = made({
    selection: U40_ON_BENCH_2.selection,
    teeth: [pair(22, 32), pair(26, 17), pair(25, 16)],
    change: thirdStage,
    say: metric,
  });
  expect(sheet.changes.groups.map(({ rows }) => rows.length)).toEqual([4, 4, 4]);
  for (const start of ['Put on', 'To length', 'Centres']) {
    const step = sheet.steps.lines.find((line) => line.startsWith(start));
    for (const stage of ['s1', 's2', 's3']) expect(step).toContain(stage);
  }
});

describe('the ratio after the change in words, whichever way it comes out', () => {
  const rows = (wanted: Parameters<typeof made>[0]) =>
    Object.fromEntries(
      made(wanted).sheet.ratio.rows.map(({ what, figure, against }) => [what, `${figure}; ${against}`.replaceAll('\u00a0', ' ')]),
    );
  const odd = (displacement: string) => ({
    ...E12_ON_BENCH_1,
    change: (file: ShopFile) => {
      for (const pump of bench(file, 'bench-1').A.pumps) pump.displacement = { value: displacement, unit: 'cc/rev' };
    },
  });
  test('whole numbers too long to be read leave the decimals alone; a whole number to one has none to add [arithmetic]', () => {
    // so many cc / 6 x 25 / 23; twenty letters are the most [our choice]
    expect(rows(odd('12.0000007'))['By volume, exact']).toMatch(/^120000007 : 55200000 = 2\.1739 : 1; /);
    expect(rows(odd('12.00000007'))['By volume, exact']).toMatch(/^2\.1739 : 1; /);
    expect(rows({ ...odd('12'), teeth: [pair(25, 25)] })['By volume, exact']).toMatch(/^2 : 1; /);
    expect(rows(odd('12'))['By volume, exact']).toMatch(/^50 : 23 = 2\.1739 : 1; /);
  });
  test('inside, outside, and limits that are not given', () => {
    const open = (file: ShopFile) => {
      for (const material of file.materials) delete material.limits;
    };
    expect(rows(E12_ON_BENCH_1)['Off-ratio']).toMatch(/; inside limits/);
    expect(rows({ ...E12_ON_BENCH_1, teeth: [pair(21, 30)] })['Off-ratio']).toMatch(/; outside limits/);
    expect(rows({ ...E12_ON_BENCH_1, change: open })['Off-ratio']).toMatch(/; limits not given/);
  });
});

describe('the turn by hand that closes a change [our wording]', () => {
  const withSpare = (file: ShopFile) => {
    const { pumps } = bench(file, 'bench-1').A;
    const [first] = pumps;
    pumps.push({ ...first, id: 'spare', name: 'PA12 spare' });
  };
  const last = (wanted: Omit<Parameters<typeof made>[0], 'selection'>) =>
    made({ selection: E12_ON_BENCH_1.selection, change: withSpare, ...wanted }).sheet.steps.lines.filter((line) =>
      line.startsWith('One full turn'),
    );
  const SHAFTS = 'One full turn of every shaft by hand: nothing touches.';
  test('of every shaft where wheels were changed, of the pump alone where only that was, and none where nothing was', () => {
    const spare = { A: 'spare', B: 'pb6' } as const;
    expect(last({ teeth: [pair(23, 25)] })).toEqual([SHAFTS]);
    expect(last({ teeth: [pair(23, 25)], pumps: spare })).toEqual([SHAFTS]);
    expect(last({ pumps: spare })).toEqual(['One full turn by hand: nothing binds.']);
    expect(last({})).toEqual([]);
  });
});
