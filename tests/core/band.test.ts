import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bandOf } from '../../core/src/band.ts';
import { answer, readShopFile } from '../../core/src/index.ts';

const say = { decimal: '.', system: 'metric' } as const;

function asked(material: string, change: (text: string) => string = (text) => text) {
  const read = readShopFile(change(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8')));
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  const outcome = answer(read.value, { selection: { machine: 'bench-1', material }, say });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings));
  return outcome.value;
}

test('more B lies to the left, the limits stand on either side of what is wanted, and every option by its ratio', () => {
  const found = asked('e12');
  const band = bandOf(found.plan, found.options);
  const { limits, wanted } = band;
  if (limits === null) throw new Error('the demo has limits');
  expect(limits.from.at).toBeLessThan(wanted.at);
  expect(wanted.at).toBeLessThan(limits.to.at);
  const rich = found.options.find((option) => option.inside && option.offRatio.s > 0n);
  const lean = found.options.find((option) => option.inside && option.offRatio.s < 0n);
  if (rich === undefined || lean === undefined) throw new Error('the demo has both');
  expect(band.spotOf(rich).at).toBeLessThan(wanted.at);
  expect(band.spotOf(lean).at).toBeGreaterThan(wanted.at);
  expect(band.spotOf(found.fitted)).toEqual({ at: 100, beyond: 'right' });
});

test('both scales agree: a mark of the lower one stands where the upper one has the same ratio (E12, densities as run by hand)', () => {
  const found = asked('e12');
  const band = bandOf(found.plan, found.options);
  const [first, last] = [band.above[0], band.above.at(-1)];
  if (first === undefined || last === undefined) throw new Error('no marks');
  // log scale: equal ratios of A per B are equal steps
  const scale = (last.at - first.at) / Math.log(last.value / first.value);
  for (const mark of band.below) {
    const aPerB = (100 / mark.value) * (0.97 / (1.16 / (1 + 0.00062 * 17)));
    expect(first.at + scale * Math.log(aPerB / first.value)).toBeCloseTo(mark.at, 6);
  }
  expect(band.below.length).toBeGreaterThan(2);
});

test('without limits the band is as wide as the closest options need', () => {
  const found = asked('e12', (text) => text.replace(/"limits": \{[^}]*\},/g, ''));
  const band = bandOf(found.plan, found.options);
  expect(band.limits).toBeNull();
  for (const option of found.options.slice(0, 12)) expect(band.spotOf(option).beyond).toBeNull();
});
