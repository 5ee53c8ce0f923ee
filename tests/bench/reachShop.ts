import { FORMAT, VERSION } from '../../core/src/file/envelope.ts';
import { resolve } from '../../core/src/file/resolve.ts';
import type { Plan } from '../../core/src/plan.ts';
import { teethFrom } from '../core/search/racks.ts';
import { opened, say } from '../file/shop.ts';

/** Tooth counts on the rack. */
const SIZES = teethFrom(13, 52);
const STAGES = [
  ['s1', 20, 24],
  ['s2', 20, 23],
  ['s3', 24, 20],
] as const;

const quantity = (value: string, unit: string) => ({ value, unit });

const slot = (teeth: number) => ({
  teeth,
  bore: quantity('25', 'mm'),
  teethFrom: 13,
  teethTo: 52,
  guard: quantity('240', 'mm'),
});

function side(shaft: string, displacement: string, gearTeeth: number, pressure: string) {
  const pump = {
    id: `pump-${shaft}`,
    displacement: quantity(displacement, 'cc/rev'),
    tolerance: quantity('0.5', '%'),
    speedFrom: quantity('6', 'rpm'),
    speedTo: quantity('120', 'rpm'),
    gear: { teeth: gearTeeth },
  };
  return {
    shaft,
    fitted: pump.id,
    pumps: [pump],
    pressure: quantity(pressure, 'bar'),
    mechanicalEfficiency: quantity('0.88', ''),
    tank: { fill: quantity('40', 'L'), lowMark: quantity('6', 'L') },
  };
}

/**
 * An invented shop whose machine has all that the checks across the stages ask for: tooth counts, one piece each, on two or three open
 * stages with centres that can be set, guards, take-up, pump speeds and a load.
 */
export function reachPlan(stages: 2 | 3, sizes: readonly number[] = SIZES): Plan {
  const open = STAGES.slice(0, stages);
  const shaftAfter = (i: number): string => (i < 0 ? 'motor' : `shaft-${i + 1}`);
  const machine = {
    id: 'reach',
    name: `${stages} stages`,
    rack: 'rack',
    motor: {
      speed: quantity('75', 'rpm'),
      usable: { from: quantity('10', '%'), to: quantity('100', '%') },
      dialStep: quantity('1', '%'),
      ratedTorque: quantity('60', 'N m'),
    },
    shafts: [{ id: 'motor' }, ...open.map(([stage], i) => ({ id: shaftAfter(i), turnedBy: { shaft: shaftAfter(i - 1), stage } }))],
    stages: open.map(([id, driver, driven]) => ({
      id,
      kind: 'chain',
      size: '08B',
      driver: slot(driver),
      driven: slot(driven),
      pitches: 70,
      centre: { from: quantity('280', 'mm'), to: quantity('330', 'mm') },
      takeUp: quantity('1', 'pitches'),
      offsetLink: false,
    })),
    A: side('motor', '15', 12, '28'),
    B: side(shaftAfter(stages - 1), '5', 10, '14'),
    serviceFactor: quantity('1.3', ''),
    search: { wheels: 'rack' },
  };
  const material = {
    id: 'two-parts',
    name: 'Two parts by volume',
    ratio: { basis: 'volume', parts: '100 : 38.9' },
    limits: { definition: '% of B per A', low: '-2', high: '2' },
    A: {},
    B: {},
  };
  const pieces = sizes.map((teeth) => ({ id: `z${teeth}`, kind: 'chain', size: '08B', teeth, bore: quantity('25', 'mm'), quantity: 1 }));
  const shop = {
    name: 'Invented shop for reaches',
    invented: true,
    note: 'Invented for measuring: shop, machine, material and rack are made up.',
  };
  const text = JSON.stringify({
    format: FORMAT,
    version: VERSION,
    shop,
    machines: [machine],
    materials: [material],
    racks: [{ id: 'rack', name: 'Rack', pieces }],
    changeSheets: [],
    ratioChecks: [],
  });
  const plan = resolve(opened(text), {}, say);
  if (!plan.ok) throw new Error(plan.findings.map(({ what }) => what).join('\n'));
  return plan.value;
}
