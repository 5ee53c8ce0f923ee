import { BLOCKS_ANY_TEETH } from './anyTeeth.ts';
import { blocks, type Check, type OptionSubject } from './check.ts';
import { optionChecks, pairChecks } from './checks/index.ts';
import { quantity } from './checks/quantity.ts';
import { driveKind } from './drives/index.ts';
import { layStage } from './option.ts';
import { type Build, ENDS, type Minutes, type Plan, type Pump, type SideName, type Stage, stageAt, type Teeth } from './plan.ts';
import { type Assignment, assignPieces, boresOnHand_m, teethToTry } from './rack.ts';
import { type Fraction, ONE } from './ratio.ts';
import type { Candidate, Effect, OpenStage, Pair, PumpPair, Rules, SearchProblem } from './search/index.ts';
import { fitOf } from './stageFit.ts';
import { fittedPumps, fittedTeeth, pumpRatio } from './train.ts';
import { type Changes, partCount, pumpChanges, stageChanges, workOf } from './work.ts';

/** A plan as the search sees it, and the way back from a candidate to teeth and pumps. */
export interface Choices {
  readonly problem: SearchProblem;
  readonly teethOf: (candidate: Candidate) => readonly Teeth[];
  readonly pumpsOf: (candidate: Candidate) => Readonly<Record<SideName, Pump>>;
  /** Bits of all checks that the candidate fails. */
  readonly failures: (candidate: Candidate) => number;
  /** Admits what fails no check across the stages. */
  readonly rules: Rules;
  /** Whether nothing across the stages stands against the candidate but, maybe, that a wheel of it is not to be had. */
  readonly runs: (candidate: Candidate) => boolean;
  readonly purchases: (candidate: Candidate) => number;
}

const BLOCKING_PAIR = pairChecks.filter(({ worst }) => worst === 'blocks');
const BLOCKING_OPTION = optionChecks.filter(({ worst }) => worst === 'blocks');
const RUNNING_OPTION = BLOCKING_OPTION.filter((check) => check !== quantity);
/** Bits of the field that says which checks a pair or an option fails: the pair checks first, then the option checks; only those that can block. */
const OPTION_BIT = (index: number): number => 1 << (BLOCKING_PAIR.length + index);
export const CHECK_BITS: number = BLOCKING_PAIR.length + BLOCKING_OPTION.length;

/** Ids of the checks in a bit field. */
export const checksIn = (field: number): readonly string[] =>
  [...BLOCKING_PAIR, ...BLOCKING_OPTION].filter((_, bit) => (field & (1 << bit)) !== 0).map(({ id }) => id);

export function choicesOf(plan: Plan): Choices {
  const open = plan.stages.flatMap((stage, index) => (stage.open ? [index] : []));
  const stages = open.map((index) => openStage(plan, stageAt(plan, index)));
  const closed = closedFailures(plan);
  const withPumps = anyTeethFailures(plan, open, stages);
  const pumpSets = pumpPairs(plan, (pumps) => closed | withPumps(pumps));
  const fitted = fittedTeeth(plan);

  const teethOf = (candidate: Candidate): readonly Teeth[] => {
    const teeth = [...fitted];
    open.forEach((stage, index) => {
      const pair = stages[index]?.pairs[candidate.pairs[index] ?? -1];
      if (pair === undefined) throw new RangeError('choicesOf: a candidate of another search');
      teeth[stage] = { driver: pair.driver, driven: pair.driven };
    });
    return teeth;
  };
  const pumpsOf = (candidate: Candidate) => {
    const set = pumpSets[candidate.pump];
    if (set === undefined) throw new RangeError('choicesOf: a candidate of another search');
    return set.pumps;
  };
  const subjectOf = (candidate: Candidate): OptionSubject => {
    const teeth = teethOf(candidate);
    let assignment: Assignment | null = null;
    return {
      plan,
      pumps: pumpsOf(candidate),
      teeth,
      // slow to work out, and most checks do not ask for it
      get assignment() {
        assignment ??= assignPieces(plan, teeth);
        return assignment;
      },
    };
  };
  const across = (subject: OptionSubject): number =>
    BLOCKING_OPTION.reduce((field, check, index) => (blocks(check, subject) ? field | OPTION_BIT(index) : field), 0);

  return {
    problem: {
      stages,
      pumps: pumpSets.map(({ pair }) => pair),
      fixed: closedRatio(plan),
      wanted: plan.mix.wantedBPerA,
      limits: plan.mix.limits,
      ...(Number.isFinite(plan.choice.purchases) && { mostBought: plan.choice.purchases }),
    },
    teethOf,
    pumpsOf,
    failures: (candidate) => {
      const pairs = candidate.pairs.reduce((field, pair, index) => field | (stages[index]?.pairs[pair]?.failed ?? 0), 0);
      return closed | pairs | across(subjectOf(candidate));
    },
    rules: {
      admit: (candidate) => {
        const subject = subjectOf(candidate);
        return across(subject) === 0 ? subject.assignment.purchases : null;
      },
    },
    runs: (candidate) => {
      const subject = subjectOf(candidate);
      return RUNNING_OPTION.every((check) => !blocks(check, subject));
    },
    purchases: (candidate) => subjectOf(candidate).assignment.purchases,
  };
}

