import { EXTENSION, FORMAT, VERSION } from '../../../core/src/file/envelope.ts';
import { teethFrom } from '../../core/search/racks.ts';

export const BIG_SHOP_NAME = `big${EXTENSION}`;

const SIZES = teethFrom(9, 72);
const DISPLACEMENTS = { A: ['2.16', '2.88', '1.05', '1.26'], B: ['1.92', '2.43', '1.12', '1.44'] } as const;
const STAGES = [
  ['s1', 'motor', 'shaft-1', 12, 20],
  ['s2', 'shaft-1', 'shaft-2', 25, 17],
  ['s3', 'shaft-2', 'shaft-3', 15, 28],
] as const;

const quantity = (value: string, unit: string) => ({ value, unit });

function side(name: 'A' | 'B', shaft: string) {
  const pumps = DISPLACEMENTS[name].map((value, i) => ({ id: `${name}-${i + 1}`, displacement: quantity(value, 'cc/rev') }));
  return { shaft, fitted: `${name}-1`, pumps };
}

/** An invented shop larger than most: 64 tooth counts, two pieces each, three open stages and sixteen pairs of pumps. */
export function bigShop(): string {
  const machine = {
    id: 'big',
    name: 'Three stages',
    rack: 'rack',
    motor: { speed: quantity('90', 'rpm') },
    shafts: [{ id: 'motor' }, ...STAGES.map(([stage, shaft, id]) => ({ id, turnedBy: { shaft, stage } }))],
    stages: STAGES.map(([id, , , driver, driven]) => ({
      id,
      kind: 'chain',
      size: '08B',
      driver: { teeth: driver },
      driven: { teeth: driven },
    })),
    A: side('A', 'motor'),
    B: side('B', 'shaft-3'),
    search: { wheels: 'rack', anyPump: true },
  };
  const material = {
    id: 'two-parts',
    name: 'Two parts by volume',
    ratio: { basis: 'volume', parts: '100 : 38.9' },
    limits: { definition: '% of B per A', low: '-1', high: '1' },
    A: {},
    B: {},
  };
  const pieces = SIZES.map((teeth) => ({ id: `z${teeth}`, kind: 'chain', size: '08B', teeth, quantity: 2 }));
  const shop = {
    name: 'Large invented shop',
    invented: true,
    note: 'Invented for measuring: shop, machine, material and rack are made up.',
  };
  return JSON.stringify({
    format: FORMAT,
    version: VERSION,
    shop,
    machines: [machine],
    materials: [material],
    racks: [{ id: 'rack', name: 'Rack', pieces }],
    changeSheets: [],
    ratioChecks: [],
  });
}
