import { describe, expect, test } from 'vitest';
import { beforeWeighing } from '../../core/src/beforeWeighing.ts';
import {
  expectedTexts,
  measuredRatioText,
  spreadText,
  unstableText,
  verdictRuleText,
  verdictSoFar,
  waitingText,
} from '../../core/src/checkPageWords.ts';
import { known, NOT_GIVEN } from '../../core/src/given.ts';
import { pastedCells } from '../../core/src/pastedCells.ts';
import { Fraction } from '../../core/src/ratio.ts';
import { keptChecks } from '../../core/src/ratioCheck/history.ts';
import { judge } from '../../core/src/ratioCheck/judge.ts';
import { storedDelivery } from '../../core/src/ratioCheck/storedDelivery.ts';
import { verdictRule } from '../../core/src/ratioCheck/verdictRule.ts';
import { meetingTexts, trendTable } from '../../core/src/trendTable.ts';
import { demoFile, demoPlan, evaluated, PAST } from './ratioCheck/demoChecks.ts';
import { say, typed } from './ratioCheck/written.ts';

const plain = (text: string | null | undefined) => text?.replaceAll('\u00a0', ' ') ?? null;
const [first, , third] = PAST.map(({ catches }) => evaluated(demoPlan(), catches));
if (first === undefined || third === undefined) throw new RangeError('three checks');

describe('before the first catch of U40 on Bench 1', () => {
  const told = (more: Parameters<typeof typed>[1] = {}) =>
    beforeWeighing(typed([], more), demoPlan(), keptChecks(demoFile().ratioChecks), say);

  test('20 turns: what each side gives, the smallest catch worth making [demo scenario], and how many', () => {
    // 20 x 12 cc x 1.0181 g/cc, and 20 x 0.7 x 6 cc x 1.2158 g/cc, densities at 40 and 30 degrees
    expect(told()?.expected).toMatchObject({ A: '244.3\u00A0g', B: '102.1\u00A0g' });
    expect(plain(told()?.smallest)).toBe('A 47.6 g, B 19.9 g');
    expect([told()?.count, told()?.small]).toEqual(['3, by earlier spread', null]);
  });

  test('on a tared scale half of that is enough [demo scenario]', () => {
    expect(plain(told({ weighing: 'tared' })?.smallest)).toBe('A 23.8 g, B 10.0 g');
  });

  test('a coarse scale asks for longer catches', () => {
    expect(told({ step: '1' })?.small).toContain('let it run for 39 turns');
  });

  test('seconds need the dial; without them, or without the step, nothing is said', () => {
    expect(told({ runBy: 'time', time: '10' })).toBeNull();
    expect(told({ runBy: 'time', time: '10', dial: '100' })?.expected.A).toBe('183.3\u00A0g');
    expect(told({ step: 'fine' })).toBeNull();
  });
});

test('what a catch gives is a weight where the density is known, else a volume, and so are the limits on B [arithmetic]', () => {
  const of = (volume_cc: string, mass_g?: string) => ({
    volume_m3: new Fraction(volume_cc).div(1_000_000),
    mass_kg: mass_g === undefined ? NOT_GIVEN : known(new Fraction(mass_g).div(1000)),
  });
  const turns = { pumpTurns: new Fraction(20) };
  const words = (A: ReturnType<typeof of>, B: ReturnType<typeof of>, limitsOnB: Parameters<typeof expectedTexts>[0]['limitsOnB']) => {
    const texts = expectedTexts({ sides: { A: { ...A, ...turns }, B: { ...B, ...turns } }, limitsOnB }, say);
    return [texts.A, texts.B, texts.allowedB].map(plain);
  };
  expect(words(of('240', '246.4'), of('84', '103.1'), { low: of('82', '100.2'), high: of('86', '106.1') })).toEqual([
    '246.4 g',
    '103.1 g',
    '100.2 to 106.1 g',
  ]);
  expect(words(of('240', '246.4'), of('84'), { low: of('82'), high: of('86.5') })).toEqual(['246.4 g', '84.0 cc', '82.0 to 86.5 cc']);
  expect(words(of('240'), of('84', '103.1'), null)).toEqual(['240.0 cc', '103.1 g', null]);
});

describe('words beside the verdict', () => {
  test('ratio by weight and by volume, and how far catches lie apart [demo scenario]', () => {
    expect(measuredRatioText(first, say)).toContain('2.4012 : 1 by weight, 2.8674 : 1 by volume as run');
    expect(plain(spreadText(third, say))).toContain('3 catches range over 1.96 %');
    expect(spreadText(evaluated(demoPlan(), [[244, 102]]), say)).toBe('one catch has no spread');
  });
  test('why catches do not agree', () => {
    expect(unstableText(first)).toBeNull();
    expect(unstableText(third)).toBe('The catches do not agree: the interval is wider than half of what lies between the limits.');
  });
  test('the rule in one sentence', () => {
    expect(plain(verdictRuleText(third, say))).toBe(
      'Rule of off-ratio, more B to the left, + is B-rich: measured 2.06 % B-lean, interval −4.55 to +0.38 %, limits −2.86 to +2.86 %: Not proven.',
    );
  });
  test('catches that wait', () => {
    expect(waitingText([])).toBeNull();
    expect([verdictSoFar('pass', []), verdictSoFar('pass', [3])]).toEqual(['Pass', 'Pass so far']);
    expect(waitingText([3])).toContain('Catch 3 does not count');
    expect(waitingText([1, 3, 4])).toContain('Catches 1, 3 and 4 do not count');
  });
});

