// The invented demo shop. Its expected answers were worked out apart from this program; figures are rounded to the places shown,
// so each may differ by half a unit of its last place. They show that the parts fit together, not that the parts are true.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { type Answer, answer, asSheetCounts, type PlannedOption, readShopFile, type Selection } from '../../core/src/index.ts';
import { exactText, float, ONE } from '../../core/src/ratio.ts';

const say = { decimal: '.', system: 'metric' } as const;

function ask(selection: Selection, count = false): Answer {
  const file = readShopFile(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
  if (!file.ok) throw new Error(JSON.stringify(file.findings));
  const outcome = answer(file.value, { selection, say, count });
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.findings));
  return outcome.value;
}

const teeth = (option: PlannedOption): string => option.stages.map((stage) => `${stage.teeth.driver} to ${stage.teeth.driven}`).join(', ');
const exactAPerB = (option: PlannedOption): string => exactText(ONE.div(option.bPerA)).replace('/', ':');
const percent = (option: PlannedOption): number => 100 * float(option.offRatio);

function expectNear(value: number | null | undefined, printed: string): void {
  const places = printed.split('.')[1]?.length ?? 0;
  expect(value).not.toBeNull();
  expect(Math.abs(Number(value) - Number(printed)), `${value} against ${printed}`).toBeLessThanOrEqual(0.5000001 * 10 ** -places);
}

/** teeth, R exact, B per 100 A as the sheet counts, off-ratio %, parts, minutes, then pitches, centre, travel, wrap of the one stage */
type Row = readonly [string, string, string, string, number, number, number, string, string, string];

const E12_TABLE: readonly Row[] = [
  ['23 to 25', '50:23', '38.871', '-0.075', 2, 37, 64, '253.97', '-2.56', '178.2'],
  ['22 to 24', '24:11', '38.730', '-0.437', 2, 37, 64, '260.32', '3.79', '178.2'],
  ['25 to 27', '54:25', '39.121', '0.569', 2, 27, 66, '253.97', '-2.56', '178.2'],
  ['32 to 35', '35:16', '38.630', '-0.695', 2, 37, 74, '257.10', '0.57', '177.3'],
  ['21 to 23', '46:21', '38.577', '-0.830', 1, 25, 62, '253.97', '-2.56', '178.2'],
];
const FITTED: Row = ['21 to 30', '20:7', '29.576', '-23.970', 0, 0, 66, '256.53', '0.00', '171.9'];
const L5_BOUGHT: readonly Row[] = [
  ['14 to 35', '5:1', '20.000', '0', 2, 27, 66, '260.05', '3.52', '161.3'],
  ['15 to 37', '74:15', '20.270', '1.351', 2, 27, 66, '250.04', '-6.49', '159.6'],
];

function expectRow(found: Answer, option: PlannedOption | undefined, row: Row): void {
  const [wheels, ratio, perHundred, off, parts, minutes, pitches, centre, travel, wrap] = row;
  if (option === undefined) throw new Error(`no option where ${wheels} is expected`);
  const stage = option.stages[0];
  expect(teeth(option)).toBe(wheels);
  expect(exactAPerB(option)).toBe(ratio);
  expectNear(float(asSheetCounts(found.plan, option.bPerA)), perHundred);
  expectNear(percent(option), off);
  expect(option.changed).toBe(parts);
  expect(option.work_s / 60).toBe(minutes);
  expect(stage?.fit.loop?.pitches).toBe(pitches);
  expectNear(1000 * (stage?.fit.loop?.centre_m ?? Number.NaN), centre);
  expectNear(1000 * (stage?.travel_m ?? Number.NaN), travel);
  expectNear(((stage?.fit.loop?.wrap_rad ?? Number.NaN) * 180) / Math.PI, wrap);
}

describe('E12 on Bench 1 (invented example)', () => {
  const found = ask({ machine: 'bench-1', material: 'e12' }, true);

  test('target by volume and running densities', () => {
    const { mix } = found.plan;
    expectNear(float(ONE.div(mix.wantedBPerA)), '2.17229');
    expectNear(mix.density_kg_per_m3.A.known ? float(mix.density_kg_per_m3.A.value) / 1000 : null, '1.14790');
    expectNear(mix.density_kg_per_m3.B.known ? float(mix.density_kg_per_m3.B.value) / 1000 : null, '0.97000');
    expect(mix.limits && [exactText(mix.limits.low), exactText(mix.limits.high)]).toEqual(['-1/50', '1/50']);
  });
  test('the first five options, row for row', () => {
    E12_TABLE.forEach((row, index) => {
      expectRow(found, found.options[index], row);
    });
  });
  test('the fitted set-up, 21 to 30, is far outside', () => {
    expectRow(found, found.fitted, FITTED);
    expect(found.fitted.inside).toBe(false);
  });
  test('289 ways, 242 buildable, 195 distinct ratios, 10 inside the limits', () => {
    expect(found.counts).toEqual({ ways: 289, buildable: 242, distinctRatios: 195, inside: 10 });
    expect(found.options.filter((option) => option.inside).length).toBe(10);
  });
  test('best for one part and for two', () => {
    expect(found.best.map(({ changed, option, noGain }) => [changed, teeth(option), noGain])).toEqual([
      [0, '21 to 30', false],
      [1, '21 to 23', false],
      [2, '23 to 25', false],
    ]);
  });
  test('blocked and tempting: 35 to 38 by the guard with the chain on; the bare teeth would pass', () => {
    expect(found.blocked.options.map(teeth)).toEqual(['35 to 38']);
    const tempting = found.blocked.options[0];
    if (tempting === undefined) throw new Error('no blocked option');
    expect(exactAPerB(tempting)).toBe('76:35');
    expectNear(percent(tempting), '0.040');
    const reasons = tempting.findings.filter((finding) => finding.severity === 'blocks');
    expect(reasons.map((finding) => [finding.check, finding.where])).toEqual([
      ['slot.guard', ['machines', 0, 'stages', 0, 'driven', 'guard']],
    ]);
    expectNear(reasons[0]?.figure?.value, '165.9');
    expectNear(1000 * (tempting.stages[0]?.fit.driven.outsideDiameter_m ?? Number.NaN), '160.9');
    expect(reasons[0]?.limit).toEqual({ value: 162, unit: 'mm' });
    expect(found.blocked.fewestChecks).toEqual([]);
  });
});

