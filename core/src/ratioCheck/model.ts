import type { Given } from '../given.ts';
import type { OffRatioLimits } from '../mixRatio.ts';
import type { SideName } from '../plan.ts';
import type { Fraction } from '../ratio.ts';

// What a ratio check is made of. One that is kept carries the terms it was judged by, so that a later change of machine, pump or material
// never changes what an old check says.

/** One thing for each side. */
export type BySide<T> = Readonly<Record<SideName, T>>;

/** All that turns catches into a verdict, as it stood on the day; exact. */
export interface CheckTerms {
  /** By volume as run, above 0. */
  readonly wantedBPerA: Fraction;
  readonly limits: OffRatioLimits | null;
  /** The basis on which the material's sheet counts, with the target and its limits in its words. */
  readonly basis: 'weight' | 'volume';
  readonly written: string;
  readonly limitsWritten: string | null;
  /** As run. */
  readonly density_kg_per_m3: BySide<Given<Fraction>>;
  /** B over A, as run; known too where only a sheet's two ratios tell it. */
  readonly densityBOverA: Given<Fraction>;
  /** Nominal, of the pump that was fitted. */
  readonly displacement_m3_per_rev: BySide<Fraction>;
  /** ± share of that displacement. */
  readonly tolerance: BySide<Given<Fraction>>;
  /** Share of the displacement that the pump delivered when it was new. */
  readonly newDelivery: BySide<Given<Fraction>>;
  /** Turns of each pump for one of the motor, by the teeth that were fitted. */
  readonly pumpTurns: BySide<Fraction>;
  /** At 100 % of the dial. */
  readonly motorSpeed_rev_per_s: Fraction;
}

/** How long each catch ran; null where nobody counted: then the ratio is judged, and no delivery. */
export type CatchRun =
  | { readonly by: 'turns'; readonly motorTurns: Fraction }
  | { readonly by: 'time'; readonly time_s: Fraction; readonly motor_rev_per_s: Fraction }
  | null;

/** What the catches were read on. */
export interface Scale {
  /** Smallest step of its reading, above 0. */
  readonly step_kg: Fraction;
  /** Two where gross and tare were both read, one where the scale was tared. */
  readonly readings: 1 | 2;
  /** ± of the scale itself at 95 %, beside its step, from its certificate. */
  readonly uncertainty_kg: Given<Fraction>;
}

/** What one side gave in one catch: weighed, measured in a cylinder as run, or both. */
export interface Caught {
  /** Net, above 0. */
  readonly mass_kg: Given<Fraction>;
  /** Above 0. */
  readonly volume_m3: Given<Fraction>;
}

/** One catch of both sides, unmixed. */
export interface Catch {
  readonly sides: BySide<Caught>;
  /** Why it does not count; null where it does. */
  readonly leftOut: string | null;
}

/** A ratio check before it is judged. */
export interface CheckInput {
  readonly terms: CheckTerms;
  readonly run: CatchRun;
  readonly scale: Scale;
  /** Of those that count, all sides are weighed, or all are measured by volume. */
  readonly catches: readonly [Catch, ...Catch[]];
  /** Above 0.5, below 1. */
  readonly confidence: number;
}

/** Two ends, the smaller first. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}