const EFFECTS: Readonly<Record<Stage['turns'], Effect>> = { A: 'A', B: 'B', both: 'none', neither: 'none' };

/** Stages that stay as they are may need work too, but the same for every option. */
function openStage(plan: Plan, stage: Stage): OpenStage {
  const pairs: Pair[] = [];
  const time_s = timer(plan.minutes);
  const [drivers, drivens] = [teethToTry(plan, stage, stage.driver), teethToTry(plan, stage, stage.driven)];
  // of no bore and in no number to be had
  const absent = new Set([...drivers, ...drivens].filter((teeth) => boresOnHand_m(plan, stage, teeth).length === 0));
  for (const driver of drivers) {
    for (const driven of drivens) {
      const teeth = { driver, driven };
      const laid = layStage(stage, teeth);
      const failed = failedBits(BLOCKING_PAIR, { plan, ...laid });
      const changes = stageChanges(laid);
      pairs.push({ driver, driven, changed: upToTwo(changes), work: time_s(changes), failed, bought: boughtIn(absent, stage, teeth) });
    }
  }
  return { effect: EFFECTS[stage.turns], pairs };
}

/** Wheels that have to be bought for a pair at least: those that change and are neither on the rack nor on the machine. */
function boughtIn(absent: ReadonlySet<number>, stage: Stage, teeth: Teeth): 0 | 1 | 2 {
  const [driver, driven] = ENDS.map((end) => teeth[end] !== stage[end].teeth && absent.has(teeth[end]));
  return driver && driven ? 2 : driver || driven ? 1 : 0;
}

/** There are few different changes and thousands of pairs: each is worked out once. */
function timer(minutes: Minutes): (changes: Changes) => Fraction {
  const known = new Map<string, Fraction>();
  return (changes) => {
    const key = Object.values(changes).join();
    const time_s = known.get(key) ?? workOf(minutes, changes).total.value;
    known.set(key, time_s);
    return time_s;
  };
}

function upToTwo(changes: Changes): 0 | 1 | 2 {
  const parts = partCount(changes);
  return parts === 2 ? 2 : parts === 1 ? 1 : 0;
}

function failedBits<Subject>(checks: readonly Check<Subject>[], subject: Subject): number {
  return checks.reduce((field, check, bit) => (blocks(check, subject) ? field | (1 << bit) : field), 0);
}

interface PumpSet {
  readonly pair: PumpPair;
  readonly pumps: Readonly<Record<SideName, Pump>>;
}

/** What stands against every option there is: the checks that a stage fails which no option changes. */
function closedFailures(plan: Plan): number {
  return plan.stages.reduce((field, stage) => {
    if (stage.open) return field;
    const teeth = { driver: stage.driver.teeth, driven: stage.driven.teeth };
    return field | failedBits(BLOCKING_PAIR, { plan, stage, teeth, fit: fitOf(stage, teeth) });
  }, 0);
}

/**
 * What stands against every option with a set of pumps, as far as the ends of all teeth tell. Where a check refuses all there is, it
 * shows here, and no search has to ask option after option.
 */
function anyTeethFailures(plan: Plan, open: readonly number[], stages: readonly OpenStage[]): (pumps: Build['pumps']) => number {
  const ends = (driver: (...teeth: number[]) => number, driven: (...teeth: number[]) => number): readonly Teeth[] =>
    plan.stages.map((stage, index) => {
      const [first, ...others] = stages[open.indexOf(index)]?.pairs ?? [];
      if (first === undefined) return { driver: stage.driver.teeth, driven: stage.driven.teeth };
      return others.reduce<Teeth>(
        (end, pair) => ({ driver: driver(end.driver, pair.driver), driven: driven(end.driven, pair.driven) }),
        first,
      );
    });
  const [steepest, flattest] = [ends(Math.max, Math.min), ends(Math.min, Math.max)];
  return (pumps) =>
    BLOCKING_OPTION.reduce(
      (field, { id }, index) => (BLOCKS_ANY_TEETH[id]?.({ plan, pumps, steepest, flattest }) === true ? field | OPTION_BIT(index) : field),
      0,
    );
}

/** @param failing what stands against every option with a set of pumps */
function pumpPairs(plan: Plan, failing: (pumps: Build['pumps']) => number): readonly PumpSet[] {
  const fitted = fittedPumps(plan);
  const time_s = timer(plan.minutes);
  const may = (side: SideName): readonly Pump[] => (plan.choice.anyPump ? plan.sides[side].pumps : [fitted[side]]);
  const sets = may('A').flatMap((A) => may('B').map((B) => ({ A, B })));
  return sets.map((pumps, order) => {
    const changes = pumpChanges(plan, pumps);
    return { pumps, pair: { ratio: pumpRatio(pumps), changed: upToTwo(changes), work: time_s(changes), failed: failing(pumps), order } };
  });
}

/** What the stages that stay as they are put into the ratio. */
function closedRatio(plan: Plan): Fraction {
  return plan.stages.reduce((product, stage) => {
    if (stage.open) return product;
    const turns = driveKind(stage.kind).turns(stage.driver.teeth, stage.driven.teeth);
    if (stage.turns === 'B') return product.mul(turns);
    return stage.turns === 'A' ? product.div(turns) : product;
  }, ONE);
}
