import type { AllRatios } from './reachProducts.ts';
import type { Space } from './space.ts';
import type { Admit } from './tiedOptions.ts';

/** Some factors of a space, by index, with all products of theirs. */
export interface Side {
  readonly factors: readonly number[];
  readonly all: AllRatios;
}

/**
 * Whether a product of both sides can be built, asked of one option: of each side the first way to make its product.
 *
 * @returns true: it can be built; false says only that this option cannot
 */
export function quickBuild(space: Space, admit: Admit, short: Side, long: Side): (short: number, long: number) => boolean {
  const pairs = space.factors.slice(1).map(() => 0);
  const candidate = { pump: 0, pairs };
  const put = (factor: number, choice: number): void => {
    if (factor < pairs.length) pairs[factor] = choice;
    else candidate.pump = choice;
  };
  const [ofShort, ofLong] = [firstWays(space, short, put), firstWays(space, long, put)];
  return (i, j) => {
    ofShort(i);
    ofLong(j);
    return admit(candidate) !== null;
  };
}

const UNKNOWN = -1;

/** Puts the choices of a product's first way, unpacked when they are first wanted: a walk comes by the same ones again and again. */
function firstWays({ factors }: Space, side: Side, put: (factor: number, choice: number) => void): (index: number) => void {
  const width = side.factors.length;
  const known = new Int32Array(side.all.log.length * width).fill(UNKNOWN);
  const unpack = (index: number): void => {
    side.all.every(index, (groups) => {
      for (let k = 0; k < width; k++) {
        const list = factors[side.factors[k] ?? 0];
        known[index * width + k] = list?.member[list.first[groups[k] ?? 0] ?? 0] ?? 0;
      }
      return true;
    });
  };
  return (index) => {
    if (known[index * width] === UNKNOWN) unpack(index);
    for (let k = 0; k < width; k++) put(side.factors[k] ?? 0, known[index * width + k] ?? 0);
  };
}
