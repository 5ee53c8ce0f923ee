import { describe, expect, test } from 'vitest';
import type { CatchRow } from '../../../core/src/file/ratioCheckRow.ts';
import { NOT_GIVEN } from '../../../core/src/given.ts';
import { float } from '../../../core/src/ratio.ts';
import { evaluate } from '../../../core/src/ratioCheck/evaluate.ts';
import { readCheck, type TypedCheck } from '../../../core/src/ratioCheck/readCheck.ts';
import { checkOf } from './someCheck.ts';

const { terms } = checkOf({ wantedByWeight: '1/2', limits: ['-1/50', '1/50'], catches: [[100, 50]] });
const g = (value: string) => ({ value, unit: 'g' });
const net = (a: string, b: string): CatchRow => ({ A: { net: g(a) }, B: { net: g(b) } });
const SOUND = [net('100', '50'), net('100,4', '50.2')];

function read(catches: readonly CatchRow[], more: Partial<TypedCheck> = {}) {
  return readCheck(
    { scale: { step: g('0.1'), tared: false }, run: { turns: { value: '10', unit: '' } }, catches: [...catches], ...more },
    terms,
    ['ratioChecks', 0],
  );
}

test('gross less tare is net, in any unit, with comma or point', () => {
  const outcome = read([
    { A: { gross: g('612,3'), tare: g('512.3') }, B: { gross: { value: '0.1', unit: 'kg' }, tare: g('50') } },
    net('100', '50'),
  ]);
  if (!outcome.ok) throw new RangeError(outcome.findings[0].what);
  const { bPerA } = evaluate(outcome.value);
  expect(float(bPerA.value)).toBe(0.5);
});

describe('what stands against judging', () => {
  test.each<[string, readonly CatchRow[], Partial<TypedCheck>, string, readonly (string | number)[]]>([
    [
      'a missing tare',
      [...SOUND, { A: { gross: g('600') }, B: { net: g('50') } }],
      {},
      'Catch 3, A: gross is 600\u00A0g but the tare is missing',
      ['catches', 2, 'A', 'tare'],
    ],
    [
      'a tare on a tared scale',
      [...SOUND, { A: { gross: g('600'), tare: g('500') }, B: { net: g('50') } }],
      { scale: { step: g('0.1'), tared: true } },
      'Catch 3, A: the scale was tared, yet',
      ['catches', 2, 'A', 'tare'],
    ],
    ['a net of zero', [...SOUND, net('0', '50')], {}, 'Catch 3, A: net is 0\u00A0g; it must be above 0.', ['catches', 2, 'A', 'net']],
    [
      'a negative net',
      [...SOUND, { A: { gross: g('12'), tare: g('15') }, B: { net: g('50') } }],
      {},
      'Catch 3, A: gross 12\u00A0g less tare 15\u00A0g leaves nothing',
      ['catches', 2, 'A', 'gross'],
    ],
    ['a side that is empty', [...SOUND, { A: { net: g('100') }, B: {} }], {}, 'Catch 3, B: nothing is written down.', ['catches', 2, 'B']],
    [
      'a tare alone',
      [...SOUND, { A: { tare: g('100') }, B: { net: g('50') } }],
      {},
      'Catch 3, A: the tare is 100\u00A0g but there is no gross.',
      ['catches', 2, 'A', 'gross'],
    ],
    [
      'net and gross',
      [...SOUND, { A: { net: g('100'), gross: g('600') }, B: { net: g('50') } }],
      {},
      'Catch 3, A: net 100\u00A0g and gross 600\u00A0g are both written down',
      ['catches', 2, 'A', 'net'],
    ],
    [
      'ten thousand times too much',
      [...SOUND, net('1000000', '50')],
      {},
      'Catch 3, A: 1000000\u00A0g is far from the 100\u00A0g',
      ['catches', 2, 'A'],
    ],
    ['nothing that counts', [{ ...net('100', '50'), leftOut: 'spilled' }], {}, 'No catch counts', ['catches']],
    [
      'one weighed, one by volume',
      [net('100', '50'), { A: { volume: { value: '100', unit: 'cc' } }, B: { volume: { value: '50', unit: 'cc' } } }],
      {},
      'Some catches were weighed and others',
      ['catches'],
    ],
    [
      'a catch weighed on one side only',
      [net('100', '50'), { A: { net: g('100') }, B: { volume: { value: '50', unit: 'cc' } } }],
      {},
      'Catch 2 has no net weight, or no volume, of both sides',
      ['catches', 1],
    ],
  ])('%s', (_what, catches, more, sentence, where) => {
    const outcome = read(catches, more);
    expect(outcome.ok).toBe(false);
    expect(outcome.findings).toHaveLength(1);
    const [finding] = outcome.findings;
    expect(finding?.what).toContain(sentence);
    expect(finding?.where).toEqual(['ratioChecks', 0, ...where]);
  });

  test('all of it at once', () => {
    expect(read([net('0', '-0'), { A: {}, B: {} }]).findings.length).toBeGreaterThan(2);
  });

  test('weights without densities', () => {
    const outcome = readCheck({ scale: { step: g('0.1'), tared: false }, catches: SOUND }, { ...terms, densityBOverA: NOT_GIVEN }, []);
    expect(outcome.ok).toBe(false);
    expect(outcome.findings[0]?.what).toContain('the densities of the material are not given');
  });
});

