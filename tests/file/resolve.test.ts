import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readShopFile } from '../../core/src/file/read.ts';
import { resolve, type Selection } from '../../core/src/file/resolve.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { writeShopFile } from '../../core/src/file/write.ts';
import type { Finding, Outcome, Place } from '../../core/src/finding.ts';
import type { Plan } from '../../core/src/plan.ts';
import { exactText, float, whole } from '../../core/src/ratio.ts';
import { shopFiles } from './arbitraries.ts';
import { type Change, changed, demoText, GONE, isPlace, lines, opened, say, smallest, valueAt } from './shop.ts';

const demo: unknown = JSON.parse(demoText());
const E12: Selection = { machine: 'bench-1', material: 'e12' };
const ONE: Place = ['machines', 0];
const STAGE: Place = [...ONE, 'stages', 0];

/** Every finding points at something in the file, or at a field that is still to be filled in. */
function resolved(json: unknown, selection: Selection): Outcome<Plan> {
  const outcome = resolve(opened(JSON.stringify(json)), selection, say);
  for (const { where } of outcome.findings) expect(isPlace(json, where), where.join(' ')).toBe(true);
  return outcome;
}

function planned(json: unknown, selection: Selection): Plan {
  const outcome = resolved(json, selection);
  if (!outcome.ok) throw new Error(lines(outcome.findings).join('\n'));
  expect(outcome.value.findings).toEqual(outcome.findings);
  return outcome.value;
}

function refused(json: unknown, selection: Selection): readonly string[] {
  const outcome = resolved(json, selection);
  expect(outcome.ok).toBe(false);
  for (const { severity } of outcome.findings) expect(severity).toBe('blocks');
  return lines(outcome.findings);
}

const demoPlan = (selection: Selection, ...changes: readonly Change[]): Plan => planned(changed(demo, ...changes), selection);
const demoRefused = (selection: Selection, ...changes: readonly Change[]) => refused(changed(demo, ...changes), selection);
const short = (findings: readonly Finding[]) => findings.map(({ check, severity, what }) => `${check} ${severity}: ${what}`);

describe('which machine, material and rack', () => {
  test('by id', () => {
    const { machine, material, rack } = demoPlan({ machine: 'bench-2', material: 'l5', rack: 'main' });
    expect([machine.id, material.id, rack?.id]).toEqual(['bench-2', 'l5', 'main']);
  });
  test('the only one there is, without being named', () => {
    const { machine, material, rack } = planned(smallest({ ratio: { basis: 'volume', parts: '2:1' } }), {});
    expect([machine.id, material.id, rack]).toEqual(['bench', 'mix', null]);
  });
  test('where there are several, or not that one, the message lists them', () => {
    expect(demoRefused({})).toEqual([
      'machines: Say which machine is meant; there are: bench-1, bench-2.',
      'materials: Say which material is meant; there are: e12, u40, l5.',
    ]);
    expect(demoRefused({ machine: 'bench-9', material: 'glue', rack: 'cellar' })).toEqual([
      'machines: There is no machine with the id "bench-9"; there are: bench-1, bench-2.',
      'materials: There is no material with the id "glue"; there are: e12, u40, l5.',
      'racks: There is no rack with the id "cellar"; there are: main.',
    ]);
  });
  test('where there is none', () => {
    const empty = changed(demo, [['machines'], []], [['materials'], []]);
    expect(refused(empty, {})).toEqual([
      'machines: Say which machine is meant; the file holds none.',
      'materials: Say which material is meant; the file holds none.',
    ]);
  });

  const spare = { id: 'spare', name: 'Spare rack', pieces: [] };
  const unnamed: Change = [[...ONE, 'rack'], GONE];
  test("the rack asked for, else the machine's own, else the only one", () => {
    const two: Change = [['racks', 1], spare];
    expect(demoPlan({ ...E12, rack: 'spare' }, two).rack?.id).toBe('spare');
    expect(demoPlan(E12, two).rack?.id).toBe('main');
    expect(demoPlan(E12, unnamed).rack?.id).toBe('main');
    expect(demoPlan(E12, [[...ONE, 'rack'], 'spare'], two).pieces).toEqual([]);
  });
  test('where no rack is named among several, only the fitted wheels are at hand, and that is said', () => {
    const plan = demoPlan(E12, unnamed, [['racks', 1], spare]);
    expect([plan.rack, plan.pieces]).toEqual([null, []]);
    expect(short(plan.findings)).toEqual([
      'machine.rack notes: No rack is named: only the fitted wheels are at hand. There are: main, spare.',
    ]);
    expect(short(demoPlan({ ...E12, teeth: { from: 15, to: 40 } }, unnamed, [['racks', 1], spare]).findings)).toEqual([]);
    expect(short(planned(smallest({ ratio: { basis: 'volume', parts: '2:1' } }), {}).findings)).toContain(
      'machine.rack notes: No rack is named: only the fitted wheels are at hand.',
    );
  });
});

