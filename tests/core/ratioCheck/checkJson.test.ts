// The documented JSON of a ratio check. Figures of the invented example: by hand from the weights where a comment or a title says how,
// the rest worked out apart from the program (demo.test.ts).
import { describe, expect, test } from 'vitest';
import { SCRIPT_SAY } from '../../../core/src/figuresJson.ts';
import type { CatchRow, RatioCheckRow } from '../../../core/src/file/ratioCheckRow.ts';
import { judge } from '../../../core/src/ratioCheck/judge.ts';
import { ratioCheckJson } from '../../../core/src/ratioCheckJson.ts';
import { furtherJson, inUnit, trendJson } from '../../../core/src/ratioCheckResultJson.ts';
import { demoFile } from './demoChecks.ts';

const file = demoFile();

/** A kept check of the example with this and that changed. */
function document(index: number, change: Partial<RatioCheckRow> = {}, workings = false): Record<string, unknown> {
  const row = file.ratioChecks[index];
  if (row === undefined) throw new RangeError('no such check');
  const judged = judge(file, { ...row, ...change }, ['ratioChecks', index], SCRIPT_SAY);
  if (!judged.ok) throw new RangeError(judged.findings[0].what);
  return ratioCheckJson(file, judged.value, judged.findings, workings);
}
const near = (number: number, places = 4) => expect.closeTo(number, places);
/** Any exact value whose double is near this. */
const about = (number: number, places = 4) => ({ exact: expect.stringMatching(/^-?\d+\/\d+$/), number: near(number, places) });
const exactly = (exact: string, number: number) => ({ exact, number });
const g = (value: string) => ({ value, unit: 'g' });
const cc = (value: string) => ({ value, unit: 'cc' });