describe('U40 and L5 on Bench 1 (invented example)', () => {
  test('U40: the fitted 21 to 30 first, 19 to 27 next', () => {
    const found = ask({ machine: 'bench-1', material: 'u40' });
    expect(found.options.slice(0, 2).map(teeth)).toEqual(['21 to 30', '19 to 27']);
    expectNear(percent(found.fitted), '-0.139');
    expectNear(found.options[1] && percent(found.options[1]), '0.389');
  });
  test('L5: the closest buildable is outside; inside only behind the guard', () => {
    const found = ask({ machine: 'bench-1', material: 'l5' });
    expect(exactText(found.plan.mix.wantedBPerA)).toBe('1/5');
    expect(found.options.map((option) => option.inside)).not.toContain(true);
    const first = found.options[0];
    expect(first && teeth(first)).toBe('15 to 35');
    expectNear(first && percent(first), '7.14');
    expect(found.blocked.options.map(teeth)).toEqual(['15 to 38']);
    expectNear(found.blocked.options[0] && percent(found.blocked.options[0]), '-1.316');
    expect(found.blocked.fewestChecks).toEqual([['slot.guard']]);
  });
  test('L5 with one wheel to buy: two ways, both with a small driver', () => {
    const found = ask({ machine: 'bench-1', material: 'l5', purchases: 1, teeth: { from: 13, to: 40 } });
    L5_BOUGHT.forEach((row, index) => {
      const option = found.options[index];
      expectRow(found, option, row);
      expect(option?.purchases).toBe(1);
      expect(option?.findings.filter((finding) => finding.severity === 'warns').map((finding) => finding.check)).toContain('slot.fewTeeth');
    });
    expect(found.options.filter((option) => option.inside).length).toBe(2);
    const forty = found.blocked.options.find((option) => teeth(option) === '16 to 40');
    expectNear(forty?.findings[0]?.figure?.value, '173.9');
  });
});

describe('Bench 2, two stages (invented example)', () => {
  const best = (found: Answer, parts: number) => found.best.find((one) => one.changed === parts);
  const pitches = (option: PlannedOption) => option.stages.map((stage) => stage.fit.loop?.pitches);
  const centres = (option: PlannedOption) => option.stages.map((stage) => 1000 * (stage.fit.loop?.centre_m ?? Number.NaN));

  /** material, parts (null: best of all), teeth, R, off-ratio %, minutes, pitches, centres */
  const ROWS = [
    ['e12', null, '27 to 17, 20 to 23', '391:180', '0.0031', 27, [60, 64], ['240.45', '202.36']],
    ['e12', 1, '38 to 24, 20 to 23', '207:95', '-0.3056', 25, [70, 64], ['246.02', '202.36']],
    ['u40', null, '22 to 32, 26 to 17', '408:143', '0.0006', 64, [66, 64], ['246.82', '201.95']],
    ['u40', 1, '20 to 24, 20 to 16', '72:25', '-0.9318', 25, [60, 60], ['241.16', '199.93']],
    ['u40', 2, '20 to 20, 20 to 19', '57:20', '0.1110', 37, [60, 62], ['252.00', '202.40']],
    ['u40', 3, '19 to 22, 28 to 23', '759:266', '-0.0077', 52, [60, 68], ['250.75', '202.26']],
    ['l5', null, '18 to 24, 20 to 25', '5:1', '0', 40, [60, 66], ['247.35', '206.00']],
    ['l5', 1, '20 to 24, 20 to 28', '126:25', '-0.7937', 25, [60, 66], ['241.16', '199.66']],
  ] as const;

  test.each(ROWS)('%s, parts %s: %s', (material, parts, wheels, ratio, off, minutes, links, distances) => {
    const found = ask({ machine: 'bench-2', material });
    const option = parts === null ? found.options[0] : best(found, parts)?.option;
    if (option === undefined) throw new Error('no option');
    expect(teeth(option)).toBe(wheels);
    expect(exactAPerB(option)).toBe(ratio);
    expectNear(percent(option), off);
    expect(option.work_s / 60).toBe(minutes);
    expect(pitches(option)).toEqual(links);
    centres(option).forEach((centre, index) => {
      expectNear(centre, distances[index] ?? '');
    });
  });
  test('L5: 20 to 24, 18 to 25 is as exact and quicker, yet second; more parts are no gain; a lent-out wheel blocks by quantity', () => {
    const found = ask({ machine: 'bench-2', material: 'l5' });
    const second = found.options[1];
    expect(second && [teeth(second), second.changed, second.work_s / 60]).toEqual(['20 to 24, 18 to 25', 2, 27]);
    expect([3, 4].map((parts) => best(found, parts)?.noGain)).toEqual([true, true]);
    expect(best(found, 2)?.noGain).toBe(false);
    const lentOut = found.blocked.options.find((option) => option.stages[1]?.teeth.driver === 15);
    expect(lentOut?.findings[0]?.check).toBe('option.quantity');
  });
});