describe('what a plan is made of', () => {
  test('the demo on Bench 1, in SI and exact [units: NIST SP 811]', () => {
    const plan = demoPlan(E12);
    expect(lines(plan.findings)).toEqual([]);
    expect(exactText(plan.motor.speed_rev_per_s)).toBe('3/2');
    const { usable } = plan.motor;
    expect(usable.known && [usable.value.from, usable.value.to].map(exactText)).toEqual(['1/5', '1/1']);
    const [stage] = plan.stages;
    expect(stage).toMatchObject({
      id: 's1',
      kind: 'chain',
      size: '08B',
      turns: 'B',
      open: true,
      presentPitches: { known: true, value: 66 },
      centre: { known: true, value: { kind: 'window', least_m: 0.25, most_m: 0.263 } },
      takeUp_pitches: { known: true, value: 0.5 },
      offsetLinkAllowed: false,
      place: STAGE,
    });
    expect(stage?.driven.bore_m.known && exactText(stage.driven.bore_m.value)).toBe('1/40');
    expect(stage?.driven.guard_m).toEqual({ known: true, value: 0.162 });
    expect([plan.sides.A.train, plan.sides.B.train]).toEqual([[], [0]]);
    expect(plan.sides.A.component).toBe('E12 resin');
    expect(exactText(plan.sides.A.pumps[0].displacement_m3_per_rev)).toBe('3/250000');
    expect(plan.pieces).toHaveLength(28);
    expect(plan.minutes).toEqual({ sprocket_s: whole(720), chainLength_s: whole(600), centre_s: whole(180), pump_s: whole(5400) });
  });
  test('a line left blank is not printed [our choice]', () => {
    const plan = demoPlan(
      E12,
      [
        [...ONE, 'checklist'],
        ['', 'Seal cups full.', ' \u00A0'],
      ],
      [
        ['materials', 0, 'cautions'],
        ['  ', 'Keep dry.'],
      ],
    );
    expect([plan.checklist, plan.cautions]).toEqual([['Seal cups full.'], ['Keep dry.']]);
  });
  test('what is not given stays so, and starting values are ours [our choice]', () => {
    const plan = planned(smallest({ ratio: { basis: 'volume', parts: '2:1' } }), {});
    expect(plan.motor.usable).toEqual({ known: false });
    expect([plan.sides.A.component, plan.sides.A.pumps[0].name, plan.catchTurns, plan.checklist, plan.cautions]).toEqual([
      'A',
      'p',
      20,
      [],
      [],
    ]);
    expect(plan.minutes).toEqual({ sprocket_s: whole(720), chainLength_s: whole(600), centre_s: whole(180), pump_s: whole(5400) });
    const bare = demoPlan(E12, [[...STAGE, 'driver'], { teeth: 21 }], [[...STAGE, 'centre'], GONE], [[...STAGE, 'pitches'], GONE]);
    expect(bare.stages[0]).toMatchObject({ centre: { known: false }, presentPitches: { known: false } });
    expect(bare.stages[0]?.driver).toMatchObject({
      bore_m: { known: false },
      guard_m: { known: false },
      teethFrom: { known: false },
      mayChange: true,
    });
  });
  test('a bore typed in inches equals the same in millimetres, exactly [25.4 mm to the inch, by definition]', () => {
    const bore = (value: string, unit: string) => demoPlan(E12, [[...STAGE, 'driver', 'bore'], { value, unit }]).stages[0]?.driver.bore_m;
    expect(bore('1', 'in')).toEqual(bore('25.4', 'mm'));
    expect(bore('1', 'in')).not.toEqual(bore('25.41', 'mm'));
  });
  test('a fixed centre distance', () => {
    const [stage] = demoPlan(E12, [[...STAGE, 'centre'], { fixed: { value: '256.53', unit: 'mm' } }]).stages;
    expect(stage?.centre).toEqual({ known: true, value: { kind: 'fixed', centre_m: 0.25653 } });
  });
  test('a pump that a side may carry joins in once its displacement is known', () => {
    const pumps = [
      { id: 'pb8' },
      { id: 'pb6', displacement: { value: '6', unit: 'cc/rev' } },
      { id: 'pb9', displacement: { value: '9', unit: 'cc/rev' } },
    ];
    const { B } = demoPlan(E12, [[...ONE, 'B', 'pumps'], pumps]).sides;
    expect(B.pumps.map(({ id }) => id)).toEqual(['pb6', 'pb9']);
    expect(B.pumps[B.fitted]?.id).toBe('pb6');
    expect(B.pumps.map(({ place }) => place.at(-1))).toEqual([1, 2]);
  });
});

