import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { comparison } from '../../core/src/comparison.ts';
import type { Finding } from '../../core/src/finding.ts';
import { fittedPumps, fittedTeeth, type Plan, type PlannedOption, planOption, readShopFile, resolve } from '../../core/src/index.ts';
import { checkTitle, fewestChecksText, findingsInShort, insideCountText, lengthNumberText } from '../../core/src/optionWords.ts';
import { productText } from '../../core/src/productText.ts';
import { Fraction } from '../../core/src/ratio.ts';
import { originText, stageFacts } from '../../core/src/stageFacts.ts';
import { inLine, mm, pitches, planOf as planFixture, shopOf, stageRow } from './planFixture.ts';

const say = { decimal: '.', system: 'metric' } as const;
const inch = { decimal: '.', system: 'inch' } as const;

function planOf(machine: string, material: string): Plan {
  const file = readShopFile(readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8'));
  if (!file.ok) throw new Error(JSON.stringify(file.findings));
  const plan = resolve(file.value, { machine, material }, say);
  if (!plan.ok) throw new Error(JSON.stringify(plan.findings));
  return plan.value;
}

const bench1 = planOf('bench-1', 'e12');
const bench2 = planOf('bench-2', 'e12');
const optionOf = (plan: Plan, ...teeth: readonly (readonly [number, number])[]): PlannedOption =>
  planOption(
    plan,
    fittedPumps(plan),
    teeth.map(([driver, driven]) => ({ driver, driven })),
    say,
  );

describe('pumps and teeth as one product [hand arithmetic]', () => {
  test('12 cc against 6 cc, 23 teeth driving 25: 2 × 25/23', () => {
    expect(productText(bench1, optionOf(bench1, [23, 25]), say)).toBe('pumps 12 : 6 × teeth 25 : 23 = 50 : 23 = 2.1739 : 1');
  });
  test('15 cc against 5 cc through two stages: 3 × 17/27 × 23/20 = 1173/540 = 391/180', () => {
    expect(productText(bench2, optionOf(bench2, [27, 17], [20, 23]), say)).toBe(
      'pumps 15 : 5 × s1 17 : 27 × s2 23 : 20 = 391 : 180 = 2.1722 : 1',
    );
  });
  test('a displacement without a short decimal in inches is written in cc', () => {
    expect(productText(bench1, optionOf(bench1, [23, 25]), inch)).toMatch(/^pumps 12 : 6 /);
  });
  test('a delivery that is counted is in the pumps: 12 against 6 × 0.965 = 5.79', () => {
    const measured = (pump: Plan['sides']['B']['pumps'][number]) => ({
      ...pump,
      delivery: { known: true, value: { share: new Fraction('0.965'), uncertainty: { known: false } } } as const,
      asMeasured: true,
    });
    const { pumps } = bench1.sides.B;
    const plan = { ...bench1, sides: { ...bench1.sides, B: { ...bench1.sides.B, pumps: [measured(pumps[0])] as const } } };
    expect(productText(plan, optionOf(plan, [21, 22]), say)).toBe('pumps as measured 12 : 5.79 × teeth 22 : 21 = 8800 : 4053 = 2.1712 : 1');
  });
  test('a decimal comma', () => {
    expect(productText(bench1, optionOf(bench1, [23, 25]), { ...say, decimal: ',' })).toMatch(/= 2,1739 : 1$/);
  });
});

/** Units stand after a no-break space. */
const spaced = (text: string | undefined) => text?.replaceAll('\u00a0', ' ');

function finding(check: string, severity: Finding['severity'], missing = false): Finding {
  return { check, severity, where: [], what: 'Something.', figure: null, limit: null, source: 'test', missing };
}

describe('findings in short [our choice: worst first, and what was not checked is never clear]', () => {
  test('nothing said is clear', () => {
    expect(findingsInShort([])).toEqual({ word: 'clear', text: '', worst: null });
  });
  test('the worst by its title, and how many beside it', () => {
    const worst = finding('stage.wrap', 'warns');
    expect(findingsInShort([worst, finding('stage.travel', 'notes'), finding('slot.bore', 'notes', true)])).toEqual({
      word: 'warns',
      text: `${checkTitle('stage.wrap')}, 1 more`,
      worst,
    });
  });
  test('checks that lack an input are counted once each', () => {
    const missing = [finding('slot.bore', 'notes', true), finding('slot.bore', 'notes', true), finding('slot.guard', 'notes', true)];
    expect(findingsInShort(missing)).toMatchObject({ word: 'missing', text: '2 not checked' });
  });
  test('a check is known by its title, anything else by its id', () => {
    expect(checkTitle('stage.wrap')).toMatch(/wrap/i);
    expect(checkTitle('search.kept')).toBe('search.kept');
  });
  test('sets of checks', () => {
    const [guard, wrap] = [checkTitle('slot.guard'), checkTitle('stage.wrap')];
    expect(fewestChecksText([['slot.guard'], ['slot.guard', 'stage.wrap']])).toBe(
      `Fewest checks in the way: ${guard}; or ${guard} + ${wrap}.`,
    );
  });
});

test('a cut list counts at least', () => {
  expect([insideCountText({ inside: 10, atLeast: false }), insideCountText({ inside: 200, atLeast: true })]).toEqual([
    '10 inside the limits',
    'at least 200 inside the limits',
  ]);
});

test('a length without its unit [1 in is 25.4 mm]', () => {
  expect([lengthNumberText(0.0254, say, 2), lengthNumberText(0.0254, inch, 2)]).toEqual(['25.40', '1.0000']);
});

describe('a stage now and after, 21 to 30 becomes 23 to 25 [demo figures worked out apart from this program]', () => {
  const [option] = optionOf(bench1, [23, 25]).stages;
  const [fitted] = optionOf(bench1, [21, 30]).stages;
  if (option === undefined || fitted === undefined) throw new Error('no stage');
  const facts = stageFacts(bench1, option, fitted, say);
  const row = (what: string) => facts.rows.find((one) => one.what === what);
  test('its title', () => {
    expect(facts.title).toBe('s1 to pump B, chain 08B');
  });
  test('teeth with the place and part number on the rack', () => {
    expect(row('driver, teeth')).toMatchObject({ now: '21', after: '23', isNew: true });
    expect(row('driver, teeth')?.note).toMatch(/^from the rack, R1-\d\d, 0823-25$/);
  });
  test('64 pitches for 66: take out 2', () => {
    expect(row('chain, pitches')).toMatchObject({ now: '66', after: '64', note: 'take out 2' });
  });
  test('centre 256.53 to 253.97 mm, 2.56 closer, within 250 to 263', () => {
    const centre = row('centre to set');
    expect([spaced(centre?.now), spaced(centre?.after), centre?.isNew]).toEqual(['256.53 mm', '253.97 mm', true]);
    expect(spaced(centre?.note)).toBe('travel −2.56 mm, 250.00 mm to 263.00 mm');
  });
  test('wrap 171.9 to 178.2 degrees', () => {
    expect(row('wrap, degrees')).toMatchObject({ now: '171.9', after: '178.2' });
  });
  test('what is not given of a stage is said in its place', () => {
    const notes = (more: Parameters<typeof stageRow>[2], driver = 17) => {
      const bare = planFixture(shopOf(inLine([stageRow(17, 34, more)])));
      const [open] = planOption(bare, fittedPumps(bare), [{ driver, driven: 34 }], say).stages;
      if (open === undefined) throw new Error('no stage');
      const { rows } = stageFacts(bare, open, open, say);
      return ['chain, pitches', 'centre to set', 'slack, pitches'].map((what) => spaced(rows.find((one) => one.what === what)?.note));
    };
    const window = { from: mm('250'), to: mm('263') };
    expect(notes({})[0]).toBe('centres not given: measure it');
    expect(notes({ centre: window }, 19).slice(1)).toEqual(['travel not known, 250.00 mm to 263.00 mm', 'take-up not given']);
    expect(notes({ centre: { fixed: mm('255') }, takeUp: pitches('0.5') }).slice(1)).toEqual(['stays, fixed', 'the take-up takes 0.50']);
  });
  test('a stage that stays says so', () => {
    const stays = stageFacts(bench1, fitted, fitted, say);
    expect(stays.rows.filter((one) => one.isNew)).toEqual([]);
    expect(stays.rows.slice(0, 3).map((one) => one.note)).toEqual(['stays', 'stays', 'stays']);
  });
});

test('where a wheel comes from', () => {
  expect([originText(bench1, { from: 'bought' }), originText(bench1, { from: 'nowhere' })]).toEqual(['to be bought', 'none left']);
  const [stage] = bench1.stages;
  if (stage === undefined) throw new Error('no stage');
  expect(originText(bench1, { from: 'machine', slot: stage.driven })).toBe('from the machine, s1 driven');
});

test('fitted and chosen side by side [demo figures worked out apart from this program]', () => {
  const fitted = planOption(bench1, fittedPumps(bench1), fittedTeeth(bench1), say);
  const rows = comparison(bench1, fitted, optionOf(bench1, [23, 25]), say);
  expect(rows.map(({ what, fitted: now, chosen, differs }) => [what, spaced(now), spaced(chosen), differs])).toEqual([
    ['A : B by volume', '2.8571 : 1', '2.1739 : 1', true],
    ['exactly', '20 : 7', '50 : 23', true],
    ['off-ratio', '23.970 % B-lean', '0.075 % B-lean', true],
    ['limits', 'outside', 'inside', true],
    ['B per 100 A by weight', '29.576', '38.871', true],
    ['s1, teeth', '21 to 30', '23 to 25', true],
    ['s1, pitches', '66', '64', true],
    ['s1, centre', '256.53 mm', '253.97 mm', true],
  ]);
});
