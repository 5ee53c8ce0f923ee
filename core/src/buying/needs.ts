import { ENDS, type Plan, type Slot, type Stage, type Teeth } from '../plan.ts';
import { assignPieces, changedPlaces, sameSize, sameWheelWanted, suitsBore } from '../rack.ts';
import type { Candidate, Pair, SearchProblem } from '../search/index.ts';
import { type Wheel, withBought } from './wheels.ts';

/** Wheels to buy, by their index in the list of what may be bought, ascending; one that is needed twice stands there twice. */
export type Need = readonly number[];

export interface Needs {
  /** How many wheels of a pair are nowhere on the rack or the machine: no candidate with it needs fewer. */
  readonly absent: (pair: Pair) => number;
  /** The smallest purchases that let a candidate be fitted; more than one only where bores leave a choice, none where nothing helps. */
  readonly of: (candidate: Candidate, teeth: () => readonly Teeth[]) => readonly Need[];
}

/** One wheel that a slot may take, and what there is of it. */
interface Sort {
  /** Pieces on the rack. */
  readonly quantity: number;
  /** Index of the wheel to buy, -1 where it may not be bought. */
  readonly wheel: number;
  /** Whether all slots of this size have one bore, so that pieces need not be told apart. */
  readonly plain: boolean;
}

/** What a pair puts on: sort of each end, null where the fitted wheel stays. */
type Places = readonly (number | null)[];

/**
 * What a candidate needs beyond the rack and the wheels it takes off the machine.
 *
 * @param problem of the same plan, as the search sees it
 * @param wheels  what may be bought
 * @source counting: wanted less on hand, wheel by wheel; by trial where bores differ within a size
 */
export function needsOf(plan: Plan, { stages }: SearchProblem, wheels: readonly Wheel[]): Needs {
  const open = plan.stages.filter((stage) => stage.open);
  const slots = open.flatMap((stage) => ENDS.map((end) => ({ stage, slot: stage[end] })).filter(({ slot }) => slot.mayChange));
  const sorts: Sort[] = [];
  const known = new Map<string, number>();
  const sortOf = (stage: Stage, teeth: number): number => {
    const key = `${open.findIndex((other) => sameSize(other, stage))} ${teeth}`;
    const found = known.get(key) ?? sorts.push(describe(plan, slots, wheels, stage, teeth)) - 1;
    known.set(key, found);
    return found;
  };
  const fitted = open.map((stage) => ENDS.map((end) => (stage[end].mayChange ? sortOf(stage, stage[end].teeth) : null)));
  const places = open.map((stage, s) =>
    (stages[s]?.pairs ?? []).map((pair): Places => ENDS.map((end) => (pair[end] === stage[end].teeth ? null : sortOf(stage, pair[end])))),
  );
  const onMachine = new Set(fitted.flat());
  const absent = new Map<Pair, number>();
  for (const [s, { pairs }] of stages.entries()) {
    for (const [p, pair] of pairs.entries()) {
      const missing = (places[s]?.[p] ?? []).filter((sort) => sort !== null && !onMachine.has(sort) && sorts[sort]?.quantity === 0);
      absent.set(pair, missing.length);
    }
  }

  // millions of candidates come by, so what they put on and take off is counted without making lists
  const wanted = new Int32Array(sorts.length);
  const touched = new Int32Array(4 * open.length);
  const nothing: readonly Need[] = [[]];
  return {
    absent: (pair) => absent.get(pair) ?? 0,
    of: ({ pairs }, teeth) => {
      let size = 0;
      let plain = true;
      for (let s = 0; s < pairs.length; s++) {
        const ends = places[s]?.[pairs[s] ?? -1];
        for (let end = 0; end < ENDS.length; end++) {
          const sort = ends?.[end] ?? null;
          if (sort === null) continue;
          plain &&= sorts[sort]?.plain === true;
          wanted[sort] = (wanted[sort] ?? 0) + 1;
          touched[size++] = sort;
          const off = fitted[s]?.[end] ?? null;
          if (off === null) continue;
          wanted[off] = (wanted[off] ?? 0) - 1;
          touched[size++] = off;
        }
      }
      let need: number[] | null = null;
      let inVain = false;
      for (let i = 0; i < size; i++) {
        const sort = touched[i] ?? 0;
        const { quantity, wheel } = sorts[sort] ?? { quantity: 0, wheel: -1 };
        for (let missing = (wanted[sort] ?? 0) - quantity; missing > 0; missing--) {
          need ??= [];
          if (wheel < 0) inVain = true;
          else need.push(wheel);
        }
        wanted[sort] = 0;
      }
      if (!plain) return byTrial(plan, wheels, teeth());
      if (need === null) return nothing;
      return inVain ? [] : [need.length > 1 ? need.sort((a, b) => a - b) : need];
    },
  };
}

interface ChangeableSlot {
  readonly stage: Stage;
  readonly slot: Slot;
}

function describe(plan: Plan, slots: readonly ChangeableSlot[], wheels: readonly Wheel[], stage: Stage, teeth: number): Sort {
  const bores = slots.filter((other) => sameSize(other.stage, stage)).map(({ slot }) => slot);
  const [first] = bores;
  const plain = bores.every(({ bore_m }) =>
    bore_m.known ? first?.bore_m.known === true && suitsBore(bore_m, first) : !first?.bore_m.known,
  );
  const pieces = plan.pieces.filter((piece) => piece.teeth === teeth && sameSize(piece, stage));
  const suiting = pieces.filter(({ bore_m }) => bores.some((slot) => suitsBore(bore_m, slot)));
  return {
    quantity: suiting.reduce((sum, { quantity }) => sum + quantity, 0),
    wheel: wheels.findIndex((wheel) => wheel.teeth === teeth && sameSize(wheel, stage)),
    plain,
  };
}

/**
 * Every choice of as many wheels as are missing is laid on the rack and tried. One too few never does, and one too many is never needed:
 * each piece serves one slot, so that every set that does is made of what is missing and more.
 */
function byTrial(plan: Plan, wheels: readonly Wheel[], teeth: readonly Teeth[]): readonly Need[] {
  const { purchases } = assignPieces(plan, teeth);
  const places = changedPlaces(plan, teeth);
  const first = places.filter((place, index) => places.findIndex((other) => sameWheelWanted(place, other)) === index);
  const useful = [...wheels.keys()].filter((index) => {
    const wheel = wheels[index];
    return wheel !== undefined && first.some(({ stage, teeth: wanted }) => wanted === wheel.teeth && sameSize(wheel, stage));
  });
  return multisets(useful, purchases).filter((need) => {
    const bought = withBought(
      plan,
      need.flatMap((index) => wheels[index] ?? []),
    );
    return assignPieces(bought, teeth).origins.every(({ driver, driven }) => driver.from !== 'nowhere' && driven.from !== 'nowhere');
  });
}

function multisets(from: readonly number[], size: number): readonly Need[] {
  if (size === 0) return [[]];
  return from.flatMap((one, index) => multisets(from.slice(index), size - 1).map((rest) => [one, ...rest]));
}
