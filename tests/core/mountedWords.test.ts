import { expect, test } from 'vitest';
import { mountedText } from '../../core/src/mountedWords.ts';
import { teethText } from '../../core/src/teethWords.ts';
import { demoPlan } from '../file/demoPlan.ts';

const spare = { id: 'pb3', name: 'PB3', displacement: { value: '3', unit: 'cc/rev' } };
const plan = demoPlan({ machine: 'bench-1', material: 'l5' }, [['machines', 0, 'B', 'pumps', 1], spare]);

test('teeth stage by stage', () => {
  expect(teethText([{ driver: 23, driven: 25 }])).toBe('23 to 25');
  expect(
    teethText([
      { driver: 23, driven: 25 },
      { driver: 19, driven: 38 },
    ]),
  ).toBe('23 to 25, 19 to 38');
});
test('a pump is named where it is not the one fitted (invented example)', () => {
  const teeth = [{ driver: 24, driven: 30 }];
  expect(mountedText(plan, { pumps: { A: 'pa12', B: 'pb6' }, teeth })).toBe('24 to 30');
  expect(mountedText(plan, { pumps: { A: 'pa12', B: 'pb3' }, teeth })).toBe('24 to 30; pump B PB3');
});