describe('a kept check of the invented example', () => {
  const found = document(0);

  test('whose it is, and what was on the machine', () => {
    expect(found).toMatchObject({
      format: 'ratiowright ratio check',
      version: 1,
      shop: { name: file.shop.name, inventedExample: true },
      check: 'check-0001',
      date: '2026-09-15',
      by: null,
      machine: { id: 'bench-1', name: 'Bench 1' },
      material: { id: 'u40', name: 'U40 elastomer' },
      changeSheet: '0001',
      pumps: { A: 'pa12', B: 'pb6' },
      teeth: [{ driverTeeth: 21, drivenTeeth: 30 }],
      run: { motorTurns: exactly('20/1', 20) },
      scale: { step_g: exactly('1/10', 0.1), readings: 2, uncertainty_g: null },
      confidence_percent: 95,
      findings: [],
    });
    expect('figures' in found).toBe(false);
  });

  test('what was wanted: 41.8534 parts by weight, B per A by volume with 1.018088 and 1.215745 g/cc, limits of index 102 to 108 about 105', () => {
    expect(found.wanted).toEqual({
      written: '31.0 % NCO on OH 165, index 105',
      basis: 'weight',
      ratioBPerAByVolume: about(0.418534 * (1.018088 / 1.215745), 5),
      ratioBPerAByWeight: about(0.418534, 6),
      limits: {
        written: 'index 102 to 108',
        lowOffRatio_percent: exactly('-20/7', -20 / 7),
        highOffRatio_percent: exactly('20/7', 20 / 7),
      },
    });
  });

  test('every catch: 101.9 to 244.6 g is 1019/2446, and B is 1019/3465 of all', () => {
    const off = (0.4165985 / 0.4185336 - 1) * 100;
    expect(found.catches).toMatchObject([{ number: 1 }, { number: 2 }, { number: 3 }]);
    const [first] = found.catches as readonly unknown[];
    expect(first).toEqual({
      number: 1,
      leftOut: null,
      A: { mass_g: exactly('1223/5', 244.6), volume_cc: null },
      B: { mass_g: exactly('1019/10', 101.9), volume_cc: null },
      ratioBPerA: exactly('1019/2446', 1019 / 2446),
      shareOfB_percent: exactly('20380/693', 20380 / 693),
      offRatio_percent: about(off, 3),
      sense: 'B-lean',
      // two readings, each half a step off at most: 101.8/244.7 and 102.0/244.5
      byStep: { from_percent: about((101.8 / 244.7 / 0.4185336 - 1) * 100, 3), to_percent: about((102 / 244.5 / 0.4185336 - 1) * 100, 3) },
    });
  });

  test('the result: means 733.1/3 and 305.3/3 g, both ratios both ways round, Student’s 4.303 with two degrees of freedom [table]', () => {
    expect(found).toMatchObject({
      weighed: true,
      mean: { A_g: exactly('7331/30', 7331 / 30), B_g: exactly('3053/30', 3053 / 30) },
      ratioBPerAByWeight: exactly('3053/7331', 3053 / 7331),
      ratioAPerBByWeight: exactly('7331/3053', 7331 / 3053),
      ratioBPerAByVolume: about((3053 / 7331) * (1.018088 / 1.215745), 5),
      ratioAPerBByVolume: about((7331 / 3053) * (1.215745 / 1.018088), 4),
      offRatio: about(-0.00498, 5),
      offRatio_percent: about(-0.498, 3),
      sense: 'B-lean',
      interval: { from_percent: near(-0.658, 3), to_percent: near(-0.338, 3) },
      degreesOfFreedom: 2,
      quantile: near(4.3027, 4),
      // from 101.6/244.1 to 101.9/244.6, of the wanted ratio
      range_percent: about(((1019 / 2446 - 1016 / 2441) / 0.4185336) * 100, 4),
      verdict: 'pass',
      stable: true,
      unstable: [],
      further: null,
    });
    // of the three off-ratios −0.46236, −0.55212 and −0.47866 %
    expect(found.deviation_percent).toBeCloseTo(0.0478, 4);
    expect(found.reason).toContain('lies wholly inside the limits');
  });

  test('deliveries, the smallest catch and what would be best', () => {
    expect(found).toMatchObject({
      // 244.3667 g of 20 × 12 cc × 1.018088, 101.7667 g of 14 × 6 cc × 1.215745
      delivery: {
        A: { share_percent: about(100.0104, 3), uncertainty_percent: near(0.2592, 4) },
        B: { share_percent: about(99.6515, 3), uncertainty_percent: near(0.3846, 4) },
      },
      smallestCatch: { A_g: about(47.55, 2), B_g: about(19.9, 2) },
      proposal: {
        fittedOffRatio_percent: about(-0.4977, 4),
        best: { pumps: { A: 'pa12', B: 'pb6' }, teeth: [{ driverTeeth: 19, drivenTeeth: 27 }], partsChanged: 2 },
      },
    });
    const { proposal } = found as { readonly proposal: { readonly best: { readonly offRatio_percent: unknown } } };
    // 19 to 27 in place of 21 to 30: −0.49768 % times (19/27) / (21/30)
    expect(proposal.best.offRatio_percent).toEqual(about(((1 - 0.004976803) * (19 / 27 / (21 / 30)) - 1) * 100, 4));
  });

  test('every cause with its state', () => {
    const causes = found.causes as readonly Record<string, unknown>[];
    expect(causes.map(({ cause, state }) => `${cause} ${state}`)).toEqual([
      'cause.agree ruled out',
      'cause.drift ruled out',
      'cause.shortSide ruled out',
      'cause.swapped ruled out',
      'cause.basis ruled out',
      'cause.wrongTeeth ruled out',
      'cause.air not looked for',
      'cause.wear not looked for',
    ]);
    expect(causes[0]).toEqual({
      cause: 'cause.agree',
      title: 'Catches that disagree',
      state: 'ruled out',
      what: expect.stringMatching(/^The catches agree: they range over 0\.09\s%/),
      source: 'our choice: the range against the width between the limits, the interval against half of it',
    });
  });

  test('trends up to it: one value each, and nothing to be said of one', () => {
    const one = (value: number, from: number, to: number) => ({
      values: [
        {
          check: 'check-0001',
          date: '2026-09-15',
          value_percent: near(value, 3),
          interval: { from_percent: near(from, 3), to_percent: near(to, 3) },
          stable: true,
        },
      ],
      mean_percent: null,
      control: null,
      beyondControl: [],
      meetings: [],
    });
    expect(found.trends).toEqual({
      deliveryA: one(100.01, 99.751, 100.27),
      deliveryB: one(99.651, 99.267, 100.036),
      offRatio: one(-0.498, -0.658, -0.338),
    });
  });
});

