import { describe, expect, test } from 'vitest';
import { ratiowright } from './run.ts';

const demo = ['demo.ratiowright', '--machine', 'bench-1', '--material', 'e12'] as const;
/** Number and teeth of every row of the list. */
const rows = (out: string) => [...out.matchAll(/^(\d+|-) +(\d+ to \d+) .*$/gm)].map(([line, number, teeth]) => ({ line, number, teeth }));

describe('options --order', () => {
  test('least work: one wheel, 25 min, before the closest of 37 min [worked out apart from this program]', () => {
    const found = rows(ratiowright('options', ...demo, '--order', 'least-work').out);
    expect(found[0]).toMatchObject({ number: '5', teeth: '21 to 23' });
    expect(found[0]?.line).toMatch(/0\.830 % B-lean +inside +1 +25 /);
  });
  test('trade-off: three inside that nothing beats, the rest counted, and a sentence on what that means', () => {
    const { out } = ratiowright('options', ...demo, '--order', 'trade-off');
    const inside = rows(out).filter(({ line }) => line.includes(' inside '));
    expect(inside.map(({ number, teeth }) => [number, teeth])).toEqual([
      ['5', '21 to 23'],
      ['3', '25 to 27'],
      ['1', '23 to 25'],
    ]);
    expect(inside[2]?.line).toMatch(/\d+ dominated$/);
    expect(out).toMatch(/Dominated, and so folded away, is an option beside which another takes no longer/);
  });
  test('numbers are those by which a sheet is asked for', () => {
    const closest = rows(ratiowright('options', ...demo, '--rows', '200').out);
    for (const { number, teeth } of rows(ratiowright('options', ...demo, '--order', 'least-work').out))
      expect(closest.find((row) => row.number === number)?.teeth).toBe(teeth);
  });
  test('closest is what is printed without it, and JSON is the same in every order', () => {
    expect(ratiowright('options', ...demo, '--order', 'closest').out).toBe(ratiowright('options', ...demo).out);
    expect(ratiowright('options', ...demo, '--json', '--order', 'trade-off').out).toBe(ratiowright('options', ...demo, '--json').out);
  });
  test('another word is refused with those that are known', () => {
    const ran = ratiowright('options', ...demo, '--order', 'cheapest');
    expect(ran.exit).toBe(2);
    expect(ran.err).toContain('--order takes closest or least-work or trade-off, not "cheapest"');
  });
});
