import { describe, expect, test } from 'vitest';
import { resolve } from '../../core/src/file/resolve.ts';
import type { Mix } from '../../core/src/plan.ts';
import { exactText, float, ONE } from '../../core/src/ratio.ts';
import { aPerB, expectPrinted, numberOf } from './mixFixture.ts';
import { demoText, lines, opened, say } from './shop.ts';

describe('the demo on Bench 1 (invented example; its answers were worked out apart from this program)', () => {
  const mixOn = (material: string): Mix => {
    const outcome = resolve(opened(demoText()), { machine: 'bench-1', material }, say);
    if (!outcome.ok) throw new Error(lines(outcome.findings).join('\n'));
    expect(lines(outcome.findings)).toEqual([]);
    return outcome.value.mix;
  };
  test('E12: as run 1.14790 and 0.97000 g/cm3; target 2.17229 : 1', () => {
    const { density_kg_per_m3, ...mix } = mixOn('e12');
    expectPrinted(numberOf(density_kg_per_m3.A) / 1000, '1.14790');
    expectPrinted(numberOf(density_kg_per_m3.B) / 1000, '0.97000');
    expectPrinted(1 / float(mix.wantedBPerA), '2.17229');
    expectPrinted(1 / float(mix.wantedBPerA), ((100 / (1.16 / (1 + 0.00062 * 17)) / 38.9) * 0.97).toFixed(9));
  });
  test('U40: 31.0 % NCO on OH 165 at index 105: 41.853 parts, target 2.85316 : 1, limits -2.857 to +2.857 %', () => {
    const mix = mixOn('u40');
    expectPrinted(float(mix.sheet.partsB), '41.853');
    expectPrinted(float(aPerB(mix)), '2.85316');
    const parts = (105 * 4201.7) / 31 / (56105.6 / 165);
    expectPrinted(float(aPerB(mix)), ((100 * (1 + 0.00078 * 15)) / 1.03 / ((parts * (1 + 0.0007 * 5)) / 1.22)).toFixed(9));
    expectPrinted(100 * float(mix.limits?.low ?? ONE), '-2.857');
    expectPrinted(100 * float(mix.limits?.high ?? ONE), '2.857');
    expect([mix.sheet.written, mix.limitsWritten]).toEqual(['31.0 % NCO on OH 165, index 105', 'index 102 to 108']);
  });
  test('L5: 5 : 1 by volume stays exactly that, at the temperature where it holds', () => {
    expect(exactText(mixOn('l5').wantedBPerA)).toBe('1/5');
  });
});
