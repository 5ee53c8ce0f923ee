import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { resolve } from '../../core/src/file/resolve.ts';
import type { Finding, Outcome } from '../../core/src/finding.ts';
import type { Say } from '../../core/src/format.ts';
import type { Given } from '../../core/src/given.ts';
import { offRatio } from '../../core/src/mixRatio.ts';
import type { Mix, Plan } from '../../core/src/plan.ts';
import { exactText, Fraction, float, ONE, ratioOf } from '../../core/src/ratio.ts';
import { demoText, isPlace, lines, opened, say, smallest } from './shop.ts';

type Json = Readonly<Record<string, unknown>>;

function outcomeOf(material: Json, how: Say = say): Outcome<Plan> {
  const json = smallest(material);
  const outcome = resolve(opened(JSON.stringify(json)), {}, how);
  for (const { where } of outcome.findings) expect(isPlace(json, where), where.join(' ')).toBe(true);
  return outcome;
}

function planOf(material: Json, how: Say = say): { readonly mix: Mix; readonly findings: readonly Finding[] } {
  const outcome = outcomeOf(material, how);
  if (!outcome.ok) throw new Error(lines(outcome.findings).join('\n'));
  return {
    mix: outcome.value.mix,
    findings: outcome.findings.filter(({ check }) => check !== 'material.limits' && check !== 'machine.rack'),
  };
}

const mixOf = (material: Json): Mix => planOf(material).mix;
const refused = (material: Json): readonly string[] => {
  const outcome = outcomeOf(material);
  expect(outcome.ok).toBe(false);
  return lines(outcome.findings);
};
const notes = (material: Json, how: Say = say): readonly string[] =>
  planOf(material, how).findings.map(({ check, severity, what }) => `${check} ${severity}: ${what}`);

const celsius = (value: string) => ({ value, unit: '°C' });
const density = (value: string, at?: string, unit = 'g/cm3') => ({ value: { value, unit }, ...(at !== undefined && { at: celsius(at) }) });
const byWeight = (parts: string, more: Json = {}) => ({ basis: 'weight', parts, ...more });
const byVolume = (parts: string, more: Json = {}) => ({ basis: 'volume', parts, ...more });

const f = (text: string): Fraction => new Fraction(text);
const aPerB = (mix: Mix): Fraction => ONE.div(mix.wantedBPerA);
const numberOf = (given: Given<Fraction>): number => (given.known ? float(given.value) : Number.NaN);
const exactly = (given: Given<Fraction>): string => (given.known ? exactText(given.value) : 'not given');
const percentOff = (made: Fraction, wanted: Fraction) => 100 * float(offRatio(made, wanted));

/** Within half a unit of the last place printed. */
function expectPrinted(value: number, printed: string): void {
  const places = printed.split('.')[1]?.length ?? 0;
  expect(Math.abs(value - Number(printed)), `${value} against ${printed}`).toBeLessThanOrEqual(0.5000001 * 10 ** -places);
}

