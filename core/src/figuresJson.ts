import type { Say } from './format.ts';
import { exactText } from './ratio.ts';
import { metricAmount } from './shown.ts';
import { type Input, isWorked, type Worked } from './working.ts';
import type { Fact, FactGroup } from './workingText.ts';

/** Scripts get words in one way of writing numbers, whatever the shop reads. */
export const SCRIPT_SAY: Say = { decimal: '.', system: 'metric' };

/** Figures of an option by group and id; each with its number and unit, exact where it is, or as a word. */
export function figuresJson(groups: readonly FactGroup[], withWorkings: boolean): Record<string, unknown> {
  return Object.fromEntries(
    groups.map(({ id, facts }) => [id, Object.fromEntries(facts.map((fact) => [fact.id, factJson(fact, withWorkings)]))]),
  );
}

function factJson({ what, figure, amount, working, note }: Fact, withWorkings: boolean): Record<string, unknown> {
  return {
    what,
    ...(amount === undefined ? { text: figure } : amountJson(amount)),
    ...(note === '' ? {} : { note }),
    ...(withWorkings && working !== null ? { working: workingJson(working) } : {}),
  };
}

function amountJson({ value, dimension }: Input): Record<string, unknown> {
  // The exact value is in SI, as formulas take it.
  return { ...metricAmount(value, dimension), ...(typeof value === 'number' ? {} : { exactSI: exactText(value) }) };
}

/** A working as data: what was put in, in SI, and what each of these rests on. */
function workingJson({ formula, put, value }: Worked): Record<string, unknown> {
  return {
    formula: `${formula.letter} = ${formula.written}`,
    source: formula.source,
    valueSI: Number(value),
    put: Object.fromEntries(
      put.map(([letter, input]) => [
        letter,
        {
          what: input.what,
          ...amountJson(input),
          valueSI: Number(input.value),
          ...(isWorked(input) ? { working: workingJson(input) } : {}),
        },
      ]),
    ),
  };
}