describe('stages that a search may change', () => {
  const chain = (driver: object, driven: object) => ({
    id: 's1',
    kind: 'chain',
    size: '40',
    driver: { teeth: 20, ...driver },
    driven: { teeth: 20, ...driven },
  });
  /** Stages in a row; pump A sits behind `before` of them, pump B behind all. */
  const inLine = (stages: readonly object[], before: number, search: object = {}) =>
    smallest(
      { ratio: { basis: 'volume', parts: '2:1' } },
      {
        shafts: [
          { id: 'motor' },
          ...stages.map((_, i) => ({ id: `x${i}`, turnedBy: { shaft: i === 0 ? 'motor' : `x${i - 1}`, stage: `s${i}` } })),
        ],
        stages: stages.map((stage, i) => ({ ...stage, id: `s${i}` })),
        A: {
          shaft: before === 0 ? 'motor' : `x${before - 1}`,
          fitted: 'p',
          pumps: [{ id: 'p', displacement: { value: '1', unit: 'cc/rev' } }],
        },
        B: { shaft: `x${stages.length - 1}`, fitted: 'p', pumps: [{ id: 'p', displacement: { value: '1', unit: 'cc/rev' } }] },
        search,
      },
    );
  const open = (json: unknown) => planned(json, {}).stages.map((stage) => stage.open);
  const shut = { mayChange: false };

  test('a slot that may change opens its stage; what both pumps share stays shut unless it is asked for', () => {
    expect(open(inLine([chain({}, {}), chain(shut, {}), chain(shut, shut)], 0))).toEqual([true, true, false]);
    const shared = inLine([chain({}, {}), chain({}, {})], 1);
    expect(planned(shared, {}).stages.map((stage) => stage.turns)).toEqual(['both', 'B']);
    expect(open(shared)).toEqual([false, true]);
    expect(open(inLine([chain({}, {}), chain({}, {})], 1, { openShared: true }))).toEqual([true, true]);
  });
  test('a stage that turns no pump stays shut', () => {
    const fan = { id: 's9', kind: 'chain', size: '40', driver: { teeth: 20 }, driven: { teeth: 20 } };
    const { stages } = demoPlan(
      E12,
      [[...ONE, 'stages', 1], fan],
      [[...ONE, 'shafts', 2], { id: 'fan', turnedBy: { shaft: 'motor', stage: 's9' } }],
    );
    expect(stages.map(({ turns, open }) => [turns, open])).toEqual([
      ['B', true],
      ['neither', false],
    ]);
  });
  test('four at once are refused with both numbers; three are taken, and so are four of which one is shut', () => {
    const four = [0, 1, 2, 3].map(() => chain({}, {}));
    expect(refused(inLine(four, 0), {})).toEqual([
      'machines 0 stages: 4 stages may change, and 3 are the most a search takes on: close some of their slots.',
    ]);
    expect(open(inLine(four.slice(1), 0))).toEqual([true, true, true]);
    expect(open(inLine([...four.slice(1), chain(shut, shut)], 0))).toEqual([true, true, true, false]);
    expect(open(inLine(four, 1))).toEqual([false, true, true, true]);
  });

  describe('buying', () => {
    const buys = { wheels: 'rack and purchases', purchases: 2 };
    const limited = { teethFrom: 13, teethTo: 40 };
    const unsaid = (slots: string) =>
      `Say which teeth may be bought: give the search a range of teeth, or give teeth from and to for ${slots}.`;
    test('where nothing says with which teeth, the slots that lack their limits are named', () => {
      expect(refused(inLine([chain({}, {})], 0, buys), {})).toEqual([
        `machines 0 stages 0 driver teethFrom: ${unsaid('s0 driver, s0 driven')}`,
      ]);
      expect(refused(inLine([chain(limited, { teethFrom: 13 })], 0, buys), {})).toEqual([
        `machines 0 stages 0 driven teethTo: ${unsaid('s0 driven')}`,
      ]);
      expect(refused(inLine([chain({}, shut)], 0), { purchases: 1 })).toEqual([
        `machines 0 stages 0 driver teethFrom: ${unsaid('s0 driver')}`,
      ]);
    });
    test('a range, or limits on every slot that may change, says it', () => {
      const range = { from: 13, to: 40 };
      expect(planned(inLine([chain({}, {})], 0, { ...buys, teeth: range }), {}).choice.teeth).toEqual(range);
      expect(planned(inLine([chain({}, {})], 0, buys), { teeth: range, purchases: 1 }).choice.teeth).toEqual(range);
      for (const stage of [chain(limited, limited), chain(limited, shut), chain(shut, shut)]) {
        expect(planned(inLine([stage], 0, buys), {}).choice).toMatchObject({ purchases: 2, teeth: null });
      }
      // A shared stage is not opened, so nothing is bought for it.
      expect(planned(inLine([chain({}, {}), chain(limited, limited)], 1, buys), {}).choice.purchases).toBe(2);
    });
    test('any wheel without a range is any within the limits of the slots', () => {
      expect(planned(inLine([chain(limited, limited)], 0, { wheels: 'any' }), {}).choice).toMatchObject({ wheels: 'any', teeth: null });
      expect(refused(inLine([chain({}, {})], 0, { wheels: 'any' }), {})).toEqual([
        `machines 0 stages 0 driver teethFrom: ${unsaid('s0 driver, s0 driven')}`,
      ]);
    });
  });
});