describe('one mix, said by weight and by volume', () => {
  test('2 : 1 by volume and 100 : 44 by weight: B is 0.88 times as dense; the weight ratio taken for the volume one is 12 % short of B [data sheet; arithmetic]', () => {
    const both = mixOf({ ratio: byVolume('2:1'), otherRatio: byWeight('100:44') });
    expect(exactText(aPerB(both))).toBe('2/1');
    expect(exactly(both.densityBOverA)).toBe('22/25');
    const turned = mixOf({ ratio: byWeight('100:44'), otherRatio: byVolume('2:1') });
    expect([exactText(aPerB(turned)), exactly(turned.densityBOverA)]).toEqual(['2/1', '22/25']);
    const confused = mixOf({ ratio: byVolume('100:44') });
    expectPrinted(float(aPerB(confused)), '2.27273');
    expectPrinted(percentOff(confused.wantedBPerA, both.wantedBPerA), '-12.0');
  });
  test('5 : 1 by volume and 100 : 18 by weight: density ratio 0.9; weighing 100 : 20 is 11.11 % off [data sheets of two systems; arithmetic]', () => {
    const { densityBOverA } = mixOf({ ratio: byVolume('5:1'), otherRatio: byWeight('100:18') });
    expect(exactly(densityBOverA)).toBe('9/10');
    expectPrinted(percentOff(f('0.2'), f('0.18')), '11.11111');
    const equallyDense = mixOf({ ratio: byWeight('5:1'), A: { density: density('1.1') }, B: { density: density('1.1') } });
    expect(exactText(aPerB(equallyDense))).toBe('5/1');
  });
  test('100 : 47 by weight, 2 : 1 by volume, A 1.16 g/mL: B is 1.0904 g/mL [data sheet; arithmetic]', () => {
    const ratios = { ratio: byWeight('100:47'), otherRatio: byVolume('2:1') };
    const fromA = mixOf({ ...ratios, A: { density: density('1.16', undefined, 'g/mL') } });
    expect(exactly(fromA.densityBOverA)).toBe('47/50');
    expectPrinted(numberOf(fromA.density_kg_per_m3.B) / 1000, '1.0904');
    const fromB = mixOf({ ...ratios, B: { density: density('1.0904', undefined, 'g/mL') } });
    expect(exactly(fromB.density_kg_per_m3.A)).toBe('1160/1');
    expect(exactText(aPerB(fromA))).toBe('2/1');
  });
  test('all four numbers, and one of them wrong: they are held against each other [arithmetic]', () => {
    const sheet = (b: string) => ({
      ratio: byWeight('100:47'),
      otherRatio: byVolume('2:1'),
      A: { density: density('1.16') },
      B: { density: density(b) },
    });
    const disagreeing = (b: string) => planOf(sheet(b)).findings.filter(({ check }) => check === 'material.twoRatios');
    // 1.0904 and 1 % of it either way: just that still agrees.
    for (const agreeing of ['1.0904', '1.079496', '1.101304']) expect(disagreeing(agreeing)).toEqual([]);
    for (const wrong of ['1.079495', '1.101305']) expect(disagreeing(wrong)).toHaveLength(1);
    const [finding] = disagreeing('1.16');
    expect(finding).toMatchObject({ severity: 'warns', where: ['materials', 0, 'otherRatio'], limit: { value: 1, unit: '%' } });
    expectPrinted(finding?.figure?.value ?? Number.NaN, '6.383');
    expect(finding?.what).toBe(
      'The ratios by weight and by volume ask for B to be 0.9400 times as dense as A; the densities say 1.0000. One of the four numbers is wrong: ask the supplier.',
    );
    expect(
      planOf(sheet('1.16'), { ...say, decimal: ',' })
        .findings.map(({ what }) => what)
        .join(),
    ).toContain('0,9400 times');
  });
  test('a density that the ratios stand in for is carried to where the machine runs: A grown by 1.01 makes 2.02 : 1 [definition of volume expansion]', () => {
    const heated = { density: density('1.16', '20'), expansion: { value: '0.001', unit: '1/K' }, runAt: celsius('30') };
    const sheet = (at: Json) => ({
      ratio: byWeight('100:47', at),
      otherRatio: byVolume('2:1'),
      A: heated,
      B: { expansion: { value: '0', unit: '1/K' }, runAt: celsius('20') },
    });
    const mix = mixOf(sheet({ at: celsius('20') }));
    expect(exactText(aPerB(mix))).toBe('101/50');
    expectPrinted(numberOf(mix.density_kg_per_m3.B) / 1000, '1.0904');
    expect(notes(sheet({ at: celsius('20') }))).toEqual([]);
    expect(notes(sheet({}))).toEqual(
      ['A', 'B'].map(
        (side) =>
          `material.referenceTemperature notes: ${side}: no temperature is given for the ratio by volume; it is taken as holding at ${side === 'A' ? 30 : 20}\u00A0°C.`,
      ),
    );
  });
  test('they are held against each other where the volumes of the sheet hold, not where the machine runs [definition of volume expansion]', () => {
    const heated = { expansion: { value: '0.0007', unit: '1/K' }, runAt: celsius('60') };
    const sheet = (at: Json) => ({
      ratio: byWeight('100:47', at),
      otherRatio: byVolume('2:1'),
      A: { density: density('1.16', '25'), ...heated },
      B: { density: density('1.0904', '25'), runAt: celsius('25'), expansion: { value: '0', unit: '1/K' } },
    });
    // 35 K of A are worth 2.4 %, but the sheet speaks of 25 °C.
    for (const at of [{}, { at: celsius('25') }]) expect(notes(sheet(at))).toEqual([]);
    expect(notes(sheet({ at: celsius('60') })).join()).toContain('material.twoRatios warns');
  });
  test.each(['100A:38B', '38B:100A', '38b : 100a'])(
    '%s by weight: the letters say which is which: A/B 50/19 [data sheet; arithmetic]',
    (parts) => {
      const { sheet } = mixOf({ ratio: byWeight(parts), A: { density: density('1') }, B: { density: density('1') } });
      expect([exactText(sheet.partsA), exactText(sheet.partsB), exactText(sheet.partsA.div(sheet.partsB))]).toEqual([
        '100/1',
        '38/1',
        '50/19',
      ]);
    },
  );
  test('10.25 and 9.7 lb/gal at 1 : 1 by volume: 1.0567 by weight; equal weights are 5.36585 % short of the heavier one [foam data sheet; arithmetic]', () => {
    const heavy = { density: density('10.25', undefined, 'lb/gal') };
    const light = { density: density('9.7', undefined, 'lb/gal') };
    const heavyIsB = mixOf({ ratio: byVolume('1:1'), A: light, B: heavy });
    expectPrinted(numberOf(heavyIsB.densityBOverA), '1.0567');
    const share = numberOf(heavyIsB.densityBOverA) / (1 + numberOf(heavyIsB.densityBOverA));
    expectPrinted(100 * share, '51.37845');
    const weightWanted = f('10.25').div(f('9.7'));
    expectPrinted(percentOff(ONE, weightWanted), '-5.36585');
    // The letters are not the same in every country: with the sides exchanged the same catch is B-rich.
    const heavyIsA = mixOf({ ratio: byVolume('1:1'), A: heavy, B: light });
    expect(exactly(heavyIsA.densityBOverA)).toBe(exactText(ONE.div(weightWanted)));
    expectPrinted(percentOff(ONE, ONE.div(weightWanted)), '5.67010');
  });
});

