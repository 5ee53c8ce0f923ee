import { type BuyingTarget, type SidePump, targetOf, type Wheel } from '../../../core/src/buying/index.ts';
import type { SlotRow, StageRow } from '../../../core/src/file/machine.ts';
import type { PieceRow } from '../../../core/src/file/rack.ts';
import type { Selection } from '../../../core/src/index.ts';
import type { SideName } from '../../../core/src/plan.ts';
import { ratioOf } from '../../../core/src/ratio.ts';
import { inLine, mm, pieceRow, planOf, pumpRow, rpm, shopOf, stageRow } from '../planFixture.ts';
import type { Dice } from '../search/randomProblem.ts';

/** A wheel that may be bought, by what tells it apart. */
export interface WheelKind {
  readonly size: string;
  readonly teeth: number;
  /** In mm; null where the slot does not say. */
  readonly bore: string | null;
}

/** A pump that is not fitted. */
export interface PumpKind {
  readonly side: SideName;
  readonly pump: string;
}

export type Kind = WheelKind | PumpKind;

export interface RandomShop {
  readonly targets: readonly BuyingTarget[];
  readonly wish: {
    readonly teeth: { readonly from: number; readonly to: number } | null;
    readonly mostPurchases: number;
    readonly pumps: boolean;
    readonly priceOf: (wheel: Pick<WheelKind, 'size' | 'teeth'>) => number | null;
    readonly pumpPriceOf: (pump: SidePump) => number | null;
    /** The same by its kind. */
    readonly pumpPrice: (pump: PumpKind) => number | null;
  };
  /** Read off the rows of the machine, sizes and bores in the order of the stages, then the pumps. */
  readonly kinds: readonly Kind[];
}

/** Few teeth, so that every choice of purchases can be tried; fitted and stocked wheels lie inside and outside what may be bought. */
export function randomShop(dice: Dice): RandomShop {
  const count = dice.pick([1, 1, 2, 2, 3]);
  const from = dice.between(9, 13);
  const to = from + dice.between(1, [0, 4, 2, 1][count] ?? 1);
  const sizes = dice.chance(60) ? (['40'] as const) : (['40', '50'] as const);
  const bores = dice.pick<readonly [string | null, ...(string | null)[]]>([['25'], ['25'], [null], ['25', '20'], ['25', '20', null]]);
  const ranged = dice.chance(60);
  const slot = (): SlotRow => ({
    teeth: dice.between(8, to + 2),
    ...(dice.chance(12) && { mayChange: false }),
    ...boreRow(dice.pick(bores)),
    // without a range of the search, what may be bought for a slot is what the slot takes
    ...((!ranged || dice.chance(30)) && { teethFrom: from - dice.between(0, 1), teethTo: to - Number(dice.chance(30)) }),
    ...(dice.chance(20) && { guardDiameter: mm(String(dice.between(45, 80))) }),
  });
  const stages = Array.from({ length: count }, (): StageRow => stageRow(slot(), slot(), { size: dice.pick(sizes), ...loop(dice) }));
  const pieces = Array.from({ length: dice.between(0, 6) }, (): PieceRow => {
    const bore = dice.pick<string | null>(['25', '25', '20', null]);
    return pieceRow(dice.between(8, to + 2), dice.between(0, 2), { size: dice.pick(sizes), ...boreRow(bore) });
  });
  const anyPump = dice.chance(25);
  const pumps = dice.chance(25);
  const spares: readonly PumpKind[] =
    anyPump || pumps ? [{ side: 'A', pump: 'pump-c' }, ...(pumps ? [{ side: 'B' as const, pump: 'pump-d' }] : [])] : [];
  const spareRows = (side: SideName) =>
    spares.filter((one) => one.side === side).map(({ pump }) => pumpRow(pump, side === 'A' ? '12' : '6'));
  const machine = inLine(stages, {
    A: {
      shaft: 'motor',
      fitted: 'pump-a',
      pumps: [...(pumps ? spareRows('A') : []), pumpRow('pump-a', '10'), ...(pumps ? [] : spareRows('A'))],
    },
    B: { shaft: `shaft-${count}`, fitted: 'pump-b', pumps: [pumpRow('pump-b', '5'), ...spareRows('B')] },
    ...(dice.chance(25) && {
      B: {
        shaft: `shaft-${count}`,
        fitted: 'pump-b',
        pumps: [pumpRow('pump-b', '5', { speedFrom: rpm('55'), speedTo: rpm('70') }), ...spareRows('B')],
      },
      motor: { speed: rpm('60'), usable: { from: { value: '100', unit: '%' }, to: { value: '100', unit: '%' } } },
    }),
  });
  const mostPurchases = dice.between(0, count === 1 ? 3 : 2);
  const factor = dice.between(1, 7);
  const pumpPrice = ({ side }: { readonly side: SideName }): number | null => (factor === 7 ? null : side === 'A' ? factor : 2 * factor);
  const wish = {
    teeth: ranged ? { from, to } : null,
    mostPurchases,
    pumps,
    priceOf: ({ size, teeth }: Pick<WheelKind, 'size' | 'teeth'>): number | null => {
      const price = (teeth * factor + size.charCodeAt(0)) % 8;
      return price === 7 ? null : price;
    },
    pumpPriceOf: pumpPrice,
    pumpPrice,
  };
  const selection: Selection = { ...(mostPurchases > 0 && { purchases: mostPurchases }), ...(ranged && { teeth: { from, to } }), anyPump };
  const kinds = mostPurchases === 0 ? [] : [...kindsOf(stages, ranged ? { from, to } : null), ...(pumps ? spares : [])];
  const limits = { definition: '% of B per A' as const, low: `-${dice.pick(['0', '1', '4'])}`, high: dice.pick(['0', '1', '4']) };
  const plan = planOf(shopOf(machine, pieces, { limits }), selection);
  const targets = Array.from({ length: dice.between(1, 4) }, (): BuyingTarget => {
    const own = targetOf(plan);
    if (own === null || dice.chance(10))
      return { plan, wantedBPerA: ratioOf(1, 3), limits: { low: ratioOf(-1, 20), high: ratioOf(1, 10) } };
    const teeth = () => dice.between(from, to + 1);
    const wheels = Array.from({ length: count }, () => ratioOf(teeth(), teeth())).reduce((product, ratio) => product.mul(ratio));
    return { ...own, wantedBPerA: ratioOf(1, 2).mul(wheels) };
  });
  return { targets, wish, kinds };
}

