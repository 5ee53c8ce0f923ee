import { expect, test } from 'vitest';
import { mixtureDensity } from '../../core/src/mixture.ts';
import { exactText } from '../../core/src/ratio.ts';
import { inLine, planOf, shopOf, stageRow } from './planFixture.ts';
import { expectPrinted } from './printedFormula.ts';

const density = (value: string) => ({ density: { value: { value, unit: 'g/cm3' } } });
const mixOf = (liquids: Parameters<typeof shopOf>[2]) => planOf(shopOf(inLine([stageRow(17, 34)]), [], liquids)).mix;

test('2 volumes of 1.1 and 1 of 0.8 g/cm³: 3.0 over 3 = 1 g/cm³ [arithmetic, volumes adding up]', () => {
  const mixed = mixtureDensity(mixOf({ A: density('1.1'), B: density('0.8') }));
  if (!mixed.known) throw new Error('no density');
  expect(exactText(mixed.value.value)).toBe('1000/1');
  expectPrinted(mixed.value);
});

test('without one of the densities there is none', () => {
  expect(mixtureDensity(mixOf({ A: density('1.1') })).known).toBe(false);
  expect(mixtureDensity(mixOf({ B: density('1.1') })).known).toBe(false);
});
