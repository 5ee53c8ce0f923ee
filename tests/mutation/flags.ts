import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';

export const HELP = `npm run mutate -- [flags]
  --count N      mutants, drawn evenly from all (200)
  --seed N       another draw (1)
  --only PATH    only of this file or folder, as core/src/range.ts
  --budget N     seconds of processor time for the tests of one mutant, the quickest first (20)
  --minutes N    begins no further mutant after that: those tried so far are a smaller sample (as long as it takes)
  --processes N  (one for each core)
  --json FILE    where every mutant with its fate goes (dist/mutation/mutants.json)
  --again FILE   instead of a draw those that got through in such a FILE: a look at what was mended, no score
  --idle         runs the same tests with every mutant off: all must survive`;

export interface Flags {
  readonly help: boolean;
  readonly count: number;
  readonly seed: number;
  readonly only: string;
  readonly budget_s: number;
  readonly minutes: number;
  readonly processes: number;
  readonly json: string;
  readonly again: string | null;
  readonly idle: boolean;
}

/** @throws TypeError on a flag that is not known, or a number that is none */
export function flagsOf(args: readonly string[]): Flags {
  const { values } = parseArgs({
    args: [...args],
    options: {
      help: { type: 'boolean', default: false },
      count: { type: 'string', default: '200' },
      seed: { type: 'string', default: '1' },
      only: { type: 'string', default: 'core/src' },
      budget: { type: 'string', default: '20' },
      minutes: { type: 'string', default: '100000' },
      processes: { type: 'string', default: String(availableParallelism()) },
      json: { type: 'string', default: 'dist/mutation/mutants.json' },
      again: { type: 'string' },
      idle: { type: 'boolean', default: false },
    },
  });
  const number = (name: 'count' | 'seed' | 'budget' | 'minutes' | 'processes'): number => {
    const value = Number(values[name]);
    if (!(Number.isSafeInteger(value) && value > 0)) throw new TypeError(`--${name} ${values[name]}: a whole number, 1 or more`);
    return value;
  };
  return {
    help: values.help,
    count: number('count'),
    seed: number('seed'),
    only: values.only.replace(/\/$/, ''),
    budget_s: number('budget'),
    minutes: number('minutes'),
    processes: number('processes'),
    json: values.json,
    again: values.again ?? null,
    idle: values.idle,
  };
}