describe('three parts for two pumps: 4 : 1 : 1 [arithmetic]', () => {
  test('shares of 66.66667, 16.66667 and 16.66667 %; 5 : 1 with the third in A, 2 : 1 with it in B, 4 : 1 without it', () => {
    const into = (thirdInto: 'A' | 'B') => mixOf({ ratio: byVolume('4:1:1', { thirdInto }) });
    expect(exactText(aPerB(into('A')))).toBe('5/1');
    expect(exactText(aPerB(into('B')))).toBe('2/1');
    expect(exactText(aPerB(mixOf({ ratio: byVolume('4:1') })))).toBe('4/1');
    const { partsA, partsB } = into('B').sheet;
    expectPrinted((100 * float(partsA)) / float(partsA.add(partsB)), '66.66667');
    expect([exactText(partsA), exactText(partsB)]).toEqual(['4/1', '2/1']);
  });
  test('the tank of the third part is never guessed, nor a third part that is not there', () => {
    expect(refused({ ratio: byVolume('4:1:1') })).toEqual([
      'materials 0 ratio thirdInto: "4:1:1" has three parts for two pumps: say into which tank, A or B, the third is premixed.',
    ]);
    expect(refused({ ratio: byVolume('4:1', { thirdInto: 'A' }) })).toEqual([
      'materials 0 ratio parts: "4:1" has two parts, but a third is said to be premixed into A: write A : B : third.',
    ]);
    expect(refused({ ratio: { basis: 'volume', perHundredA: '25', thirdInto: 'B' } })).toEqual([
      'materials 0 ratio thirdInto: A third part needs its own number: write the ratio as A : B : third.',
    ]);
    expect(refused({ ratio: byVolume('4:1:1', { thirdInto: 'A' }), otherRatio: byWeight('100:22') })).toEqual([
      'materials 0 otherRatio parts: "100:22" and the ratio by volume must have the same number of parts.',
    ]);
  });
  test('by weight, 4 parts of 1.1 and 1 of 0.9 make a tank of 1.05319 g/cm3 [conservation of mass and volume]', () => {
    const ratio = byWeight('4:1:1', { thirdInto: 'A' });
    const parts = { A: { density: density('1.1') }, third: { density: density('0.9') }, B: { density: density('1') } };
    const mixed = mixOf({ ratio, ...parts });
    expectPrinted(numberOf(mixed.density_kg_per_m3.A) / 1000, '1.05319');
    // 5 kg in 4/1.1 + 1/0.9 litres against 1 litre of B.
    expectPrinted(float(aPerB(mixed)), (4 / 1.1 + 1 / 0.9).toFixed(5));
    const typed = mixOf({ ratio, ...parts, premix: { density: density('1.05') } });
    expect(exactly(typed.density_kg_per_m3.A)).toBe('1050/1');
    expectPrinted(float(aPerB(typed)), (5 / 1.05).toFixed(5));
  });
  test('by volume, 4 litres of 1.1 and 1 of 0.9 make 1.06 g/cm3; heated, each grows by its own expansion [definition of volume expansion]', () => {
    const grows = (expansion: string) => ({ expansion: { value: expansion, unit: '1/K' } });
    const mixed = mixOf({
      ratio: byVolume('4:1:1', { thirdInto: 'A', at: celsius('20') }),
      A: { density: density('1.1', '20'), ...grows('0.001'), runAt: celsius('30') },
      // It stands in the tank of A, whatever is said of it by itself.
      third: { density: density('0.9', '20'), ...grows('0.002'), runAt: celsius('90') },
      B: { density: density('1', '20'), ...grows('0'), runAt: celsius('20') },
    });
    // 4 x 1.01 + 1 x 1.02 litres of 5.3 kg.
    expect(exactText(aPerB(mixed))).toBe('253/50');
    expectPrinted(numberOf(mixed.density_kg_per_m3.A), (5300 / 5.06).toFixed(4));
  });
  test('a third part that the ratio does not count is left out, and that is said', () => {
    const found = notes({ ratio: byVolume('4:1'), third: { name: 'Thinner' } });
    expect(found).toContain('material.third notes: A third part is described, but the ratio has only two parts: it is left out.');
  });
});

