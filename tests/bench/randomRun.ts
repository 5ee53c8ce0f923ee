import { findOptions } from '../../core/src/search/index.ts';
import { row } from '../core/search/racks.ts';
import { diceOf, randomProblem } from '../core/search/randomProblem.ts';
import { everyOption } from '../core/search/slowTwin.ts';

/** Far from the seeds of the tests. */
const FIRST_SEED = 10_000_000;
const REPORTS = 20;

/** Random small problems against listing every option; answers how many differ, after printing their seeds. */
export function randomRun(count: number): number {
  let wrong = 0;
  for (let i = 0; i < count; i++) {
    const seed = FIRST_SEED + i;
    const trouble = troubleOf(seed);
    if (trouble !== null) {
      wrong += 1;
      console.log(`seed ${seed}: ${trouble}`);
    }
    if ((i + 1) % Math.ceil(count / REPORTS) === 0) console.log(`${i + 1} of ${count}, ${wrong} wrong`);
  }
  console.log(`${count} random problems, ${wrong} wrong`);
  return wrong;
}

/** A search that throws is as wrong as one that finds something else. */
function troubleOf(seed: number): string | null {
  try {
    return agrees(seed) ? null : 'not as listing every option gives it';
  } catch (error) {
    return String(error);
  }
}

function agrees(seed: number): boolean {
  const dice = diceOf(seed);
  const { problem, rules } = randomProblem(dice);
  const keep = dice.pick([1, 2, 5, 10, 50]);
  const scope = dice.chance(30) ? 'inside' : 'all';
  const every = everyOption(problem, rules).filter(({ inside }) => scope === 'all' || inside);
  const { options, more } = findOptions(problem, rules, keep, {}, scope);
  const text = (list: typeof options): string =>
    JSON.stringify(list.map(row), ['pump', 'pairs', 'ratio', 'offRatio', 'inside', 'changed', 'purchases']);
  return text(options) === text(every.slice(0, keep)) && more === every.length > keep;
}
