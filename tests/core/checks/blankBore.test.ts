import { describe, expect, test } from 'vitest';
import { blankBore } from '../../../core/src/checks/blankBore.ts';
import type { PieceRow } from '../../../core/src/file/rack.ts';
import { expectNotMade, inLine, judgeOption, mm, only, pair, pieceRow, planOf, shopOf, stageRow } from '../planFixture.ts';

const slot = { teeth: 20, bore: mm('25') };
const shopWith = (...pieces: readonly PieceRow[]) => shopOf(inLine([stageRow(slot, slot)]), pieces);
const exact = (quantity: number) => pieceRow(25, quantity, { bore: mm('25') });
const blank = pieceRow(25, 1);

describe('a blank bore fits any slot, with a note [our choice]', () => {
  test('the noted bore is taken first, and nothing is said', () => {
    expect(judgeOption(blankBore, planOf(shopWith(blank, exact(1))), [pair(25, 20)])).toEqual([]);
  });
  test('a blank one that is taken since the noted one is out of stock', () => {
    const file = shopWith(exact(0), blank);
    const finding = only(judgeOption(blankBore, planOf(file), [pair(20, 25)]));
    expectNotMade(finding, file, ['machines', 0, 'stages', 0, 'driven', 'bore']);
    expect(finding.what).toContain('25 teeth');
  });
  test('two slots, one noted and one blank: one of them is to be measured', () => {
    expect(judgeOption(blankBore, planOf(shopWith(exact(1), blank)), [pair(25, 25)])).toHaveLength(1);
  });
  test('nothing to say of what stays, of what is bought, and of a slot whose own bore is not given', () => {
    const file = shopWith();
    expect(judgeOption(blankBore, planOf(file), [pair(20, 20)])).toEqual([]);
    expect(judgeOption(blankBore, planOf(file, { purchases: 1, teeth: { from: 13, to: 40 } }), [pair(25, 20)])).toEqual([]);
    expect(judgeOption(blankBore, planOf(shopOf(inLine([stageRow(20, 20)]), [blank])), [pair(25, 20)])).toEqual([]);
  });
});
