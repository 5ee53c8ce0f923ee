// What may be typed is our choice; the teeth that come of it are read off the typed text by eye.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { fittedPumps, type Plan, planOption, readShopFile, resolve } from '../../core/src/index.ts';
import { readTeethRange } from '../../core/src/teethRange.ts';
import { readTeeth } from '../../core/src/tryTeeth.ts';

const say = { decimal: '.', system: 'metric' } as const;

function planOf(machine: string, material: string): Plan {
  const file = readShopFile(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
  if (!file.ok) throw new Error(JSON.stringify(file.findings));
  const plan = resolve(file.value, { machine, material }, say);
  if (!plan.ok) throw new Error(JSON.stringify(plan.findings));
  return plan.value;
}

const one = planOf('bench-1', 'e12').stages;
const two = planOf('bench-2', 'u40').stages;

describe('one open stage needs no name [our choice]', () => {
  test.each(['23 25', '23 to 25', '23:25', '23 : 25', '23→25', '23 -> 25', ' 23  25 ', 's1 23 25', 'S1 23 to 25', 'b 23 25', '23 25;'])(
    '%s',
    (text) => {
      expect(readTeeth(text, one)).toEqual({ ok: true, teeth: [{ driver: 23, driven: 25 }] });
    },
  );
});

describe('two stages [our choice]', () => {
  test('each named', () => {
    expect(readTeeth('s1 23 25; s2 20 23', two)).toEqual({
      ok: true,
      teeth: [
        { driver: 23, driven: 25 },
        { driver: 20, driven: 23 },
      ],
    });
  });
  test('in their order where no name is given', () => {
    expect(readTeeth('23 25; 20 23', two)).toEqual(readTeeth('s2 20 23; s1 23 25', two));
  });
  test('a stage that is not named keeps its fitted teeth', () => {
    const [first] = two;
    expect(readTeeth('s2 20 23', two)).toEqual({
      ok: true,
      teeth: [
        { driver: first?.driver.teeth, driven: first?.driven.teeth },
        { driver: 20, driven: 23 },
      ],
    });
  });
  test('a name may hold spaces and digits', () => {
    const named = two.map((stage, index) => ({ ...stage, name: `Stage ${index + 1}` }));
    expect(readTeeth('stage 2 20 23', named)).toEqual(readTeeth('s2 20 23', two));
  });
});

describe('what is not understood says what was expected', () => {
  test.each([
    ['', one, 'as fitted: 21 30'],
    ['23', one, '"23" is not a pair of teeth'],
    ['23 25 27', one, 'There is no stage "23"'],
    ['s9 23 25', one, 'Stages here: s1.'],
    ['23 25', two, 'Say which stage is meant'],
    ['s1 23 25; s1 20 23', two, 'named twice'],
    ['4 25', one, '4 teeth: a wheel has 5 to 400'],
    ['23 401', one, '401 teeth'],
    ['2.5 25', one, 'is not a pair of teeth'],
    ['23 + 25', one, 'is not a pair of teeth'],
  ] as const)('%s', (text, stages, words) => {
    const read = readTeeth(text, stages);
    expect(read.ok ? '' : read.expected).toContain(words);
  });
  test('the example that is given can be typed', () => {
    const read = readTeeth('', two);
    const typed = read.ok ? '' : read.expected.replace(/^.*as fitted: /, '');
    expect(readTeeth(typed, two)).toEqual({
      ok: true,
      teeth: two.map(({ driver, driven }) => ({ driver: driver.teeth, driven: driven.teeth })),
    });
  });
});

describe('every pair that is accepted can be laid out', () => {
  test.each(['5 5', '5 400', '400 5', '400 400', '40 13'])('%s', (text) => {
    const plan = planOf('bench-1', 'e12');
    const read = readTeeth(text, plan.stages);
    if (!read.ok) throw new Error(read.expected);
    const option = planOption(plan, fittedPumps(plan), read.teeth, say);
    expect(option.stages.map(({ fit }) => Number.isFinite(fit.loop?.wrap_rad))).toEqual([true]);
  });
});

describe('a range of teeth [our choice]', () => {
  test.each(['12 to 40', '12-40', '12 – 40', '12..40', '12 40'])('%s', (text) => {
    expect(readTeethRange(text)).toEqual({ ok: true, value: { from: 12, to: 40 } });
  });
  test('an empty box is not given', () => {
    expect(readTeethRange(' ')).toEqual({ ok: true, value: undefined });
  });
  test.each([
    ['12', 'not a range'],
    ['40 to 12', 'must not be larger'],
    ['4 to 12', '5 to 400'],
    ['12 to 401', '5 to 400'],
    ['1.5 to 12', 'not a range'],
  ])('%s is refused', (text, words) => {
    const read = readTeethRange(text);
    expect(read.ok ? '' : read.expected).toContain(words);
  });
});
