import { ordinarySeries } from '../bench.ts';
import { instance } from '../instances.ts';
import { type Entry, noLonger } from './entry.ts';

/** Twice the rack at three open stages is 64 times the combinations. */
export const doubling: Entry = {
  name: 'doubling',
  run: (bench) => {
    const { rows, than } = bench.beside([ordinarySeries(instance(60, 3), bench.form)], instance(30, 3));
    const claims = rows.map((row) => noLonger('twice the rack, 30 to 60 tooth counts: as long', row, than, 16));
    return { rows: [than], claims, differences: [] };
  },
};
