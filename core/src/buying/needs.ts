import { ENDS, type Plan, type Slot, type Stage, type Teeth } from '../plan.ts';
import { sameSize, suitsBore } from '../rack.ts';
import type { Candidate, Pair, PumpPair, SearchProblem } from '../search/index.ts';
import type { Need } from './need.ts';
import { byTrial } from './needsByTrial.ts';
import type { Wheel } from './wheels.ts';

export interface Needs {
  /** For each part of a choice that is nowhere to be had, those that could be bought for it: no candidate with it needs fewer. */
  readonly lacking: (choice: Pair | PumpPair) => readonly Need[];
  /** The smallest purchases that let a candidate be fitted; more than one only where bores leave a choice, none where nothing helps. */
  readonly of: (candidate: Candidate, teeth: () => readonly Teeth[]) => readonly Need[];
}

/** One wheel that a slot may take, and what there is of it. */
interface Sort {
  /** Pieces on the rack. */
  readonly quantity: number;
  /** Index of the wheel to buy, -1 where it may not be bought. */
  readonly wheel: number;
  /** The same of every bore. */
  readonly wheels: Need;
  /** Whether all slots of this size have one bore, so that pieces need not be told apart. */
  readonly plain: boolean;
}

/** What a pair puts on: sort of each end, null where the fitted wheel stays. */
type Places = readonly (number | null)[];

/**
 * What a candidate needs beyond the rack, the pumps at hand and the wheels it takes off the machine.
 *
 * @param problem of the same plan, as the search sees it
 * @param wheels  what may be bought
 * @param pumpNeed of each set of pumps of the problem, the pumps to buy
 * @source counting: wanted less on hand, wheel by wheel; by trial where bores differ within a size
 */
export function needsOf(plan: Plan, { stages, pumps }: SearchProblem, wheels: readonly Wheel[], pumpNeed: readonly Need[]): Needs {
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
  const lacking = new Map<Pair | PumpPair, readonly Need[]>(pumps.map((pair, p) => [pair, (pumpNeed[p] ?? []).map((part) => [part])]));
  for (const [s, { pairs }] of stages.entries()) {
    for (const [p, pair] of pairs.entries()) {
      const absent = (places[s]?.[p] ?? []).flatMap((place) => {
        const sort = place === null || onMachine.has(place) ? undefined : sorts[place];
        return sort === undefined || sort.quantity > 0 ? [] : [sort.wheels];
      });
      lacking.set(pair, absent);
    }
  }

  // millions of candidates come by, so what they put on and take off is counted without making lists
  const wanted = new Int32Array(sorts.length);
  const touched = new Int32Array(4 * open.length);
  return {
    lacking: (choice) => lacking.get(choice) ?? NOTHING,
    of: ({ pump, pairs }, teeth) => {
      const ofPumps = pumpNeed[pump] ?? [];
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
      if (!plain) return withPumps(byTrial(plan, wheels, teeth()), ofPumps);
      if (inVain) return NOTHING;
      if (need === null) return ofPumps.length === 0 ? FREE : [ofPumps];
      return withPumps([need.length > 1 ? need.sort((a, b) => a - b) : need], ofPumps);
    },
  };
}

const NOTHING: readonly Need[] = [];
const FREE: readonly Need[] = [[]];

/** Pumps come after all wheels. */
const withPumps = (needs: readonly Need[], ofPumps: Need): readonly Need[] =>
  ofPumps.length === 0 ? needs : needs.map((need) => [...need, ...ofPumps]);

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
  const same = wheels.flatMap((wheel, index) => (wheel.teeth === teeth && sameSize(wheel, stage) ? [index] : []));
  return { quantity: suiting.reduce((sum, { quantity }) => sum + quantity, 0), wheel: same[0] ?? -1, wheels: same, plain };
}
