import { describe, expect, test } from 'vitest';
import { type KeptCheck, keptChecks, pooledRepeatability } from '../../../core/src/ratioCheck/history.ts';
import { demoFile } from './demoChecks.ts';

const kept = (): readonly KeptCheck[] => keptChecks(demoFile().ratioChecks);

/** A check whose catches of B fall on `parts` to 100 of A. */
function checkOf(parts: readonly string[]): KeptCheck {
  const file = demoFile();
  const [first] = file.ratioChecks;
  if (first === undefined) throw new Error('no check');
  const catches = parts.map((b) => ({ A: { net: { value: '100', unit: 'g' } }, B: { net: { value: b, unit: 'g' } } }));
  const [one] = keptChecks([{ ...first, catches }]);
  if (one === undefined) throw new Error('not judged');
  return one;
}

describe('how off-ratios repeat from catch to catch', () => {
  test('the checks of the invented example that agree; the third does not, and does not count', () => {
    const [first, second, third] = kept();
    if (first === undefined || second === undefined || third === undefined) throw new Error('three checks');
    const [s1, s2] = [first.evaluation.deviation ?? 0, second.evaluation.deviation ?? 0];
    expect(pooledRepeatability([first, second, third])).toBeCloseTo(Math.sqrt((s1 ** 2 + s2 ** 2) / 2), 12);
    // worked out apart from the program
    expect(pooledRepeatability([first, second])).toBeCloseTo(0.00051, 5);
    expect(pooledRepeatability([third])).toBeNull();
    expect(pooledRepeatability([])).toBeNull();
  });

  test('by hand: 41, 42, 43 with s = 1 and 41.5, 42.5 with s² = 0.5 parts pool to √((2 · 1 + 1 · 0.5) / 3) = 0.9129 parts', () => {
    const wide = [checkOf(['41', '42', '43']), checkOf(['41.5', '42.5'])].map(
      (one): KeptCheck => ({
        ...one,
        evaluation: { ...one.evaluation, unstable: [] },
      }),
    );
    // an off-ratio of one part to 100 is 2.38929 %
    expect((pooledRepeatability(wide) ?? 0) / 0.0238929).toBeCloseTo(0.9129, 4);
  });

  test('one catch says nothing of it', () => expect(pooledRepeatability([checkOf(['42'])])).toBeNull());
});