describe('temperatures', () => {
  // Straight lines of density, as the source has them, so the route is two densities, the second at the temperature that is run:
  // the curve passes through both exactly, so nothing is lost between the line and our expansion.
  test.each([
    ['25', '25', '2.13043', '0.0'],
    ['45', '25', '2.15669', '1.23239'],
    ['15', '15', '2.13483', '0.20637'],
  ])(
    'A at %s and B at %s °C: %s : 1 by volume, %s % off if geared for 25 °C [1.15 - 0.0007 and 0.98 - 0.0008 g/mL per K; arithmetic]',
    (a, b, ratio, off) => {
      const part = (at25: string, slope: string, at: string) => {
        const second = f(at25).sub(f(slope).mul(f(at).sub(f('25'))));
        return {
          density: density(at25, '25'),
          runAt: celsius(at),
          ...(at === '25' ? { expansion: { value: '0', unit: '1/K' } } : { secondDensity: density(second.toString(), at) }),
        };
      };
      const mix = (ofA: string, ofB: string) =>
        mixOf({ ratio: byWeight('100:40'), A: part('1.15', '0.0007', ofA), B: part('0.98', '0.0008', ofB) });
      const run = mix(a, b);
      expectPrinted(float(aPerB(run)), ratio);
      expectPrinted(percentOff(mix('25', '25').wantedBPerA, run.wantedBPerA), off);
      expect(exactly(run.densityBOverA)).toBe(
        exactText(
          f('0.98')
            .sub(f('0.0008').mul(f(b).sub(f('25'))))
            .div(f('1.15').sub(f('0.0007').mul(f(a).sub(f('25'))))),
        ),
      );
    },
  );

  test('a ratio by volume holds where the sheet says, and is carried over by mass [our choice]', () => {
    const part = (expansion: string, runAt: string) => ({ expansion: { value: expansion, unit: '1/K' }, runAt: celsius(runAt) });
    const mix = mixOf({ ratio: byVolume('2:1', { at: celsius('20') }), A: part('0.0005', '60'), B: part('0.001', '30') });
    // A has grown by 1.02, B by 1.01.
    expect(exactText(aPerB(mix))).toBe('204/101');
    expect(exactly(mix.densityBOverA)).toBe('not given');
  });

  const run = (value: string, more: Json = {}) => ({ density: density('1.1', '25'), runAt: celsius(value), ...more });
  const still = run('25');
  const grows = { expansion: { value: '0.0007', unit: '1/K' } };

  test('nothing is noted where all is given, or where nothing is heated', () => {
    expect(notes({ ratio: byWeight('2:1'), A: run('60', grows), B: run('40', grows) })).toEqual([]);
    expect(notes({ ratio: byWeight('2:1'), A: still, B: still })).toEqual([]);
    expect(notes({ ratio: byVolume('2:1', { at: celsius('25') }), A: still, B: still })).toEqual([]);
  });
  test('a temperature to run at that is not given', () => {
    expect(notes({ ratio: byWeight('2:1'), A: still, B: { density: density('1', '25') } })).toEqual([
      'material.runTemperature notes: B: the temperature it is run at is not given; its density is taken as stated.',
    ]);
    expect(notes({ ratio: byVolume('2:1'), A: {}, B: {} })).toEqual(
      ['A', 'B'].map(
        (side) =>
          `material.runTemperature notes: ${side}: the temperature it is run at is not given; the ratio by volume is taken as it stands.`,
      ),
    );
  });
  test('an expansion that is not given, with what a usual one would cost: 0.0007 per K over 17 K is 1.19 % [definition]', () => {
    const material = { ratio: byWeight('2:1'), A: run('42'), B: still };
    expect(notes(material)).toEqual([
      'material.expansion warns: A: its expansion is not given and is taken as none; a usual 0.0007 per K over 17.0 K would shift the ratio by 1.19 %.',
    ]);
    expect(notes(material, { decimal: ',', system: 'metric' })[0]).toContain('0,0007 per K over 17,0 K would shift the ratio by 1,19 %');
    expect(exactly(mixOf(material).density_kg_per_m3.A)).toBe('1100/1');
    const cooled = planOf({ ...material, A: run('8') }).findings;
    expect(cooled.map(({ where, missing }) => [where, missing])).toEqual([[['materials', 0, 'A', 'expansion'], true]]);
    expect(cooled[0]?.what).toContain('over 17.0 K');
  });
  test('by volume the step counts from where the ratio holds; where that is where it is run, the density still shifts', () => {
    const at = (value: string) => ({ ratio: byVolume('2:1', { at: celsius(value) }), A: run('42'), B: still });
    expect(notes(at('20'))).toEqual([
      'material.expansion warns: A: its expansion is not given and is taken as none; a usual 0.0007 per K over 22.0 K would shift the ratio by 1.54 %.',
      'material.expansion warns: B: its expansion is not given and is taken as none; a usual 0.0007 per K over 5.0 K would shift the ratio by 0.35 %.',
    ]);
    expect(notes({ ...at('42'), B: run('25', grows) })).toEqual([
      'material.expansion warns: A: its expansion is not given and is taken as none; a usual 0.0007 per K over 17.0 K would shift its density, and the catch expected from it, by 1.19 %.',
    ]);
  });
  test('a temperature that the ratio or a density holds at and that is not given', () => {
    expect(notes({ ratio: byVolume('2:1'), A: run('42', grows), B: still })).toEqual(
      [
        ['A', '42'],
        ['B', '25'],
      ].map(
        ([side, t]) =>
          `material.referenceTemperature notes: ${side}: no temperature is given for the ratio by volume; it is taken as holding at ${t}\u00A0°C.`,
      ),
    );
    const bare = { ratio: byWeight('2:1'), A: { ...run('42', grows), density: density('1.1') }, B: still };
    expect(notes(bare)).toEqual([
      'material.referenceTemperature notes: A: no temperature is given for its density; it is taken as holding at 42\u00A0°C.',
    ]);
    expect(notes(bare, { decimal: '.', system: 'inch' })[0]).toContain('107.6\u00A0°F');
  });
  test('a premixed tank is asked about all that is in it, and the other tank as always', () => {
    const ratio = byWeight('4:1:1', { thirdInto: 'A' });
    const mixed = notes({ ratio, A: run('45', grows), third: { density: density('0.9', '25') }, B: run('45') });
    expect(mixed.map((line) => line.replace(/;.*/, ''))).toEqual([
      'material.expansion warns: The third part: its expansion is not given and is taken as none',
      'material.expansion warns: B: its expansion is not given and is taken as none',
    ]);
    const typed = notes({ ratio, A: run('45'), premix: { density: density('1.06', '25') }, B: run('45') });
    expect(typed.map((line) => line.replace(/;.*/, ''))).toEqual([
      'material.expansion warns: The premix: its expansion is not given and is taken as none',
      'material.expansion warns: B: its expansion is not given and is taken as none',
    ]);
  });
  test('two densities that cannot be one liquid, or leave none of it, are refused where they stand', () => {
    const withA = (A: Json) => refused({ ratio: byWeight('2:1'), A, B: still });
    const two = (value: string, at: string | undefined, more: Json = {}) => ({
      density: density('1.1', '25'),
      secondDensity: density(value, at),
      ...more,
    });
    expect(withA(two('1.09', '25'))).toEqual([
      'materials 0 A secondDensity at: Both densities are stated at one temperature: they give no expansion.',
    ]);
    expect(withA(two('1.09', undefined))).toEqual([
      'materials 0 A secondDensity: Two densities give the expansion only where both are given with their temperature.',
    ]);
    expect(withA(two('1.09', '45', grows))).toEqual([
      'materials 0 A secondDensity: A second density and an expansion say the same thing twice: keep one of them.',
    ]);
    expect(withA(two('0.5', '45'))).toEqual([
      'materials 0 A secondDensity: The two densities of A lie further apart than 1 % per K: check them and their temperatures.',
    ]);
    expect(withA({ density: density('1.1', '200'), expansion: { value: '0.01', unit: '1/K' }, runAt: celsius('20') })).toEqual([
      'materials 0 A expansion: The expansion of A leaves it no volume at the temperatures given: check them and the expansion.',
    ]);
  });
});

