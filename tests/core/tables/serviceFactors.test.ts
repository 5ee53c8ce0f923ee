import { expect, test } from 'vitest';
import { exactText, ONE } from '../../../core/src/ratio.ts';
import { SERVICE_FACTORS } from '../../../core/src/tables/serviceFactors.ts';

test('electric motor: 1.0 even, 1.3 moderate shock, 1.5 heavy shock, exactly [asme-b29.1, supplementary information, and machine-elements, table 7-8, both from memory]', () => {
  expect(SERVICE_FACTORS.map(({ load, serviceFactor }) => [load, exactText(serviceFactor)])).toEqual([
    ['an even load', '1/1'],
    ['moderate shock', '13/10'],
    ['heavy shock', '3/2'],
  ]);
});

test('a rougher load never counts less than a smoother one, and none less than once', () => {
  let before = ONE;
  for (const { load, serviceFactor } of SERVICE_FACTORS) {
    expect(serviceFactor.compare(before), load).toBeGreaterThanOrEqual(0);
    before = serviceFactor;
  }
});
