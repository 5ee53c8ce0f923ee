import { describe, expect, test } from 'vitest';
import { exactText, float } from '../../core/src/ratio.ts';
import {
  aPerB,
  byVolume,
  byWeight,
  celsius,
  density,
  exactly,
  expectPrinted,
  f,
  type Json,
  mixOf,
  notes,
  percentOff,
  planOf,
  refused,
} from './mixFixture.ts';

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

describe('what is taken for granted is noted at the very box that would say it', () => {
  const places = (material: Json) =>
    planOf(material).findings.map(({ check, severity, where, missing }) => [check, severity, where.slice(2).join(' '), missing]);
  const at25 = { density: density('1.1', '25'), runAt: celsius('25') };
  const open = { runAt: celsius('25') };

  test('where a ratio by volume holds, once for each side', () => {
    expect(places({ ratio: byVolume('2:1'), A: at25, B: at25 })).toEqual([
      ['material.referenceTemperature', 'notes', 'ratio at', true],
      ['material.referenceTemperature', 'notes', 'ratio at', true],
    ]);
  });
  test('the temperature of a density, of either side', () => {
    const loose = { density: density('1.1'), runAt: celsius('25') };
    expect(places({ ratio: byWeight('2:1'), A: loose, B: at25 })).toEqual([
      ['material.referenceTemperature', 'notes', 'A density at', true],
    ]);
    expect(places({ ratio: byWeight('2:1'), A: at25, B: loose })).toEqual([
      ['material.referenceTemperature', 'notes', 'B density at', true],
    ]);
  });
  test('the temperature it is run at', () => {
    expect(places({ ratio: byWeight('2:1'), A: at25, B: { density: density('1', '25') } })).toEqual([
      ['material.runTemperature', 'notes', 'B runAt', true],
    ]);
  });
  test('a third part, or its premix, that the ratio does not count', () => {
    const two = { ratio: byVolume('4:1', { at: celsius('25') }), A: open, B: open };
    const unused = (key: string) => ['material.third', 'notes', key, false];
    expect(places({ ...two, third: { name: 'Thinner' } })).toEqual([unused('third')]);
    expect(places({ ...two, premix: { density: density('1') } })).toEqual([unused('premix')]);
    expect(places({ ...two, third: {}, premix: {} })).toEqual([unused('third'), unused('premix')]);
  });
});
