import type { Need } from './need.ts';
import { binomials } from './planTable.ts';

/** Every multiset of up to so many parts by one number: those of fewer parts first, those of one size in the order of their last part, then of the one before. */
export interface Multisets {
  /** How many there are in all. */
  readonly count: number;
  /** Largest number of parts for which there is room. */
  readonly most: number;
  /** Where the multisets of just so many parts begin. */
  readonly from: (size: number) => number;
  /** The number of one multiset. */
  readonly placeOf: (need: Need) => number;
  /** Of a list by number, those of up to so many parts of which it says yes. */
  readonly readUpTo: (size: number, wanted: (index: number) => boolean) => readonly Need[];
  /**
   * The numbers of all that a multiset holds, itself last, some twice; how many is answered, and the list is good until the next call.
   * Of those of up to `most` parts, where that is said.
   */
  readonly within: (need: Need, most?: number) => number;
  readonly places: Int32Array;
}

/** 64 MB, one float each. */
const MOST_PLACES = 2 ** 23;

/** @source counting: the combinatorial number system, for multisets */
export function multisets(parts: number, most: number): Multisets {
  const over = binomials(parts + most, most);
  const begin: number[] = [];
  let count = 0;
  let room = 0;
  for (let size = 0; size <= most; size++) {
    const ofSize = size === 0 ? 1 : (over[size]?.[parts + size - 1] ?? 0);
    if (count + ofSize > MOST_PLACES) break;
    begin.push(count);
    count += ofSize;
    room = size;
  }
  const places = new Int32Array(2 ** room);
  const sizes = new Int32Array(2 ** room);
  const inSize = new Int32Array(2 ** room);
  return {
    count,
    most: room,
    from: (size) => begin[size] ?? count,
    places,
    placeOf: (need) => need.reduce((place, part, i) => place + (over[i + 1]?.[part + i] ?? 0), begin[need.length] ?? 0),
    readUpTo: (upTo, wanted) => {
      const found: Need[] = [];
      for (let size = 0; size <= upTo; size++) {
        const need = new Uint16Array(size);
        for (let place = begin[size] ?? count; place < (begin[size + 1] ?? count); place++, toNext(need))
          if (wanted(place)) found.push([...need]);
      }
      return found;
    },
    within: (need, most = room) => {
      // each subset with its last part added: the subsets of the parts before, then these with this one
      let known = 1;
      for (let i = 0; i < need.length; i++) {
        const part = need[i] ?? 0;
        const before = known;
        for (let k = 0; k < before; k++) {
          const size = (sizes[k] ?? 0) + 1;
          if (size > most) continue;
          const place = (inSize[k] ?? 0) + (over[size]?.[part + size - 1] ?? 0);
          sizes[known] = size;
          inSize[known] = place;
          places[known] = (begin[size] ?? 0) + place;
          known += 1;
        }
      }
      return known;
    },
  };
}

/** From one multiset to the next of as many parts, in their order. */
export function toNext(need: Uint16Array): void {
  let i = 0;
  while (i + 1 < need.length && need[i] === need[i + 1]) i++;
  need[i] = (need[i] ?? 0) + 1;
  need.fill(0, 0, i);
}

/** How many multisets of just so many parts there are. */
export const multisetCount = (parts: number, size: number): number =>
  size === 0 ? 1 : (binomials(parts + size, size)[size]?.[parts + size - 1] ?? 0);
