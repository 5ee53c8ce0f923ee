import { parseArgs } from 'node:util';

export const HELP = `npm run bench -- [flags]
  --quick         fewer targets, and only such nested loops as end within a second: under a minute
  --only NAME     one entry; --only list names them
  --json FILE     where the figures go (dist/bench/bench.json)
  --table FILE    writes the table as Markdown too; that of the window stands below in the same file
  --random N      instead: N random problems against listing every option
  --window        instead: the built window in a browser; takes --quick, --json and --table`;

export interface Flags {
  readonly quick: boolean;
  readonly help: boolean;
  readonly only: string | null;
  readonly json: string;
  readonly table: string | null;
  readonly random: number | null;
}

/** @throws TypeError on a flag that is not known */
export function flagsOf(args: readonly string[]): Flags {
  const { values } = parseArgs({
    args: [...args],
    options: {
      quick: { type: 'boolean', default: false },
      help: { type: 'boolean', default: false },
      only: { type: 'string' },
      json: { type: 'string', default: 'dist/bench/bench.json' },
      table: { type: 'string' },
      random: { type: 'string' },
    },
  });
  const random = values.random === undefined ? null : Number(values.random);
  if (random !== null && !(Number.isSafeInteger(random) && random > 0)) throw new TypeError(`--random ${values.random}: a whole number`);
  return { quick: values.quick, help: values.help, only: values.only ?? null, json: values.json, table: values.table ?? null, random };
}
