/** Holds numbered values and lets go of all but the `keep` nearest to 0, and whatever a float cannot tell from the last of those. */
export interface Nearest {
  /** Takes one value with its number; answers how far from 0 the next may be. */
  readonly take: (off: number, number: number) => number;
  /** The numbers of those held, in no order. */
  readonly numbers: () => readonly number[];
}

/** At least this many values are taken before they are sorted out. */
const LEAST_ROOM = 4096;

/**
 * @param keep  at least 1
 * @param slack how far an `off` may be from its true value, as a share of `1 + |off|`
 */
export function nearest(keep: number, slack: number): Nearest {
  let offs = new Float64Array(Math.max(LEAST_ROOM, 2 * keep));
  let held = new Float64Array(offs.length);
  let count = 0;
  let bound = Infinity;

  function sortOut(): void {
    if (count <= keep) return;
    const last = offs.slice(0, count).map(Math.abs).sort()[keep - 1] ?? Infinity;
    // twice for the last one's own error, twice for that of the one compared with it
    bound = last + 4 * slack * (1 + last);
    let kept = 0;
    for (let i = 0; i < count; i++) {
      if (Math.abs(offs[i] ?? 0) > bound) continue;
      offs[kept] = offs[i] ?? 0;
      held[kept] = held[i] ?? 0;
      kept += 1;
    }
    count = kept;
    // ties are never dropped: they get more room
    if (2 * count > offs.length) [offs, held] = [grown(offs), grown(held)];
  }

  return {
    take: (off, number) => {
      offs[count] = off;
      held[count] = number;
      count += 1;
      if (count === offs.length) sortOut();
      return bound;
    },
    numbers: () => {
      sortOut();
      return [...held.subarray(0, count)];
    },
  };
}

function grown(list: Float64Array<ArrayBuffer>): Float64Array<ArrayBuffer> {
  const longer = new Float64Array(2 * list.length);
  longer.set(list);
  return longer;
}