describe('what is missing', () => {
  test('a density, for a ratio by weight: the side is named', () => {
    const missing = (place: string, name: string) =>
      `materials 0 ${place} density: The density of ${name} is missing: a ratio by weight needs all densities, or the sheet's ratio by volume as well.`;
    const known = { density: density('1.1') };
    expect(refused({ ratio: byWeight('2:1'), A: known })).toEqual([missing('B', 'B')]);
    expect(refused({ ratio: byWeight('2:1'), B: known })).toEqual([missing('A', 'A')]);
    expect(refused({ ratio: byWeight('2:1') })).toEqual([missing('A', 'A'), missing('B', 'B')]);
    const three = byWeight('4:1:1', { thirdInto: 'B' });
    expect(refused({ ratio: three, A: known, B: known, third: {} })).toEqual([missing('third', 'the third part')]);
  });
  test('the ratio, its parts, or its basis, which is never guessed', () => {
    const basis = 'Whether the mix ratio is by weight or by volume is missing; it is never guessed, the data sheet says it.';
    const parts = 'The mix ratio is missing: the data sheet of the material gives it.';
    expect(refused({})).toEqual([`materials 0 ratio: ${parts}`, `materials 0 ratio: ${basis}`]);
    expect(refused({ ratio: {} })).toEqual([`materials 0 ratio parts: ${parts}`, `materials 0 ratio basis: ${basis}`]);
    expect(refused({ ratio: { parts: '2:1' } })).toEqual([`materials 0 ratio basis: ${basis}`]);
    expect(refused({ ratio: { basis: 'weight' } })).toEqual([`materials 0 ratio parts: ${parts}`]);
  });
  test('both ratios on one basis, and a count of B that is not above 0', () => {
    expect(refused({ ratio: byVolume('2:1'), otherRatio: byVolume('2:1') })).toEqual([
      "materials 0 otherRatio basis: Both ratios are by volume: this one is the sheet's ratio on the other basis.",
    ]);
    for (const perHundredA of ['0', '-5']) {
      expect(refused({ ratio: { basis: 'volume', perHundredA } })).toEqual([
        `materials 0 ratio perHundredA: ${perHundredA} is out of range: the parts of B per 100 A must be above 0.`,
      ]);
    }
  });
});