describe('what a search may use', () => {
  const choice = (search: object | undefined, more: Selection = {}) =>
    demoPlan({ ...E12, ...more }, [[...ONE, 'search'], search ?? GONE]).choice;
  const range = { from: 15, to: 35 };
  test('the rack, the rack and purchases, or any wheel', () => {
    expect(choice(undefined)).toEqual({ wheels: 'rack', purchases: 0, teeth: null, anyPump: false });
    expect(choice({ wheels: 'rack', teeth: range, anyPump: true })).toEqual({ wheels: 'rack', purchases: 0, teeth: null, anyPump: true });
    expect(choice({ wheels: 'rack and purchases' })).toEqual({ wheels: 'rack and purchases', purchases: 1, teeth: null, anyPump: false });
    expect(choice({ wheels: 'rack and purchases', purchases: 3, teeth: range })).toMatchObject({ purchases: 3, teeth: range });
    expect(choice({ wheels: 'any', teeth: range })).toEqual({
      wheels: 'any',
      purchases: Number.POSITIVE_INFINITY,
      teeth: range,
      anyPump: false,
    });
  });
  test('what is asked for goes before what the machine says', () => {
    const other = { from: 13, to: 40 };
    expect(choice({ wheels: 'any', teeth: range }, { purchases: 2 })).toMatchObject({
      wheels: 'rack and purchases',
      purchases: 2,
      teeth: range,
    });
    expect(choice({ wheels: 'any', teeth: range }, { teeth: other })).toMatchObject({ wheels: 'any', teeth: other });
    expect(choice(undefined, { teeth: other })).toMatchObject({ wheels: 'any', teeth: other });
    expect(choice({ wheels: 'rack and purchases', purchases: 3 }, { purchases: 1, teeth: other })).toMatchObject({
      purchases: 1,
      teeth: other,
    });
    expect(choice({ anyPump: false }, { anyPump: true }).anyPump).toBe(true);
    expect(choice({ anyPump: true }, { anyPump: false }).anyPump).toBe(false);
  });
  test('whether measured delivery counts: what is asked for, else what the machine says', () => {
    const counted = (search: unknown, asked: Selection = {}) => {
      const { A, B } = demoPlan({ ...E12, ...asked }, [[...ONE, 'search'], search]).sides;
      return [...A.pumps, ...B.pumps].map(({ asMeasured }) => asMeasured);
    };
    expect(counted({})).toEqual([false, false]);
    expect(counted({ asMeasured: true })).toEqual([true, true]);
    expect(counted({ anyPump: true }, { asMeasured: true })).toEqual([true, true]);
    expect(counted({ asMeasured: true }, { asMeasured: false })).toEqual([false, false]);
  });
  test('wheels to buy that the search would not buy are noted', () => {
    const plan = demoPlan(E12, [[...ONE, 'search'], { purchases: 2 }]);
    expect(short(plan.findings)).toEqual([
      'machine.purchases notes: A number of wheels to buy is given, but the search takes wheels from the rack only: nothing is bought.',
    ]);
    expect(plan.choice.purchases).toBe(0);
    expect(short(demoPlan(E12, [[...ONE, 'search'], { wheels: 'rack and purchases', purchases: 2 }]).findings)).toEqual([]);
  });
});

