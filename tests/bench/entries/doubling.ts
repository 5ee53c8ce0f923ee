import { instance } from '../instances.ts';
import { type Entry, noLonger } from './entry.ts';

/** Twice the rack at three open stages is 64 times the combinations. */
export const doubling: Entry = {
  name: 'doubling',
  run: (bench) => {
    const half = bench.ordinary(instance(30, 3));
    const whole = bench.ordinary(instance(60, 3));
    return { rows: [half], claims: [noLonger('twice the rack, 30 to 60 tooth counts: as long', whole, half, 16)], differences: [] };
  },
};