describe('the rule of a verdict', () => {
  const rule = verdictRule(third);
  test('more B lies to the left: high limit, wanted, mean, low limit, and the interval reaches over the last', () => {
    const { limits, interval, wanted, mean } = rule;
    if (limits === null || interval === null) throw new RangeError('both are known');
    const places = [0, limits.from, interval.from, wanted, mean, limits.to, interval.to, 100];
    // +2.86, +0.38, 0, −2.06, −2.86, −4.55 %
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });
  test('every catch has its ring within the rule, and places are linear in off-ratio', () => {
    expect(rule.catches.map(({ number }) => number)).toEqual([1, 2, 3]);
    for (const { at } of rule.catches) expect(at).toBeGreaterThan(0);
    const [a, b, c] = rule.marks;
    expect((a?.at ?? 0) - (b?.at ?? 0)).toBeCloseTo((b?.at ?? 0) - (c?.at ?? 0), 9);
  });
  test('everything shown lies within the middle, an eighth of it or so to either side: twelve parts in 124 of the rule [our choice, arithmetic]', () => {
    // the limits, ±2.86 %, and the interval, −4.55 to +0.38 %, span from the high limit to the low end of the interval
    const [high, low] = [1 / 35, third.interval?.from.value ?? expect.unreachable()];
    const at = (off: number) => (100 * (12 + (100 * (high - off)) / (high - low))) / 124;
    expect(rule.limits?.from).toBeCloseTo(1200 / 124, 9);
    expect(rule.interval?.to).toBeCloseTo(11200 / 124, 9);
    expect(rule.limits?.to).toBeCloseTo(at(-1 / 35), 9);
    expect(rule.interval?.from).toBeCloseTo(at(third.interval?.to.value ?? 0), 9);
    expect([rule.wanted, rule.mean].map((place) => place.toFixed(9))).toEqual(
      [0, third.offRatio.value.valueOf()].map((off) => at(off).toFixed(9)),
    );
    for (const { value, at: place } of rule.marks) expect(place).toBeCloseTo(at(value / 100), 9);
  });
  test('one catch and no limits still give a rule', () => {
    const plan = demoPlan();
    const alone = verdictRule(evaluated({ ...plan, mix: { ...plan.mix, limits: null } }, [[244, 102]]));
    expect([alone.limits, alone.interval, alone.catches.length, alone.marks.length > 2]).toEqual([null, null, 1, true]);
  });
});

describe('the trends of the third check', () => {
  const file = demoFile();
  const row = file.ratioChecks[2];
  const outcome = row && judge(file, row, ['ratioChecks', 2], say);
  if (!outcome?.ok) throw new RangeError('it can be judged');
  test('as a table [demo scenario]', () => {
    expect(trendTable(outcome.value, say).map(({ date, A, B, offRatio }) => [date, plain(A), plain(B), plain(offRatio)])).toEqual([
      ['2026-09-15', '100.01 %', '99.65 %', '−0.50 %'],
      ['2026-10-12', '100.01 %', '98.97 %', '−1.18 %'],
      ['2026-11-09', '99.94 %', '98.02 %', '−2.06 %'],
    ]);
  });
  test('two stable checks draw no line, so no day is named', () => expect(meetingTexts(outcome.value, say)).toEqual([]));
});

test('a measured delivery as a pump keeps it', () => {
  const { A } = first.delivery;
  if (A === null) throw new RangeError('it is known');
  const { value, uncertainty } = storedDelivery(A);
  expect([value.unit, Number(value.value).toFixed(2), uncertainty && Number(uncertainty.value).toFixed(2)]).toEqual([
    '%',
    '100.01',
    '0.26',
  ]);
  const one = storedDelivery({ share: { ...A.share, value: new Fraction(1) }, uncertainty: null });
  expect(one).toEqual({ value: { value: '100', unit: '%' } });
});

describe('cells out of a spreadsheet', () => {
  test.each([
    [
      '244.6\t101.9\r\n244.1\t101.6\r\n',
      [
        ['244.6', '101.9'],
        ['244.1', '101.6'],
      ],
    ],
    ['A net\tB net\n244,6\t101,9\n\n', [['244,6', '101,9']]],
    ['244,6\n244,1', [['244,6'], ['244,1']]],
    [
      '\t101.9\n"244.1"\t',
      [
        ['', '101.9'],
        ['244.1', ''],
      ],
    ],
    ['words', [['words']]],
    ['', []],
  ])('%j', (text, cells) => expect(pastedCells(text)).toEqual(cells));
});
