import { describe, expect, test } from 'vitest';
import {
  checklistSummary,
  loadSummary,
  pumpSummary,
  tankSummary,
  usualServiceFactors,
  wantedSummary,
  workSummary,
} from '../../core/src/machineSummary.ts';

const of = (value: string, unit: string) => ({ value, unit });

describe('a group of a machine in one line, as typed [our choice of words]', () => {
  test('nothing given says so', () => {
    expect([wantedSummary({}), loadSummary({ A: {}, B: {} }), tankSummary({ A: {}, B: {} }), pumpSummary({})]).toEqual(
      Array(4).fill('nothing given'),
    );
    expect([workSummary({}), checklistSummary([])]).toEqual(['starting values', 'no lines of your own']);
  });

  test('wanted: a flow or a shot, and the batch', () => {
    expect(wantedSummary({ wantedFlow: of('1000', 'cc/min') })).toBe('1000 cc/min');
    const wantedShot = { amount: of('400', 'g'), time: of('6', 's') };
    expect(wantedSummary({ wantedShot, batch: { of: 'mix', amount: of('60', 'kg') } })).toBe('400 g in 6 s, batch 60 kg of the mix');
    expect(wantedSummary({ batch: { of: 'A', amount: of('40', 'L') } })).toBe('batch 40 L of A');
  });

  test('load: a unit that both sides share stands once', () => {
    const sides = { A: { pressure: of('28', 'bar') }, B: { pressure: of('14', 'bar') } };
    expect(loadSummary({ ...sides, serviceFactor: of('1.3', '') })).toBe('28 and 14 bar, service factor 1.3');
    expect(loadSummary({ ...sides, B: { pressure: of('200', 'psi') } })).toBe('28 bar and 200 psi');
    expect(loadSummary({ A: {}, B: { mechanicalEfficiency: of('0.85', '') } })).toBe('efficiency B 0.85');
    expect(loadSummary({ A: { pressure: of('28', 'bar') }, B: {} })).toBe('A 28 bar');
  });

  test('tanks and mixer', () => {
    expect(tankSummary({ A: { tank: { fill: of('40', 'L') } }, B: { tank: { fill: of('20', 'L') } } })).toBe('fill 40 and 20 L');
    expect(tankSummary({ A: { tank: { lowMark: of('6', 'L') } }, B: {}, mixerVolume: of('35', 'cc') })).toBe('low mark A 6 L, mixer 35 cc');
  });

  test('work, checklist and pump', () => {
    expect(workSummary({ minutes: { sprocket: of('15', 'min') }, catchTurns: 20 })).toBe('sprocket 15 min, 20 turns a catch');
    const minutes = { sprocket: of('15', 'min'), chainLength: of('10', 'min'), centre: of('5', 'min'), pump: of('1', 'h') };
    expect(workSummary({ minutes })).toBe('sprocket 15 min, chain length 10 min, centre 5 min, pump 1 h');
    expect(checklistSummary(['Seal cups full.'])).toBe('1 of 6 lines');
    expect(checklistSummary(['Seal cups full.', '', ' '])).toBe('3 of 6 lines, 2 of them empty');
    expect(
      pumpSummary({
        pressureLimit: of('100', 'bar'),
        gear: { teeth: 12 },
        measuredDelivery: { value: of('98.5', '%'), uncertainty: of('0.4', '%') },
      }),
    ).toBe('limit 100 bar, gear of 12 teeth, delivers 98.5 ± 0.4\u00A0%');
  });
});

test('the usual service factors beside their box [ASME B29.1, supplementary information, from memory: 1.0, 1.3 and 1.5]', () => {
  expect(usualServiceFactors({ decimal: ',', system: 'metric' }).match(/\d,\d/g)).toEqual(['1,0', '1,3', '1,5']);
});
