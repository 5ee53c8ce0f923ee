import type { OpenStage, PumpPair } from './problem.ts';

/** What is known of each choice of a factor, whichever ratio it gives. */
export interface Ranks {
  /** by choice: changed parts, and a number that rises with its place in the order of the file or of the teeth */
  readonly changed: Uint8Array;
  readonly order: Float64Array;
  /** all choices, fewest changed parts first, then by place */
  readonly sequence: Int32Array;
}

/** Teeth stay below this, so that a pair of them is one safe integer. */
export const MOST_TEETH = 2 ** 26;

/** The same place for pairs of equal teeth: such pairs are told apart by the other stages first. */
export const stageRanks = ({ pairs }: OpenStage): Ranks => ranksOf(pairs, ({ driver, driven }) => driver * MOST_TEETH + driven);

export const pumpRanks = (pumps: readonly PumpPair[]): Ranks => ranksOf(pumps, ({ order }) => order);

function ranksOf<T extends { readonly changed: number }>(choices: readonly T[], position: (choice: T) => number): Ranks {
  const order = numbersOf(choices, position);
  const changed = new Uint8Array(numbersOf(choices, (choice) => choice.changed));
  const inOrder = new Int32Array(choices.length);
  for (let i = 0; i < choices.length; i++) inOrder[i] = i;
  // most often they come in order
  if (order.some((value, i) => i > 0 && value < (order[i - 1] ?? 0))) inOrder.sort((a, b) => (order[a] ?? 0) - (order[b] ?? 0) || a - b);
  const sequence = new Int32Array(choices.length);
  let place = 0;
  for (let parts = 0; parts <= 2; parts++) for (const index of inOrder) if (changed[index] === parts) sequence[place++] = index;
  return { changed, order, sequence };
}

/** `Float64Array.from` with a mapping goes through an iterator, which takes ten times as long. */
export function numbersOf<T>(items: readonly T[], value: (item: T) => number): Float64Array {
  const numbers = new Float64Array(items.length);
  for (let i = 0; i < items.length; i++) {
    const item = items[i];
    if (item !== undefined) numbers[i] = value(item);
  }
  return numbers;
}