describe('what is otherwise in other checks', () => {
  test('the third: not proven, not stable, the cause comes first and nothing is proposed', () => {
    const third = document(2);
    expect(third).toMatchObject({
      check: 'check-0003',
      verdict: 'not proven',
      stable: false,
      unstable: ['interval wider than half of that'],
      further: { kind: 'find the cause' },
      proposal: { none: 'the catches do not agree' },
    });
    const { deliveryB } = third.trends as { readonly deliveryB: Record<string, unknown> };
    // three values 99.65, 98.97 and 98.02 %; individuals chart: mean ± 2.66 times the mean step [from memory]
    const step = (99.6515 - 98.9697 + (98.9697 - 98.0219)) / 2;
    expect(deliveryB).toMatchObject({
      values: [{ stable: true }, { stable: true }, { stable: false }],
      mean_percent: near(98.88, 1),
      control: { from_percent: near(98.88 - 2.66 * step, 1), to_percent: near(98.88 + 2.66 * step, 1) },
      beyondControl: [],
    });
  });

  test('seconds with the dial: the speed of the motor beside them', () => {
    // 90 rpm at 100 % of the dial
    const { run } = document(0, { run: { time: { value: '20', unit: 's' }, dial: { value: '50', unit: '%' } } });
    expect(run).toEqual({ time_s: exactly('20/1', 20), motorSpeed_rpm: exactly('45/1', 45) });
  });

  test('nobody counted, and no earlier delivery then: null', () => {
    const row = file.ratioChecks[0];
    const { run: _, ...uncounted } = row ?? expect.unreachable();
    const judged = judge(file, uncounted, ['ratioChecks', 0], SCRIPT_SAY);
    if (!judged.ok) return expect.unreachable();
    expect(ratioCheckJson(file, judged.value, [], false)).toMatchObject({ run: null, delivery: { A: null, B: null } });
  });

  test('who it was by, a check that is not kept, a sheet and names that are gone', () => {
    const { changeSheet: _, ...row } = file.ratioChecks[0] ?? expect.unreachable();
    const judged = judge(file, { ...row, id: 'new', by: 'Ann' }, [], SCRIPT_SAY);
    if (!judged.ok) return expect.unreachable();
    const gone = { ...file, machines: [], materials: [] };
    expect(ratioCheckJson(gone, judged.value, [], false)).toMatchObject({
      check: null,
      by: 'Ann',
      changeSheet: null,
      machine: { id: 'bench-1', name: null },
      material: { id: 'u40', name: null },
    });
  });

  test('a scale with its own uncertainty, read once', () => {
    const { scale } = document(0, { scale: { step: g('0.5'), tared: true, uncertainty: g('0.2') } });
    expect(scale).toEqual({ step_g: exactly('1/2', 0.5), readings: 1, uncertainty_g: exactly('1/5', 0.2) });
  });

  test('a catch that is left out has its weights and its reason, and no figures', () => {
    const [first, second, third] = file.ratioChecks[0]?.catches ?? [];
    if (first === undefined || second === undefined || third === undefined) return expect.unreachable();
    const { catches } = document(0, { catches: [first, { ...second, leftOut: 'spilt' }, third] });
    expect(catches).toMatchObject([{ ratioBPerA: {} }, {}, { number: 3, ratioBPerA: exactly('509/1222', 509 / 1222) }]);
    expect((catches as readonly unknown[])[1]).toEqual({
      number: 2,
      leftOut: 'spilt',
      A: { mass_g: exactly('2441/10', 244.1), volume_cc: null },
      B: { mass_g: exactly('508/5', 101.6), volume_cc: null },
    });
  });

  test('read in cylinders: means in cubic centimetres, 84 of B on 240 of A are 7/20, and the weights by the densities', () => {
    const caught = (a: string, b: string): CatchRow => ({ A: { volume: cc(a) }, B: { volume: cc(b) } });
    const found = document(0, { catches: [caught('239', '84'), caught('241', '84')] });
    expect(found).toMatchObject({
      weighed: false,
      mean: { A_cc: exactly('240/1', 240), B_cc: exactly('84/1', 84) },
      ratioBPerAByVolume: exactly('7/20', 0.35),
      ratioAPerBByVolume: exactly('20/7', 20 / 7),
      ratioBPerAByWeight: about(0.35 * (1.215745 / 1.018088), 5),
      catches: [{ A: { mass_g: null, volume_cc: exactly('239/1', 239) }, B: { mass_g: null, volume_cc: exactly('84/1', 84) } }, {}],
    });
  });

  test('one catch: no interval, no spread, and neither stable nor not', () => {
    const found = document(0, { catches: file.ratioChecks[0]?.catches.slice(0, 1) ?? [] });
    expect(found).toMatchObject({ interval: null, degreesOfFreedom: 0, quantile: null, deviation_percent: null, stable: null });
    expect(found.range_percent).toEqual(exactly('0/1', 0));
  });

  test('without limits there is no verdict, and nothing is small enough', () => {
    const { limits: _, limitsWritten: __, ...terms } = file.ratioChecks[0]?.terms ?? expect.unreachable();
    expect(document(0, { terms })).toMatchObject({ verdict: 'no limits', stable: null, smallestCatch: null, wanted: { limits: null } });
  });

  test('without densities there is no weight wanted', () => {
    const { densityBOverA: _, ...terms } = file.ratioChecks[0]?.terms ?? expect.unreachable();
    const caught = (a: string, b: string): CatchRow => ({ A: { volume: cc(a) }, B: { volume: cc(b) } });
    const found = document(0, { terms: { ...terms, density: {} }, catches: [caught('239', '84'), caught('241', '84')] });
    expect(found).toMatchObject({ ratioBPerAByWeight: null, ratioAPerBByWeight: null, wanted: { ratioBPerAByWeight: null } });
  });

  test('with workings every figure tells how it came about', () => {
    const { figures } = document(0, {}, true) as { readonly figures: Record<string, unknown> };
    expect(Object.keys(figures)).toEqual(['ratio', 'interval', 'delivery', 'smallest']);
  });
});