describe('what stands against a plan, all of it together', () => {
  test('what no plan can do without', () => {
    expect(
      demoRefused(
        E12,
        [[...ONE, 'motor', 'speed'], GONE],
        [[...STAGE, 'driven', 'teeth'], GONE],
        [[...ONE, 'A', 'pumps', 0, 'displacement'], GONE],
        [['materials', 0, 'B', 'density'], GONE],
      ),
    ).toEqual([
      "materials 0 B density: The density of B is missing: a ratio by weight needs all densities, or the sheet's ratio by volume as well.",
      'machines 0 motor speed: The speed of the motor shaft at 100 % is missing: the name plate or the drive says it.',
      'machines 0 stages 0 driven teeth: The teeth fitted on s1 driven are missing: stamped on the hub, or counted.',
      'machines 0 A pumps 0 displacement: The displacement of pump A is missing: its plate or its data sheet says it.',
    ]);
  });
  test('ranges that run backwards, with both ends as typed', () => {
    const teeth: Place = [...STAGE, 'driver'];
    expect(
      demoRefused(
        E12,
        [[...ONE, 'motor', 'usable'], { from: { value: '0.9', unit: '' }, to: { value: '20', unit: '%' } }],
        [[...STAGE, 'centre', 'to'], { value: '9', unit: 'in' }],
        [[...teeth, 'teethFrom'], 41],
        [[...ONE, 'B', 'pumps', 0, 'speedFrom'], { value: '3', unit: 'rev/s' }],
        [[...ONE, 'search'], { wheels: 'any', teeth: { from: 40, to: 13 } }],
      ),
    ).toEqual([
      'machines 0 motor usable: The usable range of the motor runs from 0.9 to 20 %: the first must not be larger.',
      'machines 0 stages 0 centre: The centre distance runs from 250 mm to 9 in: the first must not be larger.',
      'machines 0 stages 0 driver teethFrom: The teeth run from 41 to 40: the first must not be larger.',
      'machines 0 B pumps 0 speedFrom: The pump speed runs from 3 rev/s to 120 rpm: the first must not be larger.',
      'machines 0 search teeth: The teeth run from 40 to 13: the first must not be larger.',
    ]);
    expect(demoRefused({ ...E12, teeth: { from: 40, to: 13 } })).toEqual([
      'machines 0: The teeth run from 40 to 13: the first must not be larger.',
    ]);
  });
  test('both ends of a range may be the same', () => {
    expect(demoPlan(E12, [[...STAGE, 'centre', 'to'], { value: '25', unit: 'cm' }]).stages[0]?.centre).toMatchObject({
      value: { least_m: 0.25, most_m: 0.25 },
    });
  });
  test('limits that are not given are noted: nothing is called inside', () => {
    const plan = demoPlan(E12, [['materials', 0, 'limits'], GONE]);
    expect(plan.mix.limits).toBe(null);
    expect(short(plan.findings)).toEqual([
      'material.limits notes: The limits of the material are not given: no option is called inside or outside. The data sheet states them.',
    ]);
  });
  test('a file that was made wrong after it was read is refused like one that is opened', () => {
    const file = opened(demoText());
    const edit = (where: Place, value: unknown): ShopFile => Object.assign({ ...file }, changed(file, [where, value]));
    const said = (where: Place, value: unknown) => lines(resolve(edit(where, value), E12, say).findings);
    expect(said([...ONE, 'motor', 'speed', 'value'], 'fast')).toEqual([
      'machines 0 motor speed: "fast" is not a number. Expected something like 38.9, 38,9, 1 1/2 or 7e-4.',
    ]);
    expect(said(['materials', 0, 'A', 'density', 'value', 'value'], '0')).toEqual([
      'materials 0 A density value: 0 g/cm3 is out of range: it must be above 0 g/cm3.',
    ]);
    expect(said(['racks', 0, 'pieces', 0, 'size'], '9Z')[0]).toContain('racks 0 pieces 0 size: "9Z" is not a chain number known here');
    expect(said([...ONE, 'B', 'fitted'], 'pb9')).toEqual(['machines 0 B fitted: The fitted pump "pb9" is not among the pumps of side B.']);
    expect(said([...ONE, 'shafts', 1, 'turnedBy'], GONE)).toHaveLength(2);
    expect(said([...ONE, 'rack'], 'cellar')).toEqual(['machines 0 rack: There is no rack with the id "cellar".']);
    // While the shafts do not hang together, nothing is said of what a search would open on them.
    const adrift = edit([...ONE, 'shafts', 1, 'turnedBy', 'shaft'], 'axle');
    const buying = Object.assign({ ...adrift }, changed(adrift, [[...STAGE, 'driver', 'teethTo'], GONE]));
    expect(lines(resolve(buying, { ...E12, purchases: 1 }, say).findings)).toEqual([
      'machines 0 shafts 1 turnedBy shaft: There is no shaft with the id "axle".',
    ]);
    // What another machine lacks does not stand in the way.
    expect(said(['machines', 1, 'motor'], null)).toEqual([]);
  });
});

