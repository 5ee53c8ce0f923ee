import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { driveKind } from '../../core/src/drives/index.ts';
import type { MachineRow } from '../../core/src/file/machine.ts';
import type { Plan, Stage } from '../../core/src/plan.ts';
import { exactText, float, ONE, whole } from '../../core/src/ratio.ts';
import { fittedPumps, fittedTeeth, madeBPerA, pumpRatio, sprocketRatio, trainTurns } from '../../core/src/train.ts';
import { inLine, pair, planOf, pumpRow, shopOf, stageRow } from './planFixture.ts';

type Shaft = MachineRow['shafts'][number];

/** A machine laid out by its shafts: teeth of each stage in turn, cc of both pumps, and the shafts they sit on. */
interface Layout {
  readonly teeth: readonly (readonly [number, number])[];
  readonly shafts: readonly Shaft[];
  readonly A: readonly [shaft: string, displacement_cc: string];
  readonly B: readonly [shaft: string, displacement_cc: string];
}

function planFor({ teeth, shafts, A, B }: Layout): Plan {
  const side = (name: string, [shaft, displacement_cc]: readonly [string, string]) => ({
    shaft,
    fitted: name,
    pumps: [pumpRow(name, displacement_cc)],
  });
  const stages = teeth.map(([driver, driven]) => stageRow(driver, driven));
  return planOf(shopOf(inLine(stages, { shafts: [...shafts], A: side('pump-a', A), B: side('pump-b', B) })));
}

const turned = (id: string, shaft: string, stage?: string): Shaft => ({ id, turnedBy: stage === undefined ? { shaft } : { shaft, stage } });
const motor: Shaft = { id: 'motor' };

interface Expected {
  readonly turnsA: string;
  readonly turnsB: string;
  /** Displacement of B over A, turns of B over A, and their product. */
  readonly pumps: string;
  readonly sprockets: string;
  readonly bPerA: string;
  readonly turns: readonly Stage['turns'][];
}

// Worked by hand: turns = product of driver over driven from the motor on.
const LAYOUTS: readonly (readonly [string, Layout, Expected])[] = [
  [
    'B driven from the shaft of A: 20/30 cancels, 23/25 stays',
    {
      teeth: [
        [20, 30],
        [23, 25],
      ],
      shafts: [motor, turned('a', 'motor', 's1'), turned('b', 'a', 's2')],
      A: ['a', '12'],
      B: ['b', '6'],
    },
    { turnsA: '2/3', turnsB: '46/75', pumps: '1/2', sprockets: '23/25', bPerA: '23/50', turns: ['both', 'B'] },
  ],
  [
    'both from a jackshaft: 18/36 cancels, 15/40 over 20/25',
    {
      teeth: [
        [18, 36],
        [20, 25],
        [15, 40],
      ],
      shafts: [motor, turned('jack', 'motor', 's1'), turned('a', 'jack', 's2'), turned('b', 'jack', 's3')],
      A: ['a', '10'],
      B: ['b', '20'],
    },
    { turnsA: '2/5', turnsB: '3/16', pumps: '2/1', sprockets: '15/32', bPerA: '15/16', turns: ['both', 'A', 'B'] },
  ],
  [
    'A on the motor, B through a jackshaft: 21/30 times 20/23',
    {
      teeth: [
        [21, 30],
        [20, 23],
      ],
      shafts: [motor, turned('jack', 'motor', 's1'), turned('b', 'jack', 's2')],
      A: ['motor', '15'],
      B: ['b', '5'],
    },
    { turnsA: '1/1', turnsB: '14/23', pumps: '1/3', sprockets: '14/23', bPerA: '14/69', turns: ['B', 'B'] },
  ],
  [
    'A geared, B coupled to the motor: 34/17 the other way up',
    {
      teeth: [[17, 34]],
      shafts: [motor, turned('coupled', 'motor'), turned('a', 'motor', 's1')],
      A: ['a', '10'],
      B: ['coupled', '4'],
    },
    { turnsA: '1/2', turnsB: '1/1', pumps: '2/5', sprockets: '2/1', bPerA: '4/5', turns: ['A'] },
  ],
  [
    'both from the motor, each by its own stage, and one that drives neither: 13/39 over 19/38',
    {
      teeth: [
        [19, 38],
        [13, 39],
        [20, 50],
      ],
      shafts: [motor, turned('a', 'motor', 's1'), turned('b', 'motor', 's2'), turned('stirrer', 'motor', 's3')],
      A: ['a', '8'],
      B: ['b', '8'],
    },
    { turnsA: '1/2', turnsB: '1/3', pumps: '1/1', sprockets: '2/3', bPerA: '2/3', turns: ['A', 'B', 'neither'] },
  ],
];

