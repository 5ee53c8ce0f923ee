import { describe, expect, test } from 'vitest';
import { quantity } from '../../../core/src/checks/quantity.ts';
import { expectFinding, inLine, judgeOption, only, pair, pieceRow, planOf, shopOf, stageRow } from '../planFixture.ts';

// Two stages of 20 to 20 teeth, each to be driven by a 55.
const shopWith = (quantityOf55: number) => shopOf(inLine([stageRow(20, 20), stageRow(20, 20)]), [pieceRow(55, quantityOf55)]);
const TWO_55 = [pair(55, 20), pair(55, 20)];

describe('enough pieces', () => {
  test('two of 55 teeth on the rack serve two slots [arithmetic]', () => {
    expect(judgeOption(quantity, planOf(shopWith(2)), TWO_55)).toEqual([]);
  });
  test('a train that needs a second 55 where one is owned [arithmetic]', () => {
    const file = shopWith(1);
    expectFinding(only(judgeOption(quantity, planOf(file), TWO_55)), file, {
      severity: 'blocks',
      where: ['machines', 0, 'stages', 1, 'driver'],
      figure: { value: 1, unit: 'pieces' },
      limit: { value: 2, unit: 'pieces' },
      names: ['2 pieces of 55 teeth', '1 to be had'],
    });
  });
  test('none at all: both slots are named', () => {
    expect(judgeOption(quantity, planOf(shopWith(0)), TWO_55).map(({ where, figure }) => [where[3], figure?.value])).toEqual([
      [0, 0],
      [1, 0],
    ]);
  });
});

describe('purchases', () => {
  const plan = (purchases: number) => planOf(shopWith(0), { purchases, teeth: { from: 50, to: 60 } });

  test('two may be bought, two are [arithmetic]', () => {
    expect(judgeOption(quantity, plan(2), TWO_55)).toEqual([]);
  });
  test('one may be bought, two would have to be', () => {
    expectFinding(only(judgeOption(quantity, plan(1), TWO_55)), shopWith(0), {
      severity: 'blocks',
      where: [],
      figure: { value: 2, unit: 'pieces' },
      limit: { value: 1, unit: 'pieces' },
      names: ['2 pieces', '1 may be'],
    });
  });
  test('what is outside the teeth that may be bought is not to be had', () => {
    expect(judgeOption(quantity, plan(2), [pair(61, 20), pair(20, 20)])).toMatchObject([{ figure: { value: 0 }, limit: { value: 1 } }]);
  });
});