const boreRow = (bore: string | null) => (bore === null ? {} : { bore: mm(bore) });

/** A chain whose length and centre stand in the way of some pairs. */
function loop(dice: Dice): Partial<StageRow> {
  if (!dice.chance(40)) return {};
  return { pitches: 40, centreNow: mm('180'), centre: { from: mm('170'), to: mm(String(dice.between(175, 190))) } };
}

function kindsOf(stages: readonly StageRow[], range: { readonly from: number; readonly to: number } | null): readonly WheelKind[] {
  const kinds = stages.flatMap((stage) =>
    [stage.driver, stage.driven].flatMap((slot): readonly WheelKind[] => {
      if (slot.mayChange === false) return [];
      const [from, to] = range === null ? [slot.teethFrom ?? 1, slot.teethTo ?? 0] : [range.from, range.to];
      const teeth = Array.from({ length: to - from + 1 }, (_, i) => from + i);
      return teeth.map((one) => ({ size: stage.size, teeth: one, bore: slot.bore?.value ?? null }));
    }),
  );
  const different = kinds.filter((kind, index) => kinds.findIndex((other) => nameOf(other) === nameOf(kind)) === index);
  return different;
}

export const nameOf = (kind: Kind): string =>
  'pump' in kind ? `pump ${kind.side} ${kind.pump}` : `${kind.size} ${kind.teeth} ${kind.bore ?? 'any'}`;

/** The same of what the product bought. */
export const nameOfWheel = ({ size, teeth, bore_m }: Wheel): string =>
  nameOf({ size, teeth, bore: bore_m.known ? bore_m.value.mul(1000).toString() : null });
export const nameOfPump = ({ side, pump }: SidePump): string => nameOf({ side, pump: pump.id });
