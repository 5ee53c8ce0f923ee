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
  /** The numbers of all that a multiset holds, itself last, some twice; how many is answered, and the list is good until the next call. */
  readonly within: (need: Need) => number;
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
    within: (need) => {
      // each subset with its last part added: the subsets of the parts before, then these with this one
      let known = 1;
      for (let i = 0; i < need.length; i++) {
        const part = need[i] ?? 0;
        for (let k = 0; k < known; k++) {
          const size = (sizes[k] ?? 0) + 1;
          const place = (inSize[k] ?? 0) + (over[size]?.[part + size - 1] ?? 0);
          sizes[known + k] = size;
          inSize[known + k] = place;
          places[known + k] = (begin[size] ?? 0) + place;
        }
        known *= 2;
      }
      return known;
    },
  };
}
