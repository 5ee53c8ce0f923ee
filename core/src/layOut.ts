import { en } from './en.ts';
import type { Finding } from './finding.ts';
import type { Say } from './format.ts';
import { type PlannedOption, planOption } from './option.ts';
import type { Build, Plan, SideName, Teeth } from './plan.ts';
import { fittedPumps, fittedTeeth } from './train.ts';

/** How many options are kept. */
export const KEPT_OPTIONS = 200;

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
    /** The search for these sets stopped before it had asked every option: there may be further sets, or smaller ones. */
    readonly moreReasons: boolean;
  };
  readonly counts: Counts | null;
}

/** Everything the program has to say to one plan. */
export interface Answer extends Ranked<PlannedOption> {
  readonly plan: Plan;
  readonly fitted: PlannedOption;
  readonly findings: readonly Finding[];
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
export function buildOf(plan: Plan, { pumps, teeth }: Mounted): Build {
  const pump = (side: SideName) => {
    const found = plan.sides[side].pumps.find(({ id }) => id === pumps[side]);
    if (found === undefined) throw new RangeError(`buildOf: side ${side} has no pump ${pumps[side]}`);
    return found;
  };
  return { pumps: { A: pump('A'), B: pump('B') }, teeth };
}

/** @throws RangeError where the plan has no such pump */
export function layOption(plan: Plan, mounted: Mounted, say: Say): PlannedOption {
  const { pumps, teeth } = buildOf(plan, mounted);
  return planOption(plan, pumps, teeth, say);
}

function note(what: string): Finding {
  return {
    check: 'search.kept',
    severity: 'notes',
    where: [],
    what,
    figure: null,
    limit: null,
    source: en`order of the search`,
    missing: false,
  };
}

/** What a search has to say of itself: that its list is cut, or empty, or that not all reasons were looked for. */
export function searchNotes({ more, options, blocked }: Ranked<unknown>): readonly Finding[] {
  const cut = en`More options exist than the ${KEPT_OPTIONS} that are listed; those left out rank behind them.`;
  const none = en`Nothing can be built: no choice of wheels passes the checks, not even what is fitted.`;
  const reasons = en`Not every option was asked which checks stand in its way, as there are too many. Relaxing a set of checks that is named does let an option through; there may be smaller sets, and others.`;
  return [
    ...(more ? [note(cut)] : []),
    ...(blocked.moreReasons ? [{ ...note(reasons), check: 'search.reasons' }] : []),
    ...(options.length === 0 ? [{ ...note(none), check: 'search.none', severity: 'warns' as const }] : []),
  ];
}
