import { CHECK_BITS, type Choices, checksIn, choicesOf } from './choices.ts';
import { resolve, type Selection } from './file/resolve.ts';
import type { ShopFile } from './file/shopFile.ts';
import type { Outcome } from './finding.ts';
import type { Say } from './format.ts';
import { type Answer, KEPT_OPTIONS, layOut, type Mounted, type Ranked } from './layOut.ts';
import type { Plan } from './plan.ts';
import {
  bestPerChange,
  type Candidate,
  countOptions,
  fewestRelaxations,
  findOptions,
  type Hooks,
  type Option,
  partOf,
  tradeOff,
  withoutFailures,
} from './search/index.ts';

/** How many blocked options are kept beside those that can be built. */
const KEPT_BLOCKED = 50;

/** Where on the bar each search of an answer begins, and how much of it that is given. */
const SHARES = {
  list: [0, 0.3],
  best: [0.3, 0.2],
  tradeOff: [0.5, 0.15],
  blocked: [0.65, 0.1],
  reasons: [0.75, 0.15],
  counts: [0.9, 0.1],
} as const;
type Share = (typeof SHARES)[keyof typeof SHARES];

const partsOf =
  (hooks: Hooks) =>
  ([from, share]: Share): Hooks =>
    partOf(hooks, from, share);

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
  const part = partsOf(hooks);
  const found = findOptions(choices.problem, choices.rules, KEPT_OPTIONS, part(SHARES.list));
  // where nothing can be built, looking three times would take three times as long
  const none = found.options.length === 0;
  const ranked: Ranked<Mounted> = {
    options: found.options.map(name),
    more: found.more,
    best: none ? [] : best(choices, name, part(SHARES.best)),
    tradeOff: none ? [] : tradeOff(choices.problem, choices.rules, part(SHARES.tradeOff)).map(name),
    blocked: blocked(choices, name, found.options, part),
    counts: count ? countOptions(choices.problem, choices.rules, part(SHARES.counts)) : null,
  };
  hooks.progress?.(1);
  return ranked;
}

function best(choices: Choices, name: (candidate: Candidate) => Mounted, hooks: Hooks): Ranked<Mounted>['best'] {
  const found = bestPerChange(choices.problem, choices.rules, hooks);
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
  part: (share: Share) => Hooks,
): Ranked<Mounted>['blocked'] {
  const unchecked = withoutFailures(choices.problem);
  const limited = unchecked.limits !== null;
  const scope = limited ? 'inside' : 'all';
  const found = findOptions(unchecked, { admit: choices.purchases }, KEPT_OPTIONS + KEPT_BLOCKED, part(SHARES.blocked), scope);
  const nearest = buildable[0];
  // Without limits only those are worth a line that come closer than anything that can be built.
  const worthALine = (option: Option) => limited || nearest === undefined || closer(option, nearest);
  const options = found.options.filter((option) => worthALine(option) && choices.failures(option) !== 0);
  const fits = buildable.some((option) => option.inside === true);
  const wanted = limited && !fits && options.length > 0;
  const reasons = wanted ? fewestRelaxations(choices.problem, choices.failures, CHECK_BITS, part(SHARES.reasons)) : null;
  return {
    options: options.slice(0, KEPT_BLOCKED).map(name),
    more: options.length > KEPT_BLOCKED || (limited && found.more),
    fewestChecks: reasons?.masks.map(checksIn) ?? [],
    moreReasons: reasons?.more ?? false,
  };
}
