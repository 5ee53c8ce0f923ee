import { describe, expect, test } from 'vitest';
import { lineAt } from '../../../core/src/help/fieldHelp.ts';
import { FIRST_CHANGE, isExample, nextStepIndex, type SeenSoFar } from '../../../core/src/help/firstChange.ts';
import { answer, offRatioText, ratioText, resolve } from '../../../core/src/index.ts';
import { isBlocked, planOption } from '../../../core/src/option.ts';
import { ONE } from '../../../core/src/ratio.ts';
import { fittedPumps } from '../../../core/src/train.ts';
import { say } from '../planFixture.ts';
import { demoFile } from '../sheet/demoSheet.ts';

const START: SeenSoFar = {
  page: 'options',
  machine: 'bench-1',
  material: 'e12',
  chosen: [{ driver: 23, driven: 25 }],
  workings: false,
  sheets: [],
  catchCount: 0,
  proved: [],
};
const sheet = (isFitted: boolean) => [{ id: 'sheet-0002', teeth: [{ driver: 23, driven: 25 }], isFitted }];

/** What each step is done by, from the example as it opens. */
const DONE: readonly Partial<SeenSoFar>[] = [
  { page: 'material' },
  { page: 'options' },
  { chosen: [{ driver: 21, driven: 23 }] },
  { chosen: [{ driver: 23, driven: 25 }] },
  { workings: true },
  { page: 'sheet' },
  { sheets: sheet(false) },
  { sheets: sheet(true) },
  { page: 'check' },
  { catchCount: 2 },
  { proved: ['sheet-0002'] },
];

describe('the first change', () => {
  test('goes on step by step, one for each thing done, and never back', () => {
    let seen = START;
    let at = nextStepIndex(0, seen);
    const steps = [at];
    for (const done of DONE) {
      seen = { ...seen, ...done };
      at = nextStepIndex(at, seen);
      steps.push(at);
    }
    expect(steps).toEqual([...DONE.keys(), DONE.length].map((step) => step + 1));
    expect(at).toBe(FIRST_CHANGE.length);
    expect(nextStepIndex(at, START)).toBe(FIRST_CHANGE.length);
  });
  test('asks for the machine only where another one is picked', () => {
    expect(nextStepIndex(0, { ...START, machine: 'bench-2' })).toBe(0);
    expect(nextStepIndex(0, { ...START, page: 'material' })).toBe(2);
  });
  test('waits where something else was done', () => {
    expect(nextStepIndex(3, { ...START, chosen: [{ driver: 22, driven: 24 }] })).toBe(3);
    expect(nextStepIndex(7, { ...START, page: 'sheet', sheets: [{ id: 's', teeth: [{ driver: 21, driven: 23 }], isFitted: true }] })).toBe(
      7,
    );
    expect(nextStepIndex(11, { ...START, page: 'check', sheets: sheet(true), proved: ['sheet-0001'] })).toBe(11);
  });
  test('is one of the invented example only', () => {
    expect(isExample(demoFile())).toBe(true);
    expect(isExample(null)).toBe(false);
    const mended = demoFile((file) => {
      file.shop.invented = false;
    });
    expect(isExample(mended)).toBe(false);
  });
  test('points at boxes that help knows', () => {
    for (const { place } of FIRST_CHANGE)
      if (place !== null) expect(lineAt(place.replaceAll('*', '0').replace(/\.0$/, '.net')), place).not.toBeNull();
  });
});

test('the figures that the steps say are those of the example', () => {
  const plan = resolve(demoFile(), { machine: 'bench-1', material: 'e12' }, say);
  if (!plan.ok) throw new Error(plan.findings[0].what);
  const of = (driver: number, driven: number) => planOption(plan.value, fittedPumps(plan.value), [{ driver, driven }], say);
  const said = FIRST_CHANGE.map(({ what }) => what).join(' ');
  const plain = (text: string) => text.replaceAll('\u00A0', ' ');
  expect(isBlocked(of(35, 38))).toBe(true);
  expect(said).toContain(`${plain(offRatioText(of(21, 23).offRatio, say, 3))} in 25 minutes`);
  expect(of(21, 23).work_s).toBe(25 * 60);
  expect(of(21, 23).changed).toBe(1);
  expect(said).toContain(plain(offRatioText(of(23, 25).offRatio, say, 3)));
  expect(said).toContain(plain(ratioText(ONE.div(plan.value.mix.wantedBPerA), say)));
  const best = answer(demoFile(), { selection: { machine: 'bench-1', material: 'e12' }, say });
  expect(best.ok && best.value.options[0]?.stages[0]?.teeth).toEqual({ driver: 23, driven: 25 });
});
