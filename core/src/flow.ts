import { type DialRange, dialRange, dialSetting } from './dial.ts';
import { en } from './en.ts';
import { orNull } from './given.ts';
import type { Build, Plan, SideName } from './plan.ts';
import { type Fraction, ONE } from './ratio.ts';
import { turnsOf } from './train.ts';
import { formula, type Input, input, type Worked, work } from './working.ts';

export const pumpFlow = formula({
  letter: 'Q',
  written: 'D · n',
  dimension: 'flow',
  source: en`definition of displacement`,
  of: ({ D, n }: Record<'D' | 'n', Fraction>) => D.mul(n),
});

const pumpFlowMeasured = formula({
  letter: 'Q',
  written: 'D · η · n',
  dimension: 'flow',
  source: en`definition of displacement and of volumetric efficiency`,
  of: ({ D, η, n }: Record<'D' | 'η' | 'n', Fraction>) => D.mul(η).mul(n),
});

const pumpSpeed = formula({
  letter: 'n',
  written: 's · N · i',
  dimension: 'speed',
  source: en`kinematics of the drive`,
  of: ({ s, N, i }: Record<'s' | 'N' | 'i', Fraction>) => s.mul(N).mul(i),
});

const motorSpeed = formula({
  letter: 'n',
  written: 's · N',
  dimension: 'speed',
  source: en`the dial counts shares of full speed`,
  of: ({ s, N }: Record<'s' | 'N', Fraction>) => s.mul(N),
});

const bothFlows = formula({
  letter: 'Q',
  written: 'a + b',
  dimension: 'flow',
  source: en`arithmetic`,
  of: ({ a, b }: Record<'a' | 'b', Fraction>) => a.add(b),
});

const shareOfFull = formula({
  letter: 'w',
  written: 'Q / F',
  dimension: 'share',
  source: en`flow is proportional to speed`,
  of: ({ Q, F }: Record<'Q' | 'F', Fraction>) => Q.div(F),
});

const costOfRounding = formula({
  letter: 'c',
  written: 'Q / W - 1',
  dimension: 'share',
  source: en`definition`,
  of: ({ Q, W }: Record<'Q' | 'W', Fraction>) => Q.div(W).sub(ONE),
});

/** What turns and flows at one setting of the dial. */
export interface Running {
  readonly dial: Input<Fraction>;
  readonly motorSpeed: Worked<Fraction>;
  readonly pumpSpeed: Readonly<Record<SideName, Worked<Fraction>>>;
  readonly flow: Readonly<Record<SideName, Worked<Fraction>>>;
  readonly total: Worked<Fraction>;
}

/** Flow over the usable range, and where the dial stands for the flow wanted. */
export interface Flow {
  readonly range: DialRange;
  /** At both ends of that range; null where nothing is left of it. */
  readonly ends: { readonly from: Running; readonly to: Running } | null;
  /** Null where no flow is wanted, or nothing is left of the range. */
  readonly setting: Setting | null;
}

export interface Setting extends Running {
  /** Share of full speed before rounding. */
  readonly wanted: Worked<Fraction>;
  /** Flow made over flow wanted, less 1. */
  readonly cost: Worked<Fraction>;
}

/** Stands behind every name, so that no two workings share theirs; the setting for the flow wanted goes without. */
const AT = { set: '', least: en`, dial at its least`, most: en`, dial at its most`, full: en` at 100 %` } as const;

/**
 * What turns and flows at one setting of the dial.
 *
 * @param dial  share of full speed
 * @param at    which setting the names speak of
 * @source kinematics of the drive; definitions of displacement and of volumetric efficiency
 * @example runningAt(E12 on Bench 1 of the demo, 23 driving 25 teeth, 63.5 %).flow.A.value  // 685.8 cc/min
 */
export function runningAt(plan: Plan, build: Build, dial: Input<Fraction>, at: keyof typeof AT = 'set'): Running {
  const N = input(en`motor speed at 100 %`, plan.motor.speed_rev_per_s, 'speed');
  const named = (what: string) => what + AT[at];
  const speed = (side: SideName) => work(pumpSpeed, named(en`speed of pump ${side}`), { s: dial, N, i: turnsOf(plan, side, build.teeth) });
  const speeds = { A: speed('A'), B: speed('B') };
  const flow = (side: SideName) => {
    const { displacement_m3_per_rev, delivery, asMeasured } = build.pumps[side];
    const D = input(en`displacement of pump ${side}`, displacement_m3_per_rev, 'displacement');
    const what = named(en`flow of ${side}`);
    if (!delivery.known || !asMeasured) return work(pumpFlow, what, { D, n: speeds[side] });
    const η = input(en`delivery of pump ${side} as measured`, delivery.value.share, 'share');
    return work(pumpFlowMeasured, what, { D, η, n: speeds[side] });
  };
  const flows = { A: flow('A'), B: flow('B') };
  return {
    dial,
    motorSpeed: work(motorSpeed, named(en`motor speed`), { s: dial, N }),
    pumpSpeed: speeds,
    flow: flows,
    total: work(bothFlows, named(en`flow of A and B`), { a: flows.A, b: flows.B }),
  };
}

/**
 * Flow and speeds of a build: over the usable range of the dial, and at the setting for the flow wanted.
 *
 * @source flow = displacement x speed, both sides from one motor
 * @example 12 and 6 cc/rev, 23 driving 25 teeth, 90 rpm, 1000 cc/min wanted, dial in steps of 0.5 %  // 63.5 %, 1001.3 cc/min
 */
export function flowOf(plan: Plan, build: Build): Flow {
  const range = dialRange(plan, build);
  if (range.from.share.compare(range.to.share) > 0) return { range, ends: null, setting: null };
  const from = runningAt(plan, build, input(en`dial, least`, range.from.share, 'share'), 'least');
  const to = runningAt(plan, build, input(en`dial, most`, range.to.share, 'share'), 'most');
  return { range, ends: { from, to }, setting: settingOf(plan, build, range) };
}

/** At the dial for the flow wanted; where none is wanted, at the most that the dial may show. */
export const settingOrFastest = ({ setting, ends }: Flow): Running | null => setting ?? ends?.to ?? null;

function settingOf(plan: Plan, build: Build, range: DialRange): Setting | null {
  if (!plan.wantedFlow.known) return null;
  const W = plan.wantedFlow.value;
  const { total: F } = runningAt(plan, build, input(en`dial, full`, ONE, 'share'), 'full');
  const wanted = work(shareOfFull, en`dial before rounding`, { Q: W, F });
  const running = runningAt(plan, build, dialSetting(wanted, range, orNull(plan.motor.dialStep)));
  return { ...running, wanted, cost: work(costOfRounding, en`rounding costs`, { Q: running.total, W }) };
}
