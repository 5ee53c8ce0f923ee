import type { StageFit } from './drives/driveKind.ts';
import { en } from './en.ts';
import type { Finding, Judgement, Place, Severity } from './finding.ts';
import type { Say } from './format.ts';
import { type Missing, missingText } from './load/missing.ts';
import type { Build, Plan, Stage, Teeth } from './plan.ts';
import type { Assignment } from './rack.ts';

/** One pair of wheels on one stage, laid out. */
export interface PairSubject {
  readonly plan: Plan;
  readonly stage: Stage;
  readonly teeth: Teeth;
  readonly fit: StageFit;
}

/** A whole option: every stage's teeth, both pumps, and where the wheels come from. */
export interface OptionSubject extends Build {
  readonly plan: Plan;
  readonly assignment: Assignment;
}

/** An automatic rule. One file each; `id` ends in the name of its file, `source` says where the limit comes from. */
export interface Check<Subject> {
  readonly id: string;
  /** What is the matter, in two or three words; a severity stands before it. */
  readonly title: string;
  /** The worst it can say. */
  readonly worst: Severity;
  readonly source: string;
  judge(subject: Subject): readonly Judgement[];
}

/** What a check has to say of a subject, as findings in words. */
export function findingsOf<Subject>(check: Check<Subject>, subject: Subject, say: Say): readonly Finding[] {
  return check.judge(subject).map(({ severity, where, what, figure, limit, missing }) => ({
    check: check.id,
    severity,
    where,
    what: what(say),
    figure,
    limit,
    source: check.source,
    missing: missing === true,
  }));
}

export function blocks<Subject>(check: Check<Subject>, subject: Subject): boolean {
  return check.worst === 'blocks' && check.judge(subject).some((judgement) => judgement.severity === 'blocks');
}

/** What a check says where an input is not given: it was not made, so it neither blocks nor passes. */
export function notMade(where: Place, sentence: string): Judgement {
  return { severity: 'notes', where, what: () => sentence, figure: null, limit: null, missing: true };
}

/**
 * The same for one or several inputs of a load, said once; nothing where none is lacking.
 *
 * @param so  what could not be done, as a clause
 */
export function notMadeWithout(missing: readonly Missing[], so: string): readonly Judgement[] {
  const [first] = missing;
  return first === undefined ? [] : [{ ...notMade(first.where, so), what: (say) => missingText(missing, so, say) }];
}

/** The same where nobody has said what the centre distance may be: then `so` names what could not be judged. */
export function centreNotGiven(stage: Stage, so: string): Judgement {
  return notMade([...stage.place, 'centre'], en`${stage.name}: the centre distance and what it may be are not given, so ${so}.`);
}

/** Beyond this many further places nothing can be set or measured. */
const FURTHER_PLACES = 6;

/**
 * A figure and the limit it misses, written with as many places as tell them apart: a sentence that refuses 162.04 for 162 must not
 * read 162.0 for 162.0.
 *
 * @param places  to begin with, whole number from 0
 * @param write   a number with so many places
 * @source our choice
 * @example apart(0.16204, 0.162, 1, (value_m, places) => lengthText(value_m, say, places))  // ['162.04 mm', '162.00 mm']
 */
export function apart<Value>(
  figure: Value,
  limit: Value,
  places: number,
  write: (value: Value, places: number) => string,
): readonly [string, string] {
  let more = places;
  while (more < places + FURTHER_PLACES && write(figure, more) === write(limit, more)) more += 1;
  return [write(figure, more), write(limit, more)];
}
