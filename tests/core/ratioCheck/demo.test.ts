import { describe, expect, test } from 'vitest';
import { Fraction, float, ONE } from '../../../core/src/ratio.ts';
import { wantedOn } from '../../../core/src/ratioCheck/amounts.ts';
import { bestAsMeasured, bestWith, withDeliveries } from '../../../core/src/ratioCheck/asMeasured.ts';
import { smallestCatch } from '../../../core/src/ratioCheck/before.ts';
import { formula, input, work } from '../../../core/src/working.ts';
import { demoPlan, evaluated, PAST } from './demoChecks.ts';

// Expected answers of the invented example were worked out apart from the program.

const plan = demoPlan();
const checks = PAST.map(({ catches }) => evaluated(plan, catches));
const delivered = (share: string) => ({
  share: work(named, 'delivery', { x: input('typed', new Fraction(share), 'share') }),
  uncertainty: null,
});
const named = formula({
  letter: 'η',
  written: 'x',
  dimension: 'share',
  source: 'invented example',
  of: ({ x }: Record<'x', Fraction>) => x,
});
const percent = (value: number | undefined) => 100 * (value ?? Number.NaN);

describe('the three past ratio checks of the invented example, U40 on Bench 1', () => {
  test.each([
    [0, 2.4012, -0.5, -0.66, -0.34, 1.0001, 0.0026, 0.9965, 0.0038, 'pass'],
    [1, 2.4179, -1.18, -1.35, -1.01, 1.0001, 0.0041, 0.9897, 0.0038, 'pass'],
    [2, 2.4396, -2.06, -4.55, 0.38, 0.9994, 0.009, 0.9802, 0.0335, 'not proven'],
  ] as const)('check %i: %f A per B by weight, %f %%, %f to %f %%', (index, ratio, off, from, to, A, UA, B, UB, verdict) => {
    const found = checks[index];
    if (found === undefined) throw new RangeError('no check');
    expect(1 / float(found.bPerA.value)).toBeCloseTo(ratio, 4);
    expect(percent(float(found.offRatio.value))).toBeCloseTo(off, 2);
    expect(percent(found.interval?.from.value)).toBeCloseTo(from, 2);
    expect(percent(found.interval?.to.value)).toBeCloseTo(to, 2);
    expect(float(found.delivery.A?.share.value ?? ONE)).toBeCloseTo(A, 4);
    expect(found.delivery.A?.uncertainty?.value).toBeCloseTo(UA, 4);
    expect(float(found.delivery.B?.share.value ?? ONE)).toBeCloseTo(B, 4);
    expect(found.delivery.B?.uncertainty?.value).toBeCloseTo(UB, 4);
    expect(found.verdict).toBe(verdict);
  });

  test('the third is inside by its mean and unstable: its interval is 4.93 % wide, its range 1.96 %, the limits 5.71 % apart', () => {
    const third = checks[2];
    expect(percent(float(third?.range ?? ONE))).toBeCloseTo(1.96, 2);
    expect(percent((third?.interval?.to.value ?? 0) - (third?.interval?.from.value ?? 0))).toBeCloseTo(4.93, 2);
    const { limits } = plan.mix;
    expect(percent(float((limits?.high ?? ONE).sub(limits?.low ?? ONE)))).toBeCloseTo(5.71, 2);
    expect(third?.unstable).toEqual(['interval wider than half of that']);
    expect(third?.further).toEqual({ kind: 'find the cause' });
  });

  test('smallest catch worth making: 47.6 g of A, 19.9 g of B', () => {
    const [first] = checks;
    const { terms, scale } = first?.input ?? {};
    if (terms?.limits == null || scale === undefined) throw new RangeError('no limits');
    const found = smallestCatch(wantedOn(terms, true), terms.limits, scale);
    expect(1000 * float(found?.A.value ?? ONE)).toBeCloseTo(47.6, 1);
    expect(1000 * float(found?.B.value ?? ONE)).toBeCloseTo(19.9, 1);
  });

  test('with the deliveries of the second check, 1.0001 and 0.9897, the fitted teeth stand at −1.178 %, and 17 to 24 would be best at −0.001 %', () => {
    const found = bestWith(withDeliveries(plan, { A: delivered('1.0001'), B: delivered('0.9897') }));
    expect(percent(float(found.fitted))).toBeCloseTo(-1.178, 3);
    expect(found.best?.mounted.teeth).toEqual([{ driver: 17, driven: 24 }]);
    expect(percent(float(found.best?.offRatio ?? ONE))).toBeCloseTo(-0.001, 3);
  });

  test('unrounded they say the same of the teeth', () => {
    const second = checks[1];
    if (second === undefined) throw new RangeError('no check');
    const found = bestAsMeasured(plan, second);
    if (typeof found === 'string') throw new RangeError(found);
    expect(percent(float(found.fitted))).toBeCloseTo(-1.18, 2);
    expect(found.best?.mounted.teeth).toEqual([{ driver: 17, driven: 24 }]);
    // what was caught is what the deliveries say, so the fitted teeth stand where the catches do
    expect(found.fitted.equals(second.offRatio.value)).toBe(true);
  });

  test('from catches that do not agree no sprocket is proposed', () => {
    const third = checks[2];
    expect(third && bestAsMeasured(plan, third)).toBe('the catches do not agree');
  });
});
