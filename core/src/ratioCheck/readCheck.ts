import { en } from '../en.ts';
import { si } from '../file/problems.ts';
import type { CatchRow, RatioCheckRow } from '../file/ratioCheckRow.ts';
import type { Finding, Outcome, Place } from '../finding.ts';
import { given } from '../given.ts';
import type { SideName } from '../plan.ts';
import { float } from '../ratio.ts';
import { catchProblems } from './catchProblems.ts';
import type { Catch, CatchRun, Caught, CheckInput, CheckTerms, Scale } from './model.ts';
import { type CatchTrouble, net_kg } from './net.ts';

/** What of a check is typed: its fields may have holes while it is being written. */
export type TypedCheck = Pick<RatioCheckRow, 'run' | 'scale' | 'confidence' | 'catches'>;

/** Where nobody gives another. */
export const USUAL_CONFIDENCE = 0.95;

/**
 * Typed catches made exact; everything that stands against judging them, and everything odd about them, together.
 *
 * @param place  of the check in the file, so that a finding can put the cursor there
 * @returns findings beside a check that can be judged, only findings otherwise
 * @source our choice of words; net = gross − tare
 */
export function readCheck(typed: TypedCheck, terms: CheckTerms, place: Place): Outcome<CheckInput> {
  const scale = scaleOf(typed.scale);
  const run = runOf(typed.run, terms);
  const troubles: CatchTrouble[] = [];
  const catches = typed.catches.map((row, index) => catchOf(row, typed.scale.tared, [...place, 'catches', index], index + 1, troubles));
  troubles.push(...catchProblems(typed.catches, catches, { terms, run, place }));
  const findings = troubles.map(findingOf);
  const [first, ...rest] = catches;
  const blocking = findings.filter(({ severity }) => severity === 'blocks');
  const [worst, ...others] = [...blocking, ...findings.filter(({ severity }) => severity !== 'blocks')];
  if (worst !== undefined && blocking.length > 0) return { ok: false, findings: [worst, ...others] };
  // `catchProblems` blocks where there is none
  if (first === undefined) throw new RangeError('readCheck: no catch');
  return { ok: true, value: { terms, run, scale, catches: [first, ...rest], confidence: confidenceOf(typed) }, findings };
}

export const confidenceOf = ({ confidence }: Pick<TypedCheck, 'confidence'>): number =>
  confidence === undefined ? USUAL_CONFIDENCE : float(si('share', confidence));

export const scaleOf = ({ step, tared, uncertainty }: TypedCheck['scale']): Scale => ({
  step_kg: si('mass', step),
  readings: tared ? 1 : 2,
  uncertainty_kg: given(uncertainty, (mass) => si('mass', mass)),
});

/** Turns if they were counted; otherwise the time, with the dial. */
export function runOf(run: TypedCheck['run'], { motorSpeed_rev_per_s }: CheckTerms): CatchRun {
  if (run?.turns !== undefined) return { by: 'turns', motorTurns: si('number', run.turns) };
  if (run?.time === undefined || run.dial === undefined) return null;
  return { by: 'time', time_s: si('time', run.time), motor_rev_per_s: motorSpeed_rev_per_s.mul(si('share', run.dial)) };
}

function catchOf(row: CatchRow, tared: boolean, place: Place, number: number, troubles: CatchTrouble[]): Catch {
  const leftOut = row.leftOut ?? null;
  const side = (name: SideName): Caught => {
    const found: CatchTrouble[] = [];
    const caught: Caught = {
      mass_kg: net_kg(row[name], tared, { place: [...place, name], what: en`Catch ${number}, ${name}` }, found),
      volume_m3: given(row[name].volume, (volume) => si('volume', volume)),
    };
    // what does not count need not be sound
    if (leftOut === null) troubles.push(...found);
    return caught;
  };
  const [A, B] = [side('A'), side('B')];
  return { sides: { A, B }, leftOut };
}

const findingOf = ({ severity, where, what }: CatchTrouble): Finding => ({
  check: 'ratioCheck.catches',
  severity,
  where,
  what,
  figure: null,
  limit: null,
  source: en`what a ratio of means needs: both sides of at least two catches, net and in known units`,
  missing: false,
});
