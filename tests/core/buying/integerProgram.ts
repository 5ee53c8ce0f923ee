import highs from 'highs';
import type { Requirements } from '../../../core/src/buying/requirements.ts';

/** What a general solver of integer programs says of a choice of parts; null where its time was up. */
export interface IntegerOptimum {
  readonly price: number;
}

export type IntegerSolver = (requirements: Requirements, prices: readonly number[], most_s: number) => IntegerOptimum | null;

/** The solver is started once. */
export async function integerSolver(): Promise<IntegerSolver> {
  const solver = await highs();
  return (requirements, prices, most_s) => {
    const { Status, ObjectiveValue } = solver.solve(programOf(requirements, prices), {
      time_limit: most_s,
      mip_rel_gap: 0,
      log_to_console: false,
    });
    return Status === 'Optimal' ? { price: Math.round(ObjectiveValue) } : null;
  };
}

/** `x_p_n`: n pieces of part p are bought, or more. `y_t_w`: target t is served in its way w. */
function programOf(requirements: Requirements, prices: readonly number[]): string {
  const names = new Map<string, number>();
  const rows: string[] = [];
  const ways: string[] = [];
  for (const [t, needs] of requirements.entries()) {
    for (const [w, need] of needs.entries()) {
      ways.push(`y_${t}_${w}`);
      for (const [i, part] of need.entries()) {
        const pieces = need.slice(0, i + 1).filter((other) => other === part).length;
        for (let n = 1; n <= pieces; n++) names.set(`x_${part}_${n}`, prices[part] ?? 0);
        rows.push(`y_${t}_${w} - x_${part}_${pieces} <= 0`);
      }
    }
    rows.push(`${needs.map((_, w) => `y_${t}_${w}`).join(' + ')} >= 1`);
  }
  // a second piece is only bought beside a first one
  for (const name of names.keys()) {
    const [, part, n] = name.split('_');
    if (n !== '1') rows.push(`${name} - x_${part}_${Number(n) - 1} <= 0`);
  }
  const sum = [...names].map(([name, price]) => `${price} ${name}`).join(' + ');
  return [
    'Minimize',
    ` ${sum === '' ? '0 none' : sum}`,
    'Subject To',
    ...rows.map((row) => ` ${row}`),
    'Binary',
    ...names.keys(),
    ...ways,
    'End',
    '',
  ].join('\n');
}
