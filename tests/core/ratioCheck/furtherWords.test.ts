// What a check says of what would settle it, and which checks belong together, is our choice of words and rule.
import { describe, expect, test } from 'vitest';
import type { Further } from '../../../core/src/ratioCheck/further.ts';
import { samePumps } from '../../../core/src/ratioCheck/history.ts';
import { furtherText } from '../../../core/src/ratioCheckWords.ts';
import { demoFile } from './demoChecks.ts';
import { say } from './written.ts';

const larger: Further = { kind: 'larger catches', amount: { A: 0.25, B: 0.1 }, toward: 'pass' };

test.each<[Further, boolean, string]>([
  [{ kind: 'a second catch' }, true, 'Make a second catch, better two more: one alone has no spread.'],
  [{ kind: 'find the cause' }, true, 'More catches would not help: these do not agree. Find the cause first.'],
  [{ kind: 'more catches', catches: 1, toward: 'pass' }, true, '1 more catch that agrees with these would settle it, toward pass.'],
  [{ kind: 'more catches', catches: 3, toward: 'fail' }, true, '3 more catches that agree with these would settle it, toward fail.'],
  [
    larger,
    true,
    'The scale is too coarse for catches this small: as many of about 250 g of A and 100 g of B would settle it, toward pass.',
  ],
  [
    { ...larger, amount: { A: 0.00025, B: 0.0001 }, toward: 'fail' },
    false,
    'The scale is too coarse for catches this small: as many of about 250 cc of A and 100 cc of B would settle it, toward fail.',
  ],
  [{ kind: 'too near the limit' }, true, 'The mean lies so near a limit that not even twenty more catches would settle it.'],
])('%j', (further, weighed, words) => expect(furtherText(further, weighed, say).replaceAll('\u00a0', ' ')).toBe(words));

describe('checks of the same two pumps', () => {
  const row = demoFile().ratioChecks[0] ?? expect.unreachable();
  const with_ = (pumps: Partial<typeof row.mounted.pumps>) => ({
    ...row,
    mounted: { ...row.mounted, pumps: { ...row.mounted.pumps, ...pumps } },
  });
  test('on the same machine, whatever the teeth', () => {
    expect(samePumps(row, { ...row, mounted: { ...row.mounted, teeth: [] } })).toBe(true);
  });
  test('another machine, another pump A or another pump B is another history', () => {
    for (const other of [{ ...row, machine: 'x' }, with_({ A: 'x' }), with_({ B: 'x' })])
      expect([samePumps(row, other), samePumps(other, row)]).toEqual([false, false]);
  });
});
