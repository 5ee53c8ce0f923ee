import highs from 'highs';
import type { Need } from '../../../core/src/buying/need.ts';
import type { Requirements } from '../../../core/src/buying/requirements.ts';

/** A general solver of integer programs, asked for choices of parts; it answers null where its time is up. */
export interface IntegerSolver {
  /** The lowest price of a choice that serves every target. */
  readonly lowest: (requirements: Requirements, prices: readonly number[], most_s: number) => number | null;
  /** The most targets that so many parts serve. */
  readonly mostServed: (requirements: Requirements, parts: number, most_s: number) => number | null;
}

/** The solver is started once. */
export async function integerSolver(): Promise<IntegerSolver> {
  const solver = await highs();
  const solve = (program: string, most_s: number): number | null => {
    const { Status, ObjectiveValue } = solver.solve(program, { time_limit: most_s, mip_rel_gap: 0, log_to_console: false });
    return Status === 'Optimal' ? Math.round(ObjectiveValue) : null;
  };
  return {
    lowest: (requirements, prices, most_s) => {
      const { rows, pieces, ways } = rowsOf(requirements);
      const served = requirements.map((needs, t) => `${needs.map((_, w) => `y_${t}_${w}`).join(' + ')} >= 1`);
      const cost = [...pieces].map(([name, part]) => `${prices[part] ?? 0} ${name}`);
      return solve(programOf('Minimize', cost, [...rows, ...served], [...pieces.keys(), ...ways]), most_s);
    },
    mostServed: (requirements, parts, most_s) => {
      const { rows, pieces, ways } = rowsOf(requirements);
      // a target that needs nothing is served by a way without rows
      const served = requirements.map((needs, t) => [...needs.map((_, w) => `y_${t}_${w}`), `- z_${t}`]);
      const targets = requirements.map((_, t) => `z_${t}`);
      const counted = served.map((terms) => `${terms.join(' + ').replace('+ -', '-')} >= 0`);
      const few = pieces.size === 0 ? [] : [`${[...pieces.keys()].join(' + ')} <= ${parts}`];
      return solve(programOf('Maximize', targets, [...rows, ...counted, ...few], [...pieces.keys(), ...ways, ...targets]), most_s);
    },
  };
}

/** `x_p_n`: n pieces of part p are bought, or more. `y_t_w`: target t is served in its way w. */
function rowsOf(requirements: Requirements) {
  const pieces = new Map<string, number>();
  const rows: string[] = [];
  const ways: string[] = [];
  const countIn = (need: Need, part: number): number => need.filter((other) => other === part).length;
  for (const [t, needs] of requirements.entries()) {
    for (const [w, need] of needs.entries()) {
      ways.push(`y_${t}_${w}`);
      for (const part of new Set(need)) {
        for (let n = 1; n <= countIn(need, part); n++) pieces.set(`x_${part}_${n}`, part);
        rows.push(`y_${t}_${w} - x_${part}_${countIn(need, part)} <= 0`);
      }
    }
  }
  // a second piece is only bought beside a first one
  for (const name of pieces.keys()) {
    const [, part, n] = name.split('_');
    if (n !== '1') rows.push(`${name} - x_${part}_${Number(n) - 1} <= 0`);
  }
  return { rows, pieces, ways };
}

const programOf = (goal: string, terms: readonly string[], rows: readonly string[], binary: readonly string[]): string =>
  [
    goal,
    ` ${terms.length === 0 ? '0 none' : terms.join(' + ')}`,
    'Subject To',
    ...rows.map((row) => ` ${row}`),
    'Binary',
    ...binary,
    'End',
    '',
  ].join('\n');
