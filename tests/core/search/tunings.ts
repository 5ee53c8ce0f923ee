import { ratioOf } from '../../../core/src/ratio.ts';
import { DEFAULT_TUNING, type Tuning } from '../../../core/src/search/tuning.ts';

/** The sizes of the program, and tiny ones: the buffer overflows, nearly every ratio is heavy, all products are gathered, windows begin too narrow or far too wide. */
export const TUNINGS: readonly (readonly [string, Tuning])[] = [
  ['as built', DEFAULT_TUNING],
  ['small buffer', { buffer: 16, heavy: 4, gathered: 4, firstReach: null }],
  ['small buffer, narrow window', { buffer: 16, heavy: 4, gathered: 2 ** 20, firstReach: ratioOf(1, 10 ** 6) }],
  ['smallest buffer, all gathered', { buffer: 8, heavy: 1, gathered: 0, firstReach: ratioOf(1, 64) }],
  ['all heavy, wide window', { buffer: 64, heavy: 0, gathered: 4, firstReach: ratioOf(5, 1) }],
];
