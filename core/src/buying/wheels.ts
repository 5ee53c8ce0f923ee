import type { Given } from '../given.ts';
import { ENDS, type Piece, type Plan } from '../plan.ts';
import { mayBuy, sameBore, sameSize } from '../rack.ts';
import type { Fraction } from '../ratio.ts';

/** A wheel as it is ordered; a bore that is not given fits any shaft, as a blank one on the rack does. */
export interface Wheel {
  readonly kind: string;
  readonly size: string;
  readonly teeth: number;
  readonly bore_m: Given<Fraction>;
}

const alike = (a: Wheel, b: Wheel): boolean => sameSize(a, b) && (a.bore_m.known ? sameBore(a.bore_m, b.bore_m) : !b.bore_m.known);

/**
 * Every wheel that may be bought for a slot that may change: of its size and bore, with teeth as the search allows.
 *
 * @returns sizes and bores in the order of the stages, each by teeth ascending
 * @source the plan's own search settings
 */
export function wheelsToBuy(plan: Plan): readonly Wheel[] {
  const lists: Wheel[][] = [];
  for (const stage of plan.stages) {
    if (!stage.open) continue;
    for (const end of ENDS) {
      const slot = stage[end];
      if (!slot.mayChange) continue;
      const found = buyableTeeth(plan, slot).map((teeth): Wheel => ({ kind: stage.kind, size: stage.size, teeth, bore_m: slot.bore_m }));
      const [first] = found;
      if (first === undefined) continue;
      const list = lists.find(([other]) => other !== undefined && alike(other, first));
      if (list === undefined) lists.push(found);
      else list.push(...found.filter(({ teeth }) => list.every((other) => other.teeth !== teeth)));
    }
  }
  return lists.flatMap((list) => list.sort((a, b) => a.teeth - b.teeth));
}

/** No wheel of any kind has more. */
const MOST_TEETH = 400;

function buyableTeeth(plan: Plan, slot: Parameters<typeof mayBuy>[1]): readonly number[] {
  return Array.from({ length: MOST_TEETH }, (_, i) => i + 1).filter((teeth) => mayBuy(plan, slot, teeth));
}

/** A bought wheel lying on the rack. */
const pieceOf = (wheel: Wheel, index: number): Piece => ({ id: `bought ${index + 1}`, ...wheel, quantity: 1, part: '', place: '' });

/** The same machine with these wheels on its rack, and nothing more to buy. */
export const withWheels = (plan: Plan, wheels: readonly Wheel[]): Plan => ({
  ...plan,
  pieces: [...plan.pieces, ...wheels.map(pieceOf)],
  choice: { ...plan.choice, wheels: 'rack', purchases: 0, teeth: null },
});