describe('limits', () => {
  const limited = (definition: string, low: string, high: string, parts = '100:33') => ({
    ratio: byVolume(parts),
    limits: { definition, low, high },
  });
  test('100 : 33, allowed 30 to 40: -9.09091 and +21.21212 %, and the sentence of the sheet [glossary note on tolerances; arithmetic]', () => {
    const { limits, limitsWritten } = mixOf(limited('parts of B', '30', '40'));
    expectPrinted(100 * float(limits?.low ?? ONE), '-9.09091');
    expectPrinted(100 * float(limits?.high ?? ONE), '21.21212');
    expect(limitsWritten).toBe('30 to 40 parts of B');
  });
  test.each([
    ['% of B per A', '1', '2', 'low', 'The low limit 1 lies above the target, which is 0; a deviation below carries a minus sign.'],
    ['% of B per A', '-2', '-1', 'high', 'The high limit -1 lies below the target, which is 0.'],
    ['% of B per A', '-100', '2', 'low', 'The low limit -100 would leave no B: it must be above −100.'],
    ['% of A per B', '-100', '2', 'low', 'The low limit -100 would leave no A: it must be above −100.'],
    ['points of B in the total', '-25', '2', 'low', 'The low limit -25 would leave no B: it must be above −25.'],
    ['points of B in the total', '-5', '75', 'high', 'The high limit 75 would leave no A: it must be below 75.'],
    ['parts of B', '2', '4', 'low', 'The low limit 2 lies above the target, which is 1.'],
    ['parts of B', '0.5', '0.9', 'high', 'The high limit 0.9 lies below the target, which is 1.'],
    ['parts of B', '0', '2', 'low', 'The low limit 0 would leave no B: it must be above 0.'],
  ])('%s, %s to %s on 3 : 1: refused at "%s"', (definition, low, high, end, said) => {
    expect(refused(limited(definition, low, high, '3:1'))).toEqual([`materials 0 limits ${end}: ${said}`]);
  });
  test('just inside those they are taken, and they need not lie about the middle', () => {
    for (const [definition, low, high] of [
      ['% of B per A', '-99.9', '0'],
      ['% of B per A', '0', '5'],
      ['% of A per B', '-99.9', '1000'],
      ['points of B in the total', '-24.9', '74.9'],
      ['parts of B', '0.001', '1'],
    ] as const) {
      const { limits } = mixOf(limited(definition, low, high, '3:1'));
      expect(limits?.low.compare(0) ?? 1, definition).toBeLessThanOrEqual(0);
      expect(limits?.high.compare(0) ?? -1, definition).toBeGreaterThanOrEqual(0);
    }
  });
  test('none given: none made up', () => {
    const { limits, limitsWritten } = mixOf({ ratio: byVolume('2:1') });
    expect([limits, limitsWritten]).toEqual([null, null]);
  });
});

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