describe('what is odd but can be judged', () => {
  test.each<[string, readonly CatchRow[], Partial<TypedCheck>, string]>([
    ['one catch', [net('100', '50')], {}, 'There is one catch'],
    [
      'mixed units',
      [net('100', '50'), { A: { net: { value: '0.1', unit: 'kg' } }, B: { net: g('50') } }],
      {},
      'Side A is written down in g and kg',
    ],
    ['catches of unequal length', [net('100', '50'), net('200', '100')], {}, 'The catches are not equally large'],
    ['next to nothing of one side', [...SOUND, net('100', '1')], {}, 'Catch 3, B: 1\u00A0g is far from the 100\u00A0g'],
  ])('%s', (_what, catches, more, sentence) => {
    const outcome = read(catches, more);
    expect(outcome.ok).toBe(true);
    expect(outcome.findings.map(({ what }) => what).join(' ')).toContain(sentence);
  });

  test('no turns and no seconds', () => {
    const outcome = readCheck({ scale: { step: g('0.1'), tared: false }, catches: SOUND }, terms, []);
    expect(outcome.ok && outcome.value.run).toBeNull();
    expect(outcome.findings[0]?.what).toContain('Neither turns nor seconds');
  });
});

test('what is left out need not be sound', () => {
  expect(read([...SOUND, { A: { gross: g('600') }, B: {}, leftOut: 'the cup tipped over' }])).toMatchObject({ ok: true, findings: [] });
});

test('seconds with the dial are turns', () => {
  const outcome = read(SOUND, { run: { time: { value: '20', unit: 's' }, dial: { value: '50', unit: '%' } } });
  if (!outcome.ok) throw new RangeError(outcome.findings[0].what);
  // 1 rev/s at 100 %: 20 s at half of that are 10 turns
  expect(float(evaluate(outcome.value).delivery.A?.share.value ?? terms.wantedBPerA)).toBeCloseTo(1.002, 10);
});

// Ten turns of 10 cc at 1 g/cc are 100 g of either side; ten times that and a tenth are our choice.
describe('how far a weight may lie from what is to be expected', () => {
  const findings = (catches: readonly CatchRow[]) =>
    read(catches).findings.map(({ severity, what }) => `${severity}: ${what.replaceAll('\u00a0', ' ')}`);
  const far = (severity: string, at: string, found: string, usual: string) =>
    `${severity}: Catch ${at}: ${found} is far from the ${usual} that is to be expected. Look at the decimal sign and the unit; leave the catch out if it was written so.`;

  test('just under ten times is none, ten times blocks, of either side', () => {
    expect(findings([net('100', '50'), net('999.9', '50')])).toEqual([]);
    expect(findings([net('100', '50'), net('1000', '50')])).toEqual([far('blocks', '2, A', '1000 g', '100 g')]);
    expect(findings([net('100', '50'), net('100', '999.9')])).toEqual([]);
    expect(findings([net('100', '50'), net('100', '1000')])).toEqual([far('blocks', '2, B', '1000 g', '100 g')]);
  });
  test('just over a tenth is none, a tenth warns: a blocked pump may give so little', () => {
    expect(findings([net('100', '50'), net('10.1', '50')])).toEqual([]);
    expect(findings([net('100', '50'), net('10', '50')])).toEqual([far('warns', '2, A', '10 g', '100 g')]);
  });
  test('turns not noted: the middle of the other catches stands for it', () => {
    const scale = { step: g('0.1'), tared: false };
    const unrun = (catches: readonly CatchRow[]) =>
      readCheck({ scale, catches: [...catches] }, terms, []).findings.flatMap(({ severity, what }) =>
        what.startsWith('Neither turns nor seconds') ? [] : [`${severity}: ${what.replaceAll('\u00a0', ' ')}`],
      );
    const three = [net('30', '15'), net('31', '15'), net('29', '15')];
    expect(unrun([...three, net('299', '15')])).toEqual([]);
    expect(unrun([...three, net('300', '15')])).toEqual([far('blocks', '4, A', '300 g', '30 g')]);
    expect(unrun([...three, net('3', '15')])).toEqual([far('warns', '4, A', '3 g', '30 g')]);
  });
});

describe('catches that are not equally large: both sides more than a quarter apart, less than ten times [our choice]', () => {
  const UNEQUAL = /^The catches are not equally large/;
  test.each<[string, CatchRow, boolean]>([
    ['a quarter more of both', net('125', '62.5'), false],
    ['a hair more than a quarter of both', net('125.1', '62.6'), true],
    ['of A alone, which may be drift', net('125.1', '62.5'), false],
    ['of B alone', net('125', '62.6'), false],
    ['just under ten times', net('999', '499'), true],
    ['ten times, which has its own finding', net('1000', '500'), false],
  ])('%s', (_, other, unequal) => {
    const said = read([net('100', '50'), other]).findings.filter(({ what }) => UNEQUAL.test(what));
    expect(said.map(({ severity }) => severity)).toEqual(unequal ? ['warns'] : []);
  });
});
