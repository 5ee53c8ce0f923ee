import { expect, test } from 'vitest';
import { withProgress } from '../../core/cli/progress.ts';

const lines: string[] = [];
const stream = (isTTY: boolean) => {
  lines.length = 0;
  return { isTTY, write: (text: string) => lines.push(text) };
};

test('a terminal is told each whole per cent once, and the line is gone before the answer', () => {
  const answer = withProgress(stream(true), 'planning', ({ progress }) => {
    for (const done of [0, 0.001, 0.5, 0.509, 1]) progress?.(done);
    return 7;
  });
  expect(answer).toBe(7);
  const blank = ' '.repeat('planning, 100 %'.length);
  expect(lines).toEqual(['\rplanning, 0 %', '\rplanning, 50 %', '\rplanning, 100 %', `\r${blank}\r`]);
});
test('the line goes where the work fails too', () => {
  const fails = () =>
    withProgress(stream(true), 'planning', ({ progress }) => {
      progress?.(0);
      throw new RangeError('fault');
    });
  expect(fails).toThrow('fault');
  expect(lines.at(-1)).toMatch(/^\r +\r$/);
});
test('what is no terminal hears nothing', () => {
  withProgress(stream(false), 'planning', ({ progress }) => progress?.(0.5));
  expect(lines).toEqual([]);
});
