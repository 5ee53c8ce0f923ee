import { FORMAT, VERSION } from '../../core/src/file/envelope.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { resolve } from '../../core/src/file/resolve.ts';
import type { Plan } from '../../core/src/plan.ts';

// Invented machines with a small rack, for which many sizes may be bought.

export interface BuyingShop {
  /** Tooth counts that may be bought, from 9 up. */
  readonly sizes: number;
  readonly stages: 1 | 2;
  /** Tooth counts on the rack, two pieces of each. */
  readonly hand: readonly number[];
  /** Of the material, per cent of B per A. */
  readonly limits: string;
}

const FITTED = [
  [15, 28],
  [18, 40],
] as const;

const quantity = (value: string, unit: string) => ({ value, unit });
const side = (shaft: string, pump: string, value: string) => ({
  shaft,
  fitted: pump,
  pumps: [{ id: pump, displacement: quantity(value, 'cc/rev') }],
});

/** @param most parts to buy */
export function buyingPlan({ sizes, stages, hand, limits }: BuyingShop, most: number): Plan {
  const open = FITTED.slice(0, stages);
  const text = JSON.stringify({
    format: FORMAT,
    version: VERSION,
    shop: { name: 'Invented buying shop', invented: true },
    machines: [
      {
        id: 'bench',
        name: 'Bench',
        rack: 'rack',
        motor: { speed: quantity('90', 'rpm') },
        shafts: [
          { id: 'motor' },
          ...open.map((_, i) => ({ id: `shaft-${i + 1}`, turnedBy: { shaft: i === 0 ? 'motor' : `shaft-${i}`, stage: `s${i + 1}` } })),
        ],
        stages: open.map(([driver, driven], i) => ({
          id: `s${i + 1}`,
          kind: 'chain',
          size: '08B',
          driver: { teeth: driver },
          driven: { teeth: driven },
        })),
        A: side('motor', 'a', '2.16'),
        B: side(`shaft-${stages}`, 'b', '2.16'),
      },
    ],
    materials: [
      {
        id: 'two-parts',
        name: 'Two parts by volume',
        ratio: { basis: 'volume', parts: '2 : 1' },
        limits: { definition: '% of B per A', low: `-${limits}`, high: limits },
        A: {},
        B: {},
      },
    ],
    racks: [
      { id: 'rack', name: 'Rack', pieces: hand.map((teeth) => ({ id: `z${teeth}`, kind: 'chain', size: '08B', teeth, quantity: 2 })) },
    ],
    changeSheets: [],
    ratioChecks: [],
  });
  const read = readShopFile(text);
  if (!read.ok) throw new Error(read.findings.map(({ what }) => what).join('\n'));
  const plan = resolve(read.value, { purchases: most, teeth: rangeOf(sizes) }, { decimal: '.', system: 'metric' });
  if (!plan.ok) throw new Error(plan.findings.map(({ what }) => what).join('\n'));
  return plan.value;
}

/** The teeth that may be bought. */
export const rangeOf = (sizes: number): { readonly from: number; readonly to: number } => ({ from: 9, to: 8 + sizes });
