import { id, list, row, teeth } from './fields.ts';

/** What is on a machine: the pump of each side, and teeth stage by stage in the order the machine has, or had then. */
export const mounted = row({ pumps: row({ A: id, B: id }), teeth: list(row({ driver: teeth, driven: teeth })) });
