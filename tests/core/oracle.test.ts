// An independent oracle: decimal.js (npm, general-purpose decimal arithmetic) with 60 digits redoes mix ratio, ratio and off-ratio
// of the invented demo in the textbook's own form, without fractions; the exact answers must agree to all its digits.
import { readFileSync } from 'node:fs';
import { Decimal } from 'decimal.js';
import { expect, test } from 'vitest';
import { answer, readShopFile } from '../../core/src/index.ts';
import type { Fraction } from '../../core/src/ratio.ts';

const Exact = Decimal.clone({ precision: 60 });
const decimal = (value: Fraction) => new Exact(value.s.toString()).mul(value.n.toString()).div(value.d.toString());
const agrees = (value: Fraction, other: Decimal) =>
  expect(decimal(value).sub(other).abs().lt('1e-50'), `${value} against ${other}`).toBe(true);

const read = readShopFile(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
if (!read.ok) throw new Error('the demo does not open');
const file = read.value;

/** Index 105 times 31.0 % NCO on OH number 165, with 42.017 g/mol for NCO and 56.1056 for KOH. */
const ISOCYANATE_PER_100_POLYOL = new Exact('4201.7').div('31.0').div(new Exact('56105.6').div('165')).mul('105');

/** parts, density at 25 °C, expansion, run at: as the invented materials have them */
const MATERIALS = {
  e12: { a: ['100', '1.16', '0.00062', '42'], b: ['38.9', '0.97', '0.0008', '25'] },
  u40: { a: ['100', '1.03', '0.00078', '40'], b: [ISOCYANATE_PER_100_POLYOL, '1.22', '0.0007', '30'] },
} as const;

test.each(['e12', 'u40'] as const)(
  '%s on both benches: wanted ratio, made ratio and off-ratio of every option [decimal.js]',
  (material) => {
    const volume = ([parts, density, expansion, at]: readonly [Decimal.Value, string, string, string]) =>
      new Exact(parts).mul(new Exact(1).add(new Exact(expansion).mul(new Exact(at).sub(25)))).div(density);
    const wanted = volume(MATERIALS[material].b).div(volume(MATERIALS[material].a));
    for (const [machine, pumpA, pumpB] of [
      ['bench-1', '12', '6'],
      ['bench-2', '15', '5'],
    ] as const) {
      const found = answer(file, { selection: { machine, material }, say: { decimal: '.', system: 'metric' } });
      if (!found.ok) throw new Error(JSON.stringify(found.findings));
      agrees(found.value.plan.mix.wantedBPerA, wanted);
      for (const option of found.value.options) {
        const turns = option.stages.reduce((product, { teeth }) => product.mul(teeth.driver).div(teeth.driven), new Exact(1));
        const made = turns.mul(pumpB).div(pumpA);
        agrees(option.bPerA, made);
        agrees(option.offRatio, made.div(wanted).sub(1));
      }
      const offs = found.value.options.map((option) => decimal(option.offRatio).abs());
      const inside = found.value.options.filter((option) => option.inside).length;
      for (let i = 1; i < inside; i += 1) expect(offs[i]?.gte(offs[i - 1] ?? 0)).toBe(true);
      expect(found.value.options.length).toBeGreaterThan(100);
    }
  },
);
