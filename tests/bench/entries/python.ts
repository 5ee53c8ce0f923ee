import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { exactText, type Fraction } from '../../../core/src/ratio.ts';
import type { SearchProblem } from '../../../core/src/search/index.ts';
import { anything, wheelsOf } from '../../core/search/racks.ts';
import { best } from '../bench.ts';
import { FITTED, type Instance, instance, KEEP, ordinary, problemOf } from '../instances.ts';
import type { Outcome, Row } from '../report.ts';
import { figure } from '../table.ts';
import { comparedNote, type Entry, NOTHING } from './entry.ts';

const SCRIPT = path.resolve(import.meta.dirname, '../../tests/bench/plain.py');
const MOST_MS = 120_000;
const INSTANCES = { quick: [instance(20, 1), instance(40, 1)], full: [instance(20, 1), instance(40, 1), instance(20, 2)] } as const;

/** The plain script in Python that somebody might write instead. */
export const python: Entry = {
  name: 'python',
  run: (bench) => {
    const [wanted] = ordinary(1);
    if (wanted === undefined) return NOTHING;
    const outcomes = INSTANCES[bench.form.name].map((one) => beside(one, bench.ordinary(one), wanted));
    return {
      rows: outcomes.flatMap(({ rows }) => rows),
      claims: [],
      differences: outcomes.flatMap(({ differences }) => differences),
    };
  },
};

function beside(one: Instance, row: Row, wanted: Fraction): Outcome {
  const fitted = FITTED.slice(0, one.stages).map(([driver, driven]) => `${driver}/${driven}`);
  const args = [SCRIPT, String(one.sizes), String(one.stages), exactText(wanted), String(KEEP), ...fitted];
  const { error, status, stdout } = spawnSync('python3', args, { encoding: 'utf8', timeout: MOST_MS });
  if (error !== undefined && 'code' in error && error.code === 'ENOENT')
    return { ...NOTHING, rows: [{ ...row, note: 'python3 not found' }] };
  if (status !== 0) return { ...NOTHING, rows: [{ ...row, note: 'plain.py did not end' }] };
  const answer = JSON.parse(stdout) as { readonly seconds: number; readonly rows: readonly (readonly unknown[])[] };
  const theirs = answer.rows.map((line) => line.join(' '));
  const ours = linesOf(problemOf(one, wanted));
  const at = ours.findIndex((line, i) => line !== theirs[i]);
  const apart = at < 0 ? [] : [`${one.name} in Python, row ${at + 1}: ${theirs[at]} instead of ${ours[at]}`];
  const faster = row.median_ms === null ? '' : `, ${figure((answer.seconds * 1000) / row.median_ms)} times as long`;
  const note = `plain.py ${figure(answer.seconds)} s${faster}`;
  return { rows: [{ ...row, note: comparedNote(note, apart, 'plain.py') }], claims: [], differences: apart };
}

/** As the script prints them: |off-ratio|, parts changed, teeth. */
function linesOf(problem: SearchProblem): readonly string[] {
  return best(problem, anything, {}).options.map((option) =>
    [
      option.offRatio.abs().toFraction(),
      option.changed,
      ...wheelsOf(problem, option).flatMap(({ driver, driven }) => [driver, driven]),
    ].join(' '),
  );
}