describe('five layouts [kinematics, worked by hand]', () => {
  test.each(LAYOUTS)('%s', (_name, layout, expected) => {
    const plan = planFor(layout);
    const teeth = fittedTeeth(plan);
    const pumps = fittedPumps(plan);
    expect({
      turnsA: exactText(trainTurns(plan, 'A', teeth)),
      turnsB: exactText(trainTurns(plan, 'B', teeth)),
      pumps: exactText(pumpRatio(pumps)),
      sprockets: exactText(sprocketRatio(plan, teeth)),
      bPerA: exactText(madeBPerA(plan, pumps, teeth)),
      turns: plan.stages.map((stage) => stage.turns),
    }).toEqual(expected);
  });
});

describe('driver, driven, and turns out for one turn in [worked apart from this program]', () => {
  const { turns } = driveKind('chain');

  test('10 driving 52 turns 0.19231, 20 driving 80 turns 0.25: 192.30769 and 250 rpm at 1000', () => {
    expect([float(turns(10, 52)), float(turns(20, 80))]).toEqual([expect.closeTo(0.19231, 5), 0.25]);
    expect([float(turns(10, 52).mul(1000)), float(turns(20, 80).mul(1000))]).toEqual([expect.closeTo(192.30769, 5), 250]);
    expect([exactText(ONE.div(turns(10, 52))), exactText(ONE.div(turns(20, 80)))]).toEqual(['26/5', '4/1']);
  });
  test('15 driving 20, then 18: two teeth of twenty less are 11.1 per cent more turns', () => {
    const plan = planOf(shopOf(inLine([stageRow(15, 20)])));
    const before = trainTurns(plan, 'B', fittedTeeth(plan));
    const after = trainTurns(plan, 'B', [pair(15, 18)]);
    expect([exactText(before), float(after)]).toEqual(['3/4', expect.closeTo(0.83333, 5)]);
    expect(float(after.div(before).sub(ONE).mul(100))).toBeCloseTo(11.11111, 5);
  });
  test('17 for 12 teeth on the driver: A per B times 12/17, B per A times 17/12 (18 becomes 12.70588; 25.4 mm over it 1.99907)', () => {
    const machine = inLine([stageRow(12, 12)]);
    const plan = planOf(
      shopOf({ ...machine, A: { ...machine.A, pumps: [pumpRow('pump-a', '18')] }, B: { ...machine.B, pumps: [pumpRow('pump-b', '1')] } }),
    );
    const bPerA = madeBPerA(plan, fittedPumps(plan), [pair(17, 12)]);
    expect(exactText(ONE.div(madeBPerA(plan, fittedPumps(plan), fittedTeeth(plan))))).toBe('18/1');
    expect(float(ONE.div(bPerA))).toBeCloseTo(12.70588, 5);
    expect(25.4 * float(bPerA)).toBeCloseTo(1.99907, 5);
  });
});

describe('laws', () => {
  const teeth = fc.record({ driver: fc.integer({ min: 9, max: 120 }), driven: fc.integer({ min: 9, max: 120 }) });
  const plan = planFor({
    teeth: [
      [20, 20],
      [20, 20],
      [20, 20],
    ],
    shafts: [motor, turned('jack', 'motor', 's1'), turned('a', 'jack', 's2'), turned('b', 'jack', 's3')],
    A: ['a', '7.3'],
    B: ['b', '2 1/3'],
  });
  const pumps = fittedPumps(plan);

  test('pump ratio times sprocket ratio is the ratio, and so are volumes for one turn of the motor', () => {
    fc.assert(
      fc.property(teeth, teeth, teeth, (one, two, three) => {
        const all = [one, two, three];
        const made = madeBPerA(plan, pumps, all);
        expect(made.equals(pumpRatio(pumps).mul(sprocketRatio(plan, all)))).toBe(true);
        const volume = (side: 'A' | 'B') => trainTurns(plan, side, all).mul(pumps[side].displacement_m3_per_rev);
        expect(made.equals(volume('B').div(volume('A')))).toBe(true);
      }),
    );
  });
  test('a stage that both pumps share scales both speeds and leaves the ratio alone', () => {
    fc.assert(
      fc.property(teeth, teeth, teeth, teeth, (shared, other, two, three) => {
        expect(madeBPerA(plan, pumps, [shared, two, three]).equals(madeBPerA(plan, pumps, [other, two, three]))).toBe(true);
        const speed = trainTurns(plan, 'A', [shared, two, three]).div(trainTurns(plan, 'A', [other, two, three]));
        expect(speed.equals(whole(shared.driver * other.driven).div(whole(shared.driven * other.driver)))).toBe(true);
      }),
    );
  });
  test('a stage without teeth is a fault of ours', () => {
    expect(() => trainTurns(plan, 'B', [])).toThrow(RangeError);
  });
});
