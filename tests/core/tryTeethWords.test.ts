// What may be typed is our choice; the sentences are held here as they stand beside the box.
import { describe, expect, test } from 'vitest';
import type { Stage } from '../../core/src/plan.ts';
import { readTeeth } from '../../core/src/tryTeeth.ts';
import { inLine, pair, planOf, shopOf, stageRow } from './planFixture.ts';

const stages = planOf(shopOf(inLine([stageRow(21, 30), stageRow(20, 23), stageRow(17, 19)]))).stages.map(
  (stage, index): Stage => ({ ...stage, id: `s${index + 1}`, name: `Stage ${index + 1}`, open: true }),
);
const only = (...open: readonly number[]) => stages.map((stage, index) => ({ ...stage, open: open.includes(index) }));
const fitted = [pair(21, 30), pair(20, 23), pair(17, 19)];
const changed = (index: number, driver: number, driven: number) => fitted.map((one, at) => (at === index ? pair(driver, driven) : one));
const said = (text: string, among: readonly Stage[]) => {
  const read = readTeeth(text, among);
  return read.ok ? '' : read.expected;
};

describe('the example that is given', () => {
  test('names each stage that may change, and only these', () => {
    expect(said('', stages)).toBe('Driver, then driven, as fitted: Stage 1 21 30; Stage 2 20 23; Stage 3 17 19');
    expect(said('', only(0, 2))).toBe('Driver, then driven, as fitted: Stage 1 21 30; Stage 3 17 19');
  });
  test('has no name where one stage may change', () => {
    expect(said('', only(1))).toBe('Driver, then driven, as fitted: 20 23');
  });
  test('is of all stages where none may change', () => {
    expect(said('', only())).toBe('Driver, then driven, as fitted: Stage 1 21 30; Stage 2 20 23; Stage 3 17 19');
    expect(said('', [])).toBe('This drive has no stage.');
  });
  test('can be typed, whichever stages may change', () => {
    for (const among of [stages, only(0), only(1), only(2), only(0, 2), only()]) {
      const typed = said('', among).replace(/^.*as fitted: /, '');
      expect(readTeeth(typed, among)).toEqual({ ok: true, teeth: fitted });
    }
  });
});

describe('teeth without a name', () => {
  test('go to the stages that may change, in their order', () => {
    expect(readTeeth('31 32', only(1))).toEqual({ ok: true, teeth: changed(1, 31, 32) });
    expect(readTeeth('31 32; 33 34', only(0, 2))).toEqual({ ok: true, teeth: [pair(31, 32), pair(20, 23), pair(33, 34)] });
    expect(readTeeth('31 32\n33 34', only(1, 2))).toEqual({ ok: true, teeth: [pair(21, 30), pair(31, 32), pair(33, 34)] });
  });
  test('are refused where they are fewer or more than these', () => {
    const expected = 'Say which stage is meant. Driver, then driven, as fitted: Stage 1 21 30; Stage 3 17 19';
    expect(said('31 32', only(0, 2))).toBe(expected);
    expect(said('31 32; 33 34; 35 36', only(0, 2))).toBe(expected);
  });
});

describe('what is refused, and with which words', () => {
  test.each([
    ['Stage 4 31 32', 'There is no stage "Stage 4". Stages here: Stage 1, Stage 2, Stage 3.'],
    ['Stage 2 31 32; s2 33 34', 'The stage Stage 2 is named twice.'],
    ['Stage 2 31', 'There is no stage "Stage". Stages here: Stage 1, Stage 2, Stage 3.'],
    ['s2 4 5', '4 teeth: a wheel has 5 to 400.'],
    ['s2 5 4', '4 teeth: a wheel has 5 to 400.'],
    ['s2 401 5', '401 teeth: a wheel has 5 to 400.'],
    ['s2 31x32', '"s2 31x32" is not a pair of teeth. Driver, then driven, as fitted: Stage 1 21 30; Stage 2 20 23; Stage 3 17 19'],
  ])('%s', (text, expected) => expect(said(text, stages)).toBe(expected));
  test('both limits of a wheel belong to it', () => {
    expect(readTeeth('s2 5 400', stages)).toEqual({ ok: true, teeth: changed(1, 5, 400) });
    expect(readTeeth('s2 400 5', stages)).toEqual({ ok: true, teeth: changed(1, 400, 5) });
  });
});

describe('a stage by its pump', () => {
  const turning = (...turns: readonly Stage['turns'][]): readonly Stage[] =>
    stages.map((stage, index) => ({ ...stage, turns: turns[index] ?? 'neither' }));
  test('A or B means the one stage that alone turns that pump', () => {
    expect(readTeeth('A 31 32', turning('both', 'A', 'B'))).toEqual({ ok: true, teeth: changed(1, 31, 32) });
    expect(readTeeth('b 31 32', turning('both', 'A', 'B'))).toEqual({ ok: true, teeth: changed(2, 31, 32) });
  });
  test('two that turn it are not told apart, and another word is no pump', () => {
    const expected = 'There is no stage "A". Stages here: Stage 1, Stage 2, Stage 3.';
    expect(said('A 31 32', turning('A', 'A', 'B'))).toBe(expected);
    expect(said('C 31 32', turning('A', 'B', 'B'))).toBe(expected.replace('"A"', '"C"'));
  });
});