describe('what would settle it, in grams or in cubic centimetres', () => {
  const amount = { A: 0.25, B: 0.1 };
  test('larger catches', () => {
    const larger = { kind: 'larger catches', amount, toward: 'pass' } as const;
    expect(furtherJson(larger, true)).toEqual({ kind: 'larger catches', A_g: 250, B_g: 100, toward: 'pass' });
    expect(furtherJson({ ...larger, amount: { A: 0.00025, B: 0.0001 } }, false)).toEqual({
      kind: 'larger catches',
      A_cc: 250,
      B_cc: near(100, 9),
      toward: 'pass',
    });
  });
  test('more catches as they are', () => {
    expect(furtherJson({ kind: 'more catches', catches: 2, toward: 'fail' }, true)).toEqual({
      kind: 'more catches',
      catches: 2,
      toward: 'fail',
    });
  });
});

test('a trend with a line that meets a limit: days as dates, shares as per cent; an end that is not known is null', () => {
  const values = [{ check: 'c', date: '1970-01-11', value: 0.98, interval: null, stable: true }];
  const chart = { mean: 0.99, low: 0.97, high: 1.01, beyond: [0], movingRange: 0.01, runs: [] };
  const meetings = [
    { limit: 0.95, x: 30, from: 20, to: null },
    { limit: 1.02, x: 31, from: null, to: 40 },
  ];
  expect(trendJson({ values, chart, line: null, meetings })).toEqual({
    values: [{ check: 'c', date: '1970-01-11', value_percent: 98, interval: null, stable: true }],
    mean_percent: 99,
    control: { from_percent: 97, to_percent: 101 },
    beyondControl: [0],
    meetings: [
      { limit_percent: 95, date: '1970-01-31', earliest: '1970-01-21', latest: null },
      { limit_percent: 102, date: '1970-02-01', earliest: null, latest: '1970-02-10' },
    ],
  });
});

test('what is not given is null', () => expect(inUnit({ known: false }, 'mass', 'g')).toBeNull());
