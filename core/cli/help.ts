import { en } from '../src/en.ts';
import { COMMANDS, FLAGS } from './flags.ts';

const WHAT = {
  options: en`rank the ways to build the mix ratio of a material on a machine`,
  reach: en`say which ratios a machine can make, how far off the worst target of a window is, and the best option of every material`,
  sheet: en`write the change sheet of one option as a printable page`,
  quote: en`print the quote page: what a machine can mix, with every material of the file`,
  buy: en`find the fewest wheels to buy so that every material has an option inside its limits`,
  'ratio-check': en`judge what both sides delivered against the limits, or say what to catch`,
  validate: en`read a shop file and say everything that is wrong with it`,
} as const;

export function helpText(): string {
  const flags = Object.entries(FLAGS).map(([name, { takes, commands, help }]) => {
    const flag = `--${name}${takes === null ? '' : ` ${takes}`}`;
    return `  ${flag.padEnd(20)} ${help} (${commands.join(', ')})`;
  });
  return [
    en`Ratiowright: ratio changes on two-component gear-metering machines.`,
    '',
    'npm run --silent ratiowright -- COMMAND FILE [flags]',
    '',
    ...COMMANDS.map((command) => `  ${command.padEnd(20)} ${WHAT[command]}`),
    '',
    ...flags,
    '',
    en`Exit 0: an option inside the limits (options), all of the window within the tolerance and, with --best, every material inside its limits (reach), the page was made (sheet, quote), all materials served (buy), a pass (ratio-check; always with --before and --all), the file is sound (validate).`,
    en`Exit 1: no option inside the limits, or no limits given; gaps wider than the tolerance, a material that is not inside or not complete (reach); not all materials served; a fail, nothing proven or no limits (ratio-check); the reasons are printed.`,
    en`Exit 2: bad input or flags; every problem is on the error output and nothing was written.`,
    en`Exit 3: a fault of the program; what it says of it is on the error output.`,
    '',
  ].join('\n');
}
