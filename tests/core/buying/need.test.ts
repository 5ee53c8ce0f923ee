import { expect, test } from 'vitest';
import { holdsAll, inOrder, type Need } from '../../../core/src/buying/need.ts';

test('plans stand by their number of parts, then by the last part, then by the one before [the definition]', () => {
  const inTheirOrder: readonly Need[] = [[], [0], [3], [9], [0, 0], [0, 3], [3, 3], [0, 4], [1, 4], [0, 0, 0], [7, 8, 8], [0, 0, 9]];
  for (const [i, a] of inTheirOrder.entries())
    for (const [k, b] of inTheirOrder.entries()) expect([a, b, Math.sign(inOrder(a, b))]).toEqual([a, b, Math.sign(i - k)]);
  expect(inTheirOrder.toReversed().sort(inOrder)).toEqual(inTheirOrder);
});

test('a multiset holds another with each part as often [the definition]', () => {
  for (const [need, wanted, holds] of [
    [[], [], true],
    [[1, 2], [], true],
    [[], [1], false],
    [[1, 1, 2], [1, 1], true],
    [[1, 2, 2], [1, 1], false],
    [[1, 2, 3], [1, 3], true],
    [[1, 2, 3], [0], false],
    [[1, 2, 3], [4], false],
    [[2, 2], [2, 2, 2], false],
  ] as const)
    expect([need, wanted, holdsAll(need, wanted)]).toEqual([need, wanted, holds]);
});
