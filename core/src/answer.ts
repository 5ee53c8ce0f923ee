import { CHECK_BITS, type Choices, checksIn, choicesOf } from './choices.ts';
import { resolve, type Selection } from './file/resolve.ts';
import type { ShopFile } from './file/shopFile.ts';
import type { Finding, Outcome } from './finding.ts';
import type { Say } from './format.ts';
import { type PlannedOption, planOption } from './option.ts';
import type { Plan, SideName, Teeth } from './plan.ts';
import {
  bestPerChange,
  type Candidate,
  countOptions,
  fewestRelaxations,
  findOptions,
  type Hooks,
  type Option,
  tradeOff,
  withoutFailures,
} from './search/index.ts';
import { fittedPumps, fittedTeeth } from './train.ts';

/** How many options are kept, and how many blocked ones beside them. */
export const KEPT_OPTIONS = 200;
const KEPT_BLOCKED = 50;

/** An option by what is mounted, as plain data that can be sent between threads: pump ids and the teeth of every stage. */
export interface Mounted {
  readonly pumps: Readonly<Record<SideName, string>>;
  readonly teeth: readonly Teeth[];
}

export interface Counts {
  readonly ways: number;
  readonly buildable: number;
  readonly distinctRatios: number;
  readonly inside: number | null;
}

/** What the search finds, as plain data. */
export interface Ranked<Of> {
  readonly options: readonly Of[];
  readonly more: boolean;
  /** The best for just so many changed parts; no gain where fewer do as well. */
  readonly best: readonly { readonly changed: number; readonly option: Of; readonly noGain: boolean }[];
  /** Every option that no other beats in time and closeness, least work first; the best of the ranking is the last. */
  readonly tradeOff: readonly Of[];
  readonly blocked: {
    /** Options that would rank among those listed, were it not for a check. */
    readonly options: readonly Of[];
    readonly more: boolean;
    /** Sets of check ids; each set alone would let an option inside the limits through. Empty where one fits already. */
    readonly fewestChecks: readonly (readonly string[])[];
  };
  readonly counts: Counts | null;
}

/** Everything the program has to say to one plan. */
export interface Answer extends Ranked<PlannedOption> {
  readonly plan: Plan;
  readonly fitted: PlannedOption;
  readonly findings: readonly Finding[];
}

/** Counting every option takes a plain enumeration, so it is made on demand. */
export interface SearchWish {
  readonly count?: boolean;
  readonly hooks?: Hooks;
}

export interface Question extends SearchWish {
  readonly selection: Selection;
  readonly say: Say;
}

/** The whole pipeline as one call: a checked shop file and a question in, the ranked options and what stands against the rest out. */
export function answer(file: ShopFile, question: Question): Outcome<Answer> {
  const resolved = resolve(file, question.selection, question.say);
  if (!resolved.ok) return resolved;
  const answered = layOut(resolved.value, search(resolved.value, question), question.say);
  return { ok: true, value: answered, findings: answered.findings };
}

/** The long half of an answer: searches, and names what it found. */
export function search(plan: Plan, { count = false, hooks = {} }: SearchWish): Ranked<Mounted> {
  const choices = choicesOf(plan);
  const name = (candidate: Candidate): Mounted => {
    const pumps = choices.pumpsOf(candidate);
    return { pumps: { A: pumps.A.id, B: pumps.B.id }, teeth: choices.teethOf(candidate) };
  };
  const found = findOptions(choices.problem, choices.rules(0), KEPT_OPTIONS, hooks);
  return {
    options: found.options.map(name),
    more: found.more,
    best: best(choices, name, hooks),
    tradeOff: tradeOff(choices.problem, choices.rules(0), hooks).map(name),
    blocked: blocked(choices, name, found.options, hooks),
    counts: count ? countOptions(choices.problem, choices.rules(0), hooks) : null,
  };
}