describe('laws', () => {
  /** Each finding is a sentence, and points at something in the file or at a field that is still to be filled in. */
  function expectSound(json: unknown, findings: readonly Finding[]): void {
    for (const { where, what } of findings) {
      expect(what).toMatch(/^["\dA-Z−-].*[^.]\.$/s);
      expect(isPlace(json, where), `${where.join(' ')}: ${what}`).toBe(true);
    }
  }
  test('any valid file gives a plan or reasons', () => {
    fc.assert(
      fc.property(shopFiles, (file) => {
        const json: unknown = JSON.parse(writeShopFile(file, 'test'));
        for (const machine of file.machines) {
          for (const material of file.materials) {
            expectSound(json, resolve(file, { machine: machine.id, material: material.id }, say).findings);
          }
        }
      }),
      { numRuns: 100 },
    );
  });
  test('the demo with this and that taken away gives a plan or reasons', () => {
    const bare = changed(demo, [['racks', 0, 'pieces'], []], [['machines'], [valueAt(demo, ONE)]]);
    const placesIn = (at: Place): readonly Place[] => {
      const value = valueAt(bare, at);
      if (typeof value !== 'object' || value === null || Array.isArray(value)) return [];
      return Object.keys(value).flatMap((key) => [[...at, key], ...placesIn([...at, key])]);
    };
    const opens = (json: unknown) => readShopFile(JSON.stringify(json)).ok;
    const places = [...placesIn(ONE), ...placesIn(STAGE), ...placesIn(['materials', 0])].filter((where) =>
      opens(changed(bare, [where, GONE])),
    );
    let plans = 0;
    fc.assert(
      fc.property(fc.subarray(places, { minLength: 1, maxLength: 8 }), (gone) => {
        const json = gone.reduce<unknown>(
          (rest, where) => (valueAt(rest, where) === undefined ? rest : changed(rest, [where, GONE])),
          bare,
        );
        fc.pre(opens(json));
        const outcome = resolve(opened(JSON.stringify(json)), E12, say);
        if (outcome.ok) plans += 1;
        expectSound(json, outcome.findings);
      }),
      { numRuns: 150 },
    );
    expect(plans).toBeGreaterThan(15);
  });
  test('exchanging the two sides of machine and material inverts the wanted ratio', () => {
    for (const material of ['e12', 'u40', 'l5']) {
      const at = ['materials', ['e12', 'u40', 'l5'].indexOf(material)];
      const plan = demoPlan({ machine: 'bench-1', material });
      const before = JSON.parse(demoText());
      const { A, B, ratio, chemistry } = before.materials[Number(at[1])];
      const [a = '', b = ''] = String(ratio?.parts).split(':');
      const turnedRatio: Change =
        ratio === undefined
          ? [[...at, 'chemistry'], { ...chemistry, isocyanateIn: 'A', A: chemistry.B, B: chemistry.A }]
          : [[...at, 'ratio', 'parts'], `${b} : ${a}`];
      const turned = demoPlan({ machine: 'bench-1', material }, [[...at, 'A'], B], [[...at, 'B'], A], turnedRatio);
      expect(exactText(plan.mix.wantedBPerA.mul(turned.mix.wantedBPerA))).toBe('1/1');
    }
  });
});

test.each(['four-gear', 'three-pair'])('%s: a published problem with wheels of 12 to 60 teeth is a plan of any wheels', (name) => {
  const plan = planned(JSON.parse(readFileSync(new URL(`../examples/${name}.ratiowright`, import.meta.url), 'utf8')), {});
  expect(plan.choice).toEqual({ wheels: 'any', purchases: Number.POSITIVE_INFINITY, teeth: { from: 12, to: 60 }, anyPump: false });
  expect(1 / float(plan.mix.wantedBPerA)).toBe(6.931);
  expect(plan.stages.every((stage) => stage.open)).toBe(true);
});
