import { existsSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { type Ran, ratiowright } from './run.ts';

const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-check-'));
const written = (name: string, text: string): string => {
  const place = path.join(folder, name);
  writeFileSync(place, text);
  return place;
};
const DEMO = ['ratio-check', 'demo.ratiowright'] as const;
const SCALE = ['--step', '0.1g', '--turns', '20', '--date', '2026-11-29'] as const;
const first = written('first.csv', 'A net g;B net g\n244,6;101,9\n244,1;101,6\n244,4;101,8\n');

interface Percent {
  readonly number: number;
}
interface CheckJson {
  readonly check: string | null;
  readonly verdict: string;
  readonly stable: boolean | null;
  readonly unstable: readonly string[];
  readonly offRatio_percent: Percent;
  readonly interval: { readonly from_percent: number; readonly to_percent: number } | null;
  readonly ratioAPerBByWeight: Percent;
  readonly ratioAPerBByVolume: Percent;
  readonly deviation_percent: number | null;
  readonly further: { readonly kind: string } | null;
  readonly catches: readonly {
    readonly offRatio_percent: Percent;
    readonly shareOfB_percent: Percent;
    readonly byStep: { readonly from_percent: Percent; readonly to_percent: Percent } | null;
  }[];
  readonly delivery: Record<'A' | 'B', { readonly share_percent: Percent; readonly uncertainty_percent: number | null } | null>;
  readonly causes: readonly { readonly cause: string; readonly state: string; readonly what: string }[];
  readonly proposal: { readonly none?: string; readonly best?: { readonly teeth: readonly unknown[] } | null };
  readonly figures: Record<string, Record<string, { readonly working: unknown }>>;
}
const jsonOf = ({ out }: Ran): CheckJson => JSON.parse(out) as CheckJson;

describe('the invented example [worked out apart from the program]', () => {
  test('new catches for change sheet 1: 0.50 % B-lean, −0.66 to −0.34 %, pass, exit 0', () => {
    const ran = ratiowright(...DEMO, '--sheet', '1', '--catches', first, ...SCALE);
    expect([ran.exit, ran.err]).toEqual([0, '']);
    for (const said of [
      'Change sheet 0001: pump A PA12, pump B PB6; s1 21 to 30',
      '= PASS. The interval, −0.66 to −0.34 %, lies wholly inside the limits',
      'By weight | 2.4012 : 1',
      'Off-ratio | 0.50 % B-lean',
      'off-ratio is (B per A made) / (B per A wanted) − 1',
      'Pump B delivered | 99.65 % ± 0.38 %',
      'Smallest catch | A 47.6 g, B 19.9 g',
      'Ruled out: ',
    ])
      expect(ran.out).toContain(said);
  });

  test.each([
    ['check-0001', 0, 'pass', true, -0.5, -0.66, -0.34, 2.4012, 99.65],
    ['check-0002', 0, 'pass', true, -1.18, -1.35, -1.01, 2.4179, 98.97],
    ['check-0003', 1, 'not proven', false, -2.06, -4.55, 0.38, 2.4396, 98.02],
  ] as const)('kept %s: exit %i, %s', (id, exit, verdict, stable, off, from, to, ratio, B) => {
    const ran = ratiowright(...DEMO, '--check', id, '--json');
    const found = jsonOf(ran);
    expect([ran.exit, ran.err, found.check, found.verdict, found.stable]).toEqual([exit, '', id, verdict, stable]);
    expect(found.offRatio_percent.number).toBeCloseTo(off, 2);
    expect(found.interval?.from_percent).toBeCloseTo(from, 2);
    expect(found.interval?.to_percent).toBeCloseTo(to, 2);
    expect(found.ratioAPerBByWeight.number).toBeCloseTo(ratio, 4);
    expect(found.delivery.B?.share_percent.number).toBeCloseTo(B, 2);
    expect(found.proposal.none).toBe(stable ? undefined : 'the catches do not agree');
  });

  test('before: what to catch, the limits of B, the smallest catch, how many', () => {
    const ran = ratiowright(...DEMO, '--sheet', '0001', '--before', '--step', '0.1g', '--turns', '20');
    expect([ran.exit, ran.err]).toEqual([0, '']);
    // 20 × 12 cc × 1.018088 g/cc; 14 × 6 cc × 1.215745 g/cc; B wanted is A / 2.38929, limits ±1/35 of that
    expect(ran.out).toContain('Expected: A 244.3 g, B 102.1 g\nWith that A the limits on B are 99.3 g to 105.2 g\n');
    expect(ran.out).toContain('Smallest catch worth making on this scale: A 47.6 g, B 19.9 g, from 4 turns on');
    expect(ran.out).toContain('Make 3 catches.');
    const tared = ratiowright(...DEMO, '--sheet', '1', '--before', '--step', '0.1g', '--tared', '--json');
    const { smallestCatch, repeatability_percent } = JSON.parse(tared.out);
    expect(smallestCatch.A_g.number).toBeCloseTo(47.55 / 2, 2);
    expect(repeatability_percent).toBeCloseTo(0.051, 3);
  });

  test('the scale of the last kept check where none is given, which is said; seconds with the dial for turns', () => {
    const ran = ratiowright(...DEMO, '--sheet', '1', '--catches', first, '--time', '20s', '--dial', '66.6667', '--date', '2026-11-29');
    expect(ran.out).toContain('The scale is that of check-0003: 0.1 g, gross and tare.');
    expect(ran.out).toContain('20 s a catch at dial 66.6667 %');
    // 90 rpm × 0.666667 × 20 s = 20 turns
    expect(ran.out).toContain('Pump B delivered | 99.65 %');
  });

  test('what is fitted where no sheet is named, and nobody counted turns', () => {
    const ran = ratiowright(...DEMO, '--machine', 'bench-1', '--material', 'u40', '--catches', first, '--step', '0.1g', '--json');
    const found = jsonOf(ran);
    expect([ran.exit, found.delivery.A, found.check]).toEqual([0, null, null]);
    expect(ran.out).toContain('Neither turns nor seconds');
  });

  test('the record as a page, with its workings behind it', () => {
    const out = path.join(folder, 'record.html');
    const ran = ratiowright(...DEMO, '--check', 'check-0003', '--out', out, '--workings', '--paper', 'Letter');
    expect([ran.exit, ran.err]).toEqual([1, '']);
    expect(ran.out).toBe(`${out}: record of a ratio check on Bench 1, U40 elastomer: not proven.\n`);
    const html = readFileSync(out, 'utf8');
    for (const said of ['size:letter', 'Not proven', 'Working: Ratio check 0003', 'Fieller', 'invented example'])
      expect(html).toContain(said);
  });

  test('with JSON every figure tells how it came about', () => {
    const { figures } = jsonOf(ratiowright(...DEMO, '--check', 'check-0001', '--json', '--workings'));
    expect(Object.keys(figures)).toEqual(['ratio', 'interval', 'delivery', 'smallest']);
    expect(figures.interval?.from?.working).toMatchObject({ formula: 'e = r / w - 1' });
  });

  test('all kept checks as a table, and as CSV', () => {
    const ran = ratiowright(...DEMO, '--all');
    expect([ran.exit, ran.out.trim().split('\n').length]).toEqual([0, 4]);
    const csv = ratiowright(...DEMO, '--all', '--csv', '--comma');
    expect(csv.out).toMatch(/^\uFEFFdate;check;machine/);
    expect(csv.out).toContain('\r\n2026-09-15;check-0001;Bench 1;U40 elastomer;');
    expect(csv.out).toContain(';-0,4977;');
  });
});

describe('what is not given', () => {
  const without = (name: string, change: (json: ReturnType<typeof JSON.parse>) => void): string => {
    const json = JSON.parse(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
    change(json);
    return written(name, JSON.stringify(json));
  };

  test('without densities and limits it is told in cubic centimetres, and nothing is called small enough', () => {
    const file = without('bare', (json) => {
      const l5 = json.materials.find(({ id }: { readonly id: string }) => id === 'l5');
      json.materials = [l5];
      json.ratioChecks = [];
      json.changeSheets = [];
      delete l5.limits;
      for (const part of [l5.A, l5.B]) for (const key of Object.keys(part)) if (key !== 'name') delete part[key];
    });
    const ran = ratiowright('ratio-check', file, '--machine', 'bench-1', '--before', '--step', '0.1g');
    expect([ran.exit, ran.err]).toEqual([0, '']);
    // 20 turns × 12 cc, 14 turns × 6 cc
    expect(ran.out).toContain('Expected: A 240.0 cc, B 84.0 cc\nThe limits of the material are not given');
    expect(ran.out).toContain('The smallest catch is not worked out');
    expect(ran.out).not.toMatch(/Make \d|ten such catches/);
    const weighed = ratiowright('ratio-check', file, '--machine', 'bench-1', '--catches', first, '--step', '0.1g');
    expect([weighed.exit, weighed.out]).toEqual([2, '']);
    expect(weighed.err).toContain('the densities of the material are not given');
    const volumes = written('volumes.csv', 'A volume cc,B volume cc\n240,84\n240.5,84\n');
    const measured = ratiowright('ratio-check', file, '--machine', 'bench-1', '--catches', volumes, '--step', '0.1g');
    expect([measured.exit, measured.err]).toEqual([1, '']);
    expect(measured.out).toContain('= NO VERDICT. The material has no limits, so nothing says what passes.');
    expect(measured.out).toContain('By volume as run | 2.8601 : 1');
    expect(measured.out).not.toContain('By weight');
  });

  test('a kept check that cannot be judged any more is counted, not lost; no check at all is said', () => {
    const file = without('spilt', (json) => {
      for (const one of json.ratioChecks[1].catches) one.leftOut = 'spilt';
    });
    const ran = ratiowright('ratio-check', file, '--all');
    expect(ran.out.trim().split('\n')).toHaveLength(4);
    expect(ran.out).toContain('1 more cannot be judged any more; --csv says why.');
    expect(ratiowright('ratio-check', file, '--all', '--csv').out).toContain('No catch counts');
    const none = without('none', (json) => {
      json.ratioChecks = [];
    });
    expect(ratiowright('ratio-check', none, '--all').out).toBe('The file keeps no ratio check that can be judged.\n');
  });
});

/** The invented example with one material: `parts` by `basis` at 25 °C, ±`limit` % of B per A; pumps as given, one turn each a motor turn. */
function shop(name: string, { parts, basis, limit, densities = ['1', '1'], pumps = ['12', '6'] }: Material): string {
  const json = JSON.parse(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
  const part = (density: string) => ({
    density: { value: { value: density, unit: 'g/cm3' }, at: { value: '25', unit: '°C' } },
    expansion: { value: '0.0007', unit: '1/K' },
    runAt: { value: '25', unit: '°C' },
  });
  const [a = '', b = ''] = densities;
  json.materials = [
    {
      id: 'm',
      name: 'Case',
      ratio: { basis, parts },
      limits: { definition: '% of B per A', low: `-${limit}`, high: limit },
      A: part(a),
      B: part(b),
    },
  ];
  const [bench] = json.machines;
  json.machines = [bench];
  [bench.A, bench.B].forEach((side, index) => {
    side.pumps[0].displacement = { value: pumps[index], unit: 'cc/rev' };
    side.pumps[0].newDelivery = { value: '95', unit: '%' };
  });
  bench.stages[0].driver.teeth = 21;
  bench.stages[0].driven.teeth = 21;
  json.changeSheets = [];
  json.ratioChecks = [];
  return written(name, JSON.stringify(json));
}

interface Material {
  readonly parts: string;
  readonly basis: 'weight' | 'volume';
  readonly limit: string;
  readonly densities?: readonly [string, string];
  readonly pumps?: readonly [string, string];
}

const judged = (file: string, catches: string, ...more: readonly string[]): Ran =>
  ratiowright('ratio-check', file, '--catches', written(`${path.basename(file)}.csv`, catches), '--date', '2026-11-29', '--json', ...more);

describe('cases of the field, through the command', () => {
  test('four tries from 27 to 35 parts where 44 are wanted: −38.64 to −20.45 %, B 21.26 to 25.93 % of all instead of 30.56 %; fail, not repeatable', () => {
    const file = shop('blocked', { parts: '100:44', basis: 'weight', limit: '5' });
    const ran = judged(file, 'A net g,B net g\n100,27\n100,30\n100,33\n100,35\n', '--step', '0.1g');
    const found = jsonOf(ran);
    expect([ran.exit, found.verdict, found.stable]).toEqual([1, 'fail', false]);
    const [least, , , most] = found.catches;
    expect([least?.offRatio_percent.number, most?.offRatio_percent.number].map((one) => one?.toFixed(5))).toEqual([
      '-38.63636',
      '-20.45455',
    ]);
    expect([least?.shareOfB_percent.number, most?.shareOfB_percent.number].map((one) => one?.toFixed(5))).toEqual(['21.25984', '25.92593']);
    const text = ratiowright('ratio-check', file, '--catches', path.join(folder, 'blocked.csv'), '--step', '0.1g').out;
    expect(text).toContain('B is 23.81 % of all, wanted 30.56 %');
    // mean 31.25 parts, −28.97727 %, deviation 3.5 parts
    expect(found.offRatio_percent.number).toBeCloseTo(-28.97727, 5);
    expect((found.deviation_percent ?? 0) * 0.44).toBeCloseTo(3.5, 10);
    // the worst advice would be sprockets for 41 % more of B
    expect(found.proposal.none).toBe('the catches do not agree');
    expect(found.causes[0]).toMatchObject({ cause: 'cause.agree', state: 'likely' });
  });

  test('176 g and 17 g of 10:1 on a scale of whole grams: −3.41 %, by its steps −6.52 to −0.28 %: neither pass nor fail, a second catch is asked for', () => {
    const file = shop('coarse', { parts: '10:1', basis: 'weight', limit: '3' });
    const ran = judged(file, 'A net g,B net g\n176,17\n', '--step', '1g', '--tared');
    const found = jsonOf(ran);
    expect([ran.exit, found.verdict, found.further]).toEqual([1, 'not proven', { kind: 'a second catch' }]);
    expect(found.ratioAPerBByWeight.number).toBeCloseTo(10.35294, 5);
    expect(found.offRatio_percent.number).toBeCloseTo(-3.40909, 5);
    expect(found.catches[0]?.byStep?.from_percent.number).toBeCloseTo(-6.51558, 5);
    expect(found.catches[0]?.byStep?.to_percent.number).toBeCloseTo(-0.2849, 4);
  });

  test('a worn pump: 10.00 of 11.69 in theory where a new one gives 95 %: 85.54 %, ratio 2.2211 by volume, −9.95 %', () => {
    const file = shop('worn', { parts: '2:1', basis: 'volume', limit: '3', pumps: ['23.38', '11.69'] });
    // A is new: 95 % of 23.38
    const catches = 'A volume cc,B volume cc\n22.211,10\n22.212,10\n22.210,10\n';
    const ran = judged(file, catches, '--step', '0.1g', '--turns', '1');
    const found = jsonOf(ran);
    expect([ran.exit, found.verdict]).toEqual([1, 'fail']);
    expect(found.delivery.B?.share_percent.number).toBeCloseTo(85.543, 3);
    expect(found.delivery.A?.share_percent.number).toBeCloseTo(95, 6);
    expect(found.ratioAPerBByVolume.number).toBeCloseTo(2.2211, 6);
    expect(found.offRatio_percent.number).toBeCloseTo(-9.95453, 3);
    expect(found.causes[0]).toMatchObject({ cause: 'cause.shortSide', state: 'likely' });
  });

  test('4 % of air in B: by weight −4.0 %, by volume nothing; air is named before any sprocket', () => {
    const file = shop('air', { parts: '2:1', basis: 'volume', limit: '3', densities: ['1.15', '1.012'] });
    const catches = 'A net g;A volume cc;B net g;B volume cc\n115;100;48,576;50\n115;100;48,576;50\n115;100;48,576;50\n';
    const ran = judged(file, catches, '--step', '0.001g', '--turns', '10');
    const found = jsonOf(ran);
    expect([ran.exit, found.verdict]).toEqual([1, 'fail']);
    expect(found.offRatio_percent.number).toBeCloseTo(-4, 6);
    expect(100 / found.ratioAPerBByWeight.number).toBeCloseTo(42.24, 6);
    const air = found.causes.find(({ cause }) => cause === 'cause.air');
    expect(air?.state).toBe('likely');
    expect(air?.what).toMatch(/^By volume the mix is 0\.00\s% off/);
  });
});

describe('bad input: exit 2, all of it said, nothing written', () => {
  test('every fault of the table with its line and column, beside those of the rest', () => {
    const catches = written('faults.csv', 'A net g,B net\n244.6,101.9\nmany,101 g\n');
    const ran = ratiowright(...DEMO, '--sheet', '7', '--catches', catches, '--step', '0.1g');
    expect([ran.exit, ran.out]).toEqual([2, '']);
    expect(ran.err).toContain('There is no change sheet 7; the file keeps: 0001.');
    expect(ran.err).toContain('faults.csv, line 2, B net: "101.9" has no unit');
    expect(ran.err).toContain('faults.csv, line 3, A net: "many" is not a number');
  });

  test('catches that are no catches: each with its place', () => {
    const catches = written('odd.csv', 'A gross g,A tare g,B net g\n256.9,,101.9\n10,12,0\n');
    const ran = ratiowright(...DEMO, '--sheet', '1', '--catches', catches, ...SCALE);
    expect([ran.exit, ran.out]).toEqual([2, '']);
    expect(ran.err).toMatch(/Catch 1, A: gross is 256\.9\sg but the tare is missing/);
    expect(ran.err).toMatch(/Catch 2, A: gross 10\sg less tare 12\sg leaves nothing/);
    expect(ran.err).toMatch(/Catch 2, B: net is 0\sg; it must be above 0/);
  });

  test('flags that do not go together are all named', () => {
    const ran = ratiowright(
      ...DEMO,
      ...['--check', 'check-0001', '--all', '--sheet', '1', '--time', '20', '--tared', '--confidence', 'high', '--csv', '--json'],
    );
    expect([ran.exit, ran.out]).toEqual([2, '']);
    for (const said of [
      'needs one of --catches FILE.csv, --before, --check ID and --all',
      '--sheet belongs to a new check',
      'leave out --json',
    ])
      expect(ran.err).toContain(said);
    const both = ratiowright(
      ...DEMO,
      '--catches',
      first,
      '--turns',
      '20',
      '--time',
      '20',
      '--dial',
      '60',
      '--tared',
      '--machine',
      'bench-1',
      '--sheet',
      '1',
    );
    for (const said of ['--time needs a unit', '--turns or --time', '--tared says more of a scale', '--machine follows from --sheet'])
      expect(both.err).toContain(said);
  });

  test('what is beyond any scale, interval or calendar; a check or a file that is not there', () => {
    const wide = ratiowright(...DEMO, '--sheet', '1', '--catches', first, '--step', '0g', '--confidence', '20', '--turns', '20');
    expect([wide.exit, wide.out]).toEqual([2, '']);
    expect(wide.err).toContain('0 g is out of range: it must be above 0 g');
    expect(wide.err).toContain('20 % is out of range: it must be at least 60 %');
    expect(ratiowright(...DEMO, '--sheet', '1', '--catches', first, '--date', '2026-02-30', '--step', '0.1g').err).toContain(
      '--date takes a date',
    );
    expect(ratiowright(...DEMO, '--check', 'check-9').err).toContain('the file keeps check-0001, check-0002, check-0003');
    expect(ratiowright(...DEMO, '--sheet', '1', '--catches', path.join(folder, 'none.csv')).err).toContain('cannot be read');
    const out = path.join(folder, 'no such folder', 'record.html');
    expect(ratiowright(...DEMO, '--check', 'check-0001', '--out', out)).toMatchObject({ exit: 2, out: '' });
    expect(existsSync(out)).toBe(false);
  });

  test('a machine of which no check is kept needs the step of its scale', () => {
    const ran = ratiowright(...DEMO, '--machine', 'bench-2', '--material', 'e12', '--catches', first);
    expect(ran).toMatchObject({ exit: 2, out: '' });
    expect(ran.err).toContain('--step is needed: the file keeps no ratio check of this machine');
  });
});
