import { describe, expect, test } from 'vitest';
import type { CatchRow } from '../../../core/src/file/ratioCheckRow.ts';
import { float, ONE, whole } from '../../../core/src/ratio.ts';
import { beforeCheck } from '../../../core/src/ratioCheck/beforeCheck.ts';
import { keptChecks } from '../../../core/src/ratioCheck/history.ts';
import { checkRowOf, subjectFitted, subjectOfSheet } from '../../../core/src/ratioCheck/newCheck.ts';
import { scaleOf } from '../../../core/src/ratioCheck/readCheck.ts';
import { demoFile, demoPlan } from './demoChecks.ts';

const SAY = { decimal: '.', system: 'metric' } as const;
const g = (value: string) => ({ value, unit: 'g' });
const SCALE = { step: g('0.1'), tared: false };
const CATCHES: readonly CatchRow[] = [{ A: { net: g('244.6') }, B: { net: g('101.9') } }];

describe('what is proved', () => {
  test.each(['0001', '1', '01', ' 1 '])('change sheet "%s"', (number) => {
    const subject = subjectOfSheet(demoFile(), number, SAY);
    expect(subject.ok && subject.value.sheet?.id).toBe('sheet-0001');
    expect(subject.ok && [subject.value.plan.machine.id, subject.value.plan.material.id]).toEqual(['bench-1', 'u40']);
  });

  test('the pumps and teeth that the sheet put on, though others are fitted by now', () => {
    const file = demoFile();
    const stage = file.machines[0]?.stages[0];
    if (stage === undefined) throw new Error('no stage');
    stage.driver.teeth = 25;
    const subject = subjectOfSheet(file, '1', SAY);
    if (!subject.ok) throw new Error(subject.findings[0].what);
    const row = checkRowOf(file, subject.value, { date: '2026-11-29', scale: SCALE, catches: CATCHES });
    expect(row.ok && row.value).toMatchObject({ mounted: { teeth: [{ driver: 21, driven: 30 }] }, changeSheet: 'sheet-0001' });
    // 21 to 30: pump B turns 0.7 times for each turn of the motor
    expect(row.ok && row.value.terms.pumpTurns.B).toBe('7/10');
  });

  test('no such sheet, two of one number, a machine that has changed: each is said', () => {
    const said = (change: (file: ReturnType<typeof demoFile>) => void, number: string) => {
      const file = demoFile();
      change(file);
      const subject = subjectOfSheet(file, number, SAY);
      return subject.ok ? '' : subject.findings[0].what;
    };
    expect(said(() => undefined, '2')).toBe('There is no change sheet 2; the file keeps: 0001.');
    expect(
      said((file) => {
        file.changeSheets = [];
      }, '1'),
    ).toBe('There is no change sheet 1; the file keeps none.');
    const twice = (file: ReturnType<typeof demoFile>) => {
      const [sheet] = file.changeSheets;
      if (sheet !== undefined) file.changeSheets.push({ ...sheet, id: 'other' });
    };
    expect(said(twice, '1')).toContain('stands in the file 2 times');
    const changed = (file: ReturnType<typeof demoFile>) => {
      const [sheet] = file.changeSheets;
      if (sheet !== undefined) sheet.mounted.pumps.B = 'gone';
    };
    expect(said(changed, '1')).toContain('Machine Bench 1 has other stages or pumps');
  });

  test('a new check of today says of the demo’s first catches what the kept one says', () => {
    const file = demoFile();
    const [kept] = file.ratioChecks;
    const subject = subjectFitted(file, { machine: 'bench-1', material: 'u40' }, SAY);
    if (!subject.ok || kept === undefined) throw new Error('no subject');
    const row = checkRowOf(file, subject.value, {
      date: kept.date,
      run: { turns: { value: '20', unit: '' } },
      scale: SCALE,
      catches: kept.catches,
    });
    expect(row.ok && row.value.terms).toEqual(kept.terms);
    expect(row.ok && file.ratioChecks.some(({ id }) => id === row.value.id)).toBe(false);
  });

  test('what no file may hold is refused with its place', () => {
    const file = demoFile();
    const subject = subjectFitted(file, { machine: 'bench-1', material: 'u40' }, SAY);
    if (!subject.ok) throw new Error('no subject');
    const row = checkRowOf(file, subject.value, { date: '2026-02-30', scale: { step: g('0'), tared: false }, catches: [] });
    expect(row.ok ? [] : row.findings.map(({ where }) => where.join('.'))).toEqual(['date', 'scale.step', 'catches']);
  });
});

describe('before the first catch', () => {
  const earlier = keptChecks(demoFile().ratioChecks);
  const wish = { motorTurns: whole(20), scale: scaleOf(SCALE), confidence: 0.95 };

  test('20 turns of U40 on Bench 1, by hand from displacement, teeth and density', () => {
    const found = beforeCheck(demoPlan(), earlier, wish);
    const { A, B } = found.expected.sides;
    const grams = (of: typeof A) => (of.mass_kg.known ? 1000 * float(of.mass_kg.value) : Number.NaN);
    // 1.03 / (1 + 0.00078 × 15) and 1.22 / (1 + 0.0007 × 5)
    expect(grams(A)).toBeCloseTo(20 * 12 * (1.03 / 1.0117), 6);
    expect(grams(B)).toBeCloseTo(20 * 0.7 * 6 * (1.22 / 1.0035), 6);
    expect(float(A.pumpTurns)).toBe(20);
    expect(float(B.pumpTurns)).toBe(14);
    expect(1000 * float(found.smallest?.A.value ?? ONE)).toBeCloseTo(47.55, 2);
    // 47.55 g of 12.217 g a turn, 19.90 g of 5.106 g a turn: 3.9 turns of each
    expect(found.leastTurns).toBe(4);
    expect(found.catchesWorthMaking).toBe(3);
    expect(found.repeatability).toBeCloseTo(0.00051, 5);
  });

  test('catches that repeat badly are to be made more often; half a turn is half as much', () => {
    const wild = earlier.slice(0, 1).map((one) => ({ ...one, evaluation: { ...one.evaluation, deviation: 0.01 } }));
    expect(beforeCheck(demoPlan(), wild, wish).catchesWorthMaking).toBeGreaterThan(3);
    const half = beforeCheck(demoPlan(), [], { ...wish, motorTurns: ONE.div(whole(2)) });
    expect(half.expected.sides.A.volume_m3.mul(whole(40)).equals(beforeCheck(demoPlan(), [], wish).expected.sides.A.volume_m3)).toBe(true);
  });

  test('without limits nothing says what is small enough', () => {
    const plan = demoPlan();
    const found = beforeCheck({ ...plan, mix: { ...plan.mix, limits: null } }, earlier, wish);
    expect([found.smallest, found.leastTurns, found.catchesWorthMaking, found.expected.limitsOnB]).toEqual([null, null, null, null]);
  });
});
