import { describe, expect, test } from 'vitest';
import { bore } from '../../../core/src/checks/bore.ts';
import type { SlotRow } from '../../../core/src/file/machine.ts';
import type { PieceRow } from '../../../core/src/file/rack.ts';
import {
  expectFinding,
  expectNotMade,
  inch,
  inLine,
  judgePair,
  mm,
  only,
  pair,
  pieceRow,
  planOf,
  shopOf,
  stageRow,
} from '../planFixture.ts';

const oneInch: SlotRow = { teeth: 20, bore: inch('1') };
const BORE = ['machines', 0, 'stages', 0, 'driver', 'bore'];
const shopWith = (...pieces: readonly PieceRow[]) => shopOf(inLine([stageRow(oneInch, oneInch)]), pieces);

describe('bores match exactly [our choice; 1 in is 25.4 mm by definition]', () => {
  test('25.4 mm goes on a shaft of 1 in', () => {
    expect(judgePair(bore, planOf(shopWith(pieceRow(25, 1, { bore: mm('25.4') }))), pair(25, 20))).toEqual([]);
  });
  test('25 mm does not', () => {
    const file = shopWith(pieceRow(25, 1, { bore: mm('25') }));
    expectFinding(only(judgePair(bore, planOf(file), pair(25, 20))), file, {
      severity: 'blocks',
      where: BORE,
      figure: { value: 25, unit: 'mm' },
      limit: { value: 25.4, unit: 'mm' },
      names: ['25 teeth', '25.0 mm', '25.4 mm'],
    });
  });
  test('a thousandth off is refused, and the sentence shows the thousandth', () => {
    const file = shopWith(pieceRow(25, 1, { bore: mm('25.401') }));
    expectFinding(only(judgePair(bore, planOf(file), pair(25, 20))), file, {
      severity: 'blocks',
      where: BORE,
      figure: { value: 25.401, unit: 'mm' },
      limit: { value: 25.4, unit: 'mm' },
      names: ['25.401 mm', '25.400 mm'],
    });
  });
  test('of several other bores the nearest is named', () => {
    const file = shopWith(...['20', '28', '24'].map((value) => pieceRow(25, 1, { bore: mm(value) })));
    expect(only(judgePair(bore, planOf(file), pair(25, 20))).figure).toEqual({ value: 24, unit: 'mm' });
  });
  test('one wheel of the right bore, a blank one, or one on the machine is enough', () => {
    const wrong = pieceRow(25, 3, { bore: mm('25') });
    expect(judgePair(bore, planOf(shopWith(wrong, pieceRow(25, 1, { bore: inch('1') }))), pair(25, 20))).toEqual([]);
    expect(judgePair(bore, planOf(shopWith(wrong, pieceRow(25, 1))), pair(25, 20))).toEqual([]);
    const onMachine = shopOf(inLine([stageRow(oneInch, { ...oneInch, teeth: 25 })]), [wrong]);
    expect(judgePair(bore, planOf(onMachine), pair(25, 20))).toEqual([]);
  });
  test('one that may be bought is bought with the right bore', () => {
    const file = shopWith(pieceRow(25, 1, { bore: mm('25') }));
    expect(judgePair(bore, planOf(file, { purchases: 1, teeth: { from: 13, to: 40 } }), pair(25, 20))).toEqual([]);
    expect(judgePair(bore, planOf(file, { purchases: 1, teeth: { from: 30, to: 40 } }), pair(25, 20))).toHaveLength(1);
  });
  test('a slot whose bore is not given: not made for a new wheel, nothing to say of the one that stays', () => {
    const file = shopOf(inLine([stageRow(20, 20)]), [pieceRow(25, 1, { bore: mm('25') })]);
    expectNotMade(only(judgePair(bore, planOf(file), pair(25, 20))), file, BORE);
    expect(judgePair(bore, planOf(file), pair(20, 20))).toEqual([]);
  });
});