describe('laws', () => {
  const natural = fc.integer({ min: 1, max: 500 });
  const densityText = fc.integer({ min: 500, max: 2500 }).map((n) => `${n / 1000}`);
  const same = (a: Fraction, b: Fraction) => expect(exactText(a)).toBe(exactText(b));
  const parts = (a: number, b: number, da: string, db: string) => ({
    ratio: byWeight(`${a}:${b}`),
    A: { density: density(da) },
    B: { density: density(db) },
  });

  test('by weight → by volume → by weight returns exactly', () => {
    fc.assert(
      fc.property(natural, natural, densityText, densityText, (a, b, da, db) => {
        const run = mixOf(parts(a, b, da, db));
        const again = mixOf({ ...parts(a, b, da, db), ratio: byVolume(`1 : ${exactText(run.wantedBPerA)}`) });
        same(again.wantedBPerA, run.wantedBPerA);
        same(again.wantedBPerA.mul(again.densityBOverA.known ? again.densityBOverA.value : ONE), ratioOf(b, a));
      }),
    );
  });
  test('exchanging A and B inverts the wanted ratio', () => {
    fc.assert(
      fc.property(natural, natural, densityText, densityText, (a, b, da, db) => {
        same(mixOf(parts(b, a, db, da)).wantedBPerA, ONE.div(mixOf(parts(a, b, da, db)).wantedBPerA));
      }),
    );
  });
  test('B per 100 A says the same as 100 : B', () => {
    fc.assert(
      fc.property(natural, (b) => {
        const said = [byVolume(`100 : ${b}`), { basis: 'volume', perHundredA: String(b) }].map((ratio) => mixOf({ ratio }));
        expect(said.map((mix) => [exactText(mix.wantedBPerA), mix.sheet.written])).toEqual([
          [exactText(ratioOf(b, 100)), `100 : ${b} by volume`],
          [exactText(ratioOf(b, 100)), `100 : ${b} by volume`],
        ]);
      }),
    );
  });
});