/** The short half: lays out every option that was found. */
export function layOut(plan: Plan, found: Ranked<Mounted>, say: Say): Answer {
  const lay = (mounted: Mounted) => layOption(plan, mounted, say);
  return {
    plan,
    options: found.options.map(lay),
    more: found.more,
    best: found.best.map(({ changed, option, noGain }) => ({ changed, option: lay(option), noGain })),
    tradeOff: found.tradeOff.map(lay),
    blocked: { ...found.blocked, options: found.blocked.options.map(lay) },
    counts: found.counts,
    fitted: planOption(plan, fittedPumps(plan), fittedTeeth(plan), say),
    findings: [...plan.findings, ...searchNotes(found)],
  };
}

/** What an option mounts, as it goes between threads. */
export function mountedOf({ pumps, teeth }: PlannedOption): Mounted {
  return { pumps: { A: pumps.A.id, B: pumps.B.id }, teeth };
}

/** @throws RangeError where the plan has no such pump */
export function layOption(plan: Plan, { pumps, teeth }: Mounted, say: Say): PlannedOption {
  const pump = (side: SideName) => {
    const found = plan.sides[side].pumps.find(({ id }) => id === pumps[side]);
    if (found === undefined) throw new RangeError(`layOption: side ${side} has no pump ${pumps[side]}`);
    return found;
  };
  return planOption(plan, { A: pump('A'), B: pump('B') }, teeth, say);
}

function best(choices: Choices, name: (candidate: Candidate) => Mounted, hooks: Hooks): Ranked<Mounted>['best'] {
  const found = bestPerChange(choices.problem, choices.rules(0), hooks);
  return found.flatMap((option, changed) => {
    if (option === null) return [];
    const noGain = found.slice(0, changed).some((fewer) => fewer !== null && !closer(option, fewer));
    return [{ changed, option: name(option), noGain }];
  });
}

/** Inside before outside, then the smaller off-ratio: what a further change must buy to be a gain. */
function closer(a: Option, b: Option): boolean {
  if (a.inside !== b.inside) return a.inside === true;
  return a.offRatio.abs().compare(b.offRatio.abs()) < 0;
}

/**
 * What would rank among the listed options if no check stood in the way. Looking further would only find what ranks behind
 * more buildable options than anyone reads.
 */
function blocked(
  choices: Choices,
  name: (candidate: Candidate) => Mounted,
  buildable: readonly Option[],
  hooks: Hooks,
): Ranked<Mounted>['blocked'] {
  const unchecked = withoutFailures(choices.problem);
  const limited = unchecked.limits !== null;
  const found = findOptions(unchecked, { admit: choices.purchases }, KEPT_OPTIONS + KEPT_BLOCKED, hooks, limited ? 'inside' : 'all');
  const nearest = buildable[0];
  // Without limits only those are worth a line that come closer than anything that can be built.
  const worthALine = (option: Option) => limited || nearest === undefined || closer(option, nearest);
  const options = found.options.filter((option) => worthALine(option) && choices.failures(option) !== 0);
  const fits = buildable.some((option) => option.inside === true);
  const sets = limited && !fits && options.length > 0 ? fewestRelaxations(choices.problem, choices.rules, CHECK_BITS, hooks) : [];
  return {
    options: options.slice(0, KEPT_BLOCKED).map(name),
    more: options.length > KEPT_BLOCKED || (limited && found.more),
    fewestChecks: sets.map(checksIn),
  };
}

function note(what: string): Finding {
  return {
    check: 'search.kept',
    severity: 'notes',
    where: [],
    what,
    figure: null,
    limit: null,
    source: 'order of the search',
    missing: false,
  };
}

/** What a search has to say of itself: that its list is cut, or empty. */
export function searchNotes({ more, options }: Ranked<unknown>): readonly Finding[] {
  const cut = `More options exist than the ${KEPT_OPTIONS} that are listed; those left out rank behind them.`;
  const none = 'Nothing can be built: no choice of wheels passes the checks, not even what is fitted.';
  return [
    ...(more ? [note(cut)] : []),
    ...(options.length === 0 ? [{ ...note(none), check: 'search.none', severity: 'warns' as const }] : []),
  ];
}
