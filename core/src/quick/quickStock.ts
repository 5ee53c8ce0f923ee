import { ENDS, type Plan, type Slot, type Stage } from '../plan.ts';
import { sameBore, sameSize, suitsBore } from '../rack.ts';
import type { Pair } from '../search/index.ts';

/** An open stage of a plan with the pairs that the search may choose from. */
export interface OpenPairs {
  readonly stage: Stage;
  readonly pairs: readonly Pair[];
}

/** Slots of one wheel size that the same bores suit. */
interface Kind {
  readonly stage: Stage;
  readonly slot: Slot;
}

const isSameKind = (a: Kind, b: Kind): boolean =>
  sameSize(a.stage, b.stage) && (a.slot.bore_m.known ? sameBore(a.slot.bore_m, b.slot.bore_m) : !b.slot.bore_m.known);

const STAYS = -1;

/**
 * Whether the rack has a wheel for every slot that changes.
 *
 * @param open  every open stage, in the order of the problem
 * @returns asked with a pair for each stage: true, the rack alone serves them all; false, there are too few pieces, and none may be bought;
 * null, it depends on who gets what, on wheels that come off or on what is bought
 * @source as `assignPieces`, which serves as many slots as can be served, the rack before purchases
 * @example quickStock(one wheel of each size on the rack, two stages)(20 driving 30, 20 driving 40)  // false
 */
export function quickStock(plan: Plan, open: readonly OpenPairs[]): (pairs: readonly number[]) => boolean | null {
  const slots = open.map(({ stage }) => ENDS.map((end): Kind => ({ stage, slot: stage[end] })));
  const kinds: Kind[] = [];
  for (const slot of slots.flat()) if (!kinds.some((kind) => isSameKind(kind, slot))) kinds.push(slot);
  const wheels = wheelsOf(plan, kinds, open);
  // what driver and driven of each pair want: a kind and its teeth as one number
  const wanted = open.map(({ stage, pairs }, s) => {
    const own = ENDS.map((_, e) => kinds.findIndex((kind) => slots[s]?.[e] && isSameKind(kind, slots[s][e])));
    return Float64Array.from(
      pairs.flatMap((pair) => ENDS.map((end, e) => (pair[end] === stage[end].teeth ? STAYS : pair[end] * kinds.length + (own[e] ?? 0)))),
    );
  });
  const seen = new Float64Array(2 * open.length);
  return (pairs) => {
    let count = 0;
    let sure = true;
    for (let s = 0; s < wanted.length; s++) {
      for (let e = 0; e < 2; e++) {
        const wheel = wanted[s]?.[2 * (pairs[s] ?? 0) + e] ?? STAYS;
        if (wheel === STAYS) continue;
        seen[count++] = wheel;
        let times = 0;
        for (let k = 0; k < count; k++) if (seen[k] === wheel) times += 1;
        const { least, most } = wheels.get(wheel) ?? NO_WHEEL;
        if (times > most) return false;
        sure &&= times <= least;
      }
    }
    return sure || null;
  };
}

/** How many pieces of a wheel serve slots of its kind: whatever the others take, and at the very most. */
interface Supply {
  readonly least: number;
  readonly most: number;
}

const NO_WHEEL: Supply = { least: 0, most: 0 };

function wheelsOf(plan: Plan, kinds: readonly Kind[], open: readonly OpenPairs[]): ReadonlyMap<number, Supply> {
  const found = new Map<number, Supply>();
  const teeth = new Set(open.flatMap(({ pairs }) => pairs.flatMap(({ driver, driven }) => [driver, driven])));
  for (const [k, kind] of kinds.entries()) {
    const rivals = kinds.filter((other) => other !== kind && sameSize(other.stage, kind.stage));
    const rack = plan.pieces.filter((piece) => sameSize(piece, kind.stage) && suitsBore(piece.bore_m, kind.slot));
    const unrivalled = rack.filter((piece) => rivals.every(({ slot }) => !suitsBore(piece.bore_m, slot)));
    for (const wheel of teeth) {
      const comingOff = open
        .filter(({ stage }) => sameSize(stage, kind.stage))
        .reduce((sum, { stage }) => sum + ENDS.filter((end) => stage[end].teeth === wheel).length, 0);
      const pieces = (of: readonly Plan['pieces'][number][]): number =>
        of.reduce((sum, piece) => sum + (piece.teeth === wheel ? piece.quantity : 0), 0);
      const most = plan.choice.purchases > 0 ? Infinity : pieces(rack) + comingOff;
      found.set(wheel * kinds.length + k, { least: pieces(unrivalled), most });
    }
  }
  return found;
}
