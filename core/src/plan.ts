import type { Chemistry } from './chemistry/chemistry.ts';
import type { CentreLimits } from './drives/pitchCount.ts';
import { en } from './en.ts';
import type { Finding, Place } from './finding.ts';
import type { Given } from './given.ts';
import type { WorkedLimits } from './limits.ts';
import type { NamedLiquid } from './liquid.ts';
import type { OffRatioLimits } from './mixRatio.ts';
import type { Fraction } from './ratio.ts';
import type { Input } from './working.ts';

export type SideName = 'A' | 'B';
export const SIDES = ['A', 'B'] as const satisfies readonly SideName[];

/** A place where a wheel sits, with what its shaft and guard allow. */
export interface Slot {
  readonly place: Place;
  readonly teeth: number;
  readonly mayChange: boolean;
  /** Exact, so that bores typed in mm and in inches compare exactly. */
  readonly bore_m: Given<Fraction>;
  readonly keyway_m: Given<Fraction>;
  readonly teethFrom: Given<number>;
  readonly teethTo: Given<number>;
  /** Largest diameter, chain on, that the guard clears. */
  readonly guard_m: Given<number>;
}

/** Teeth of both wheels of one stage. */
export interface Teeth {
  readonly driver: number;
  readonly driven: number;
}

/** The two ends of a stage, in the order in which slots are listed everywhere. */
export const ENDS = ['driver', 'driven'] as const;
export const END_WORDS: Readonly<Record<(typeof ENDS)[number], string>> = { driver: en`driver`, driven: en`driven` };

/** How a ratio counts its parts. */
export const BY_BASIS: Readonly<Record<'weight' | 'volume', string>> = { weight: en`by weight`, volume: en`by volume` };

/** What is mounted: both pumps, and the teeth of every stage in the order of the plan. */
export interface Build {
  readonly pumps: Readonly<Record<SideName, Pump>>;
  readonly teeth: readonly Teeth[];
}

/** Whom a stage turns: one pump, both (its ratio cancels), or none. */
export type Turns = SideName | 'both' | 'neither';

export interface Stage {
  readonly id: string;
  readonly name: string;
  readonly place: Place;
  readonly kind: string;
  /** The size as its kind names it, for a chain the chain number. */
  readonly size: string;
  readonly turns: Turns;
  readonly driver: Slot;
  readonly driven: Slot;
  readonly open: boolean;
  readonly presentPitches: Given<number>;
  readonly presentCentre_m: Given<number>;
  readonly centre: Given<CentreLimits>;
  readonly takeUp_pitches: Given<number>;
  readonly offsetLinkAllowed: boolean;
}

export interface Pump {
  readonly id: string;
  readonly name: string;
  readonly place: Place;
  readonly displacement_m3_per_rev: Fraction;
  /** ± share of the displacement, 0 to 1. */
  readonly tolerance: Given<Fraction>;
  readonly speedFrom_rev_per_s: Given<Fraction>;
  readonly speedTo_rev_per_s: Given<Fraction>;
  readonly pressureLimit_Pa: Given<Fraction>;
  readonly gear: Given<Gear>;
  /** What it delivers of its displacement, from ratio checks; its error is ± the same unit. */
  readonly delivery: Given<{ readonly share: Fraction; readonly uncertainty: Given<Fraction> }>;
  /** What it delivered when it was new, and the least it may still deliver, as shares of its displacement. */
  readonly newDelivery: Given<Fraction>;
  readonly leastDelivery: Given<Fraction>;
  /** Whether the ratio is made up with that delivery; otherwise it is the ratio of teeth and displacements, and only the budget shifts. */
  readonly asMeasured: boolean;
}

/** The gears of a pump: for its displacement, its pulsation and, with the gap, its slip. */
export interface Gear {
  readonly place: Place;
  /** Of one of the two equal gears. */
  readonly teeth: number;
  readonly module_m: Given<Fraction>;
  readonly faceWidth_m: Given<Fraction>;
  readonly outsideDiameter_m: Given<Fraction>;
  readonly insideDiameter_m: Given<Fraction>;
  readonly centreDistance_m: Given<Fraction>;
  /** Across the leak. */
  readonly gapWidth_m: Given<Fraction>;
  /** Along the leak. */
  readonly gapLength_m: Given<Fraction>;
}

export interface Side {
  readonly name: SideName;
  /** The component in this tank, in the user's words. */
  readonly component: string;
  readonly pumps: readonly [Pump, ...Pump[]];
  readonly fitted: number;
  /** Stages between motor and pump, motor first, as indexes into `stages`. */
  readonly train: readonly number[];
  readonly place: Place;
  /** Across the pump. */
  readonly pressure_Pa: Given<Fraction>;
  /** Share of the shaft's work that reaches the liquid, above 0 to 1. */
  readonly mechanicalEfficiency: Given<Fraction>;
  readonly fill_m3: Given<Fraction>;
  readonly lowMark_m3: Given<Fraction>;
  /** Of the component, as run. */
  readonly viscosity_Pa_s: Given<Fraction>;
}

/** One row of the rack, ready to be taken: same kind, size and teeth fit a slot if the bore does. */
export interface Piece {
  readonly id: string;
  readonly kind: string;
  readonly size: string;
  readonly teeth: number;
  readonly bore_m: Given<Fraction>;
  readonly quantity: number;
  readonly part: string;
  readonly place: string;
}

/** What a wheel of one size costs by its teeth, both ends counted in. */
export interface Price {
  readonly kind: string;
  readonly size: string;
  readonly from: number;
  readonly to: number;
  /** In hundredths. */
  readonly price: number;
}

/** What a search may use beyond what is fitted. */
export interface Choice {
  readonly wheels: 'rack' | 'rack and purchases' | 'any';
  /** Pieces that may be bought; without end for `any`. */
  readonly purchases: number;
  /** Teeth that may be bought or used at all; null leaves it to the limits of each slot. */
  readonly teeth: { readonly from: number; readonly to: number } | null;
  readonly anyPump: boolean;
}

/** A liquid in a tank, with how well it is known. */
export interface TankLiquid extends NamedLiquid {
  readonly place: Place;
  /** Of the volume in its tank, as run. */
  readonly volumeShare: Given<Fraction>;
  /** ± share of the density. */
  readonly densityUncertainty: Given<Fraction>;
  /** ± about the temperature it is run at. */
  readonly temperatureUncertainty_K: Given<Fraction>;
}

/** The mix ratio as a plan needs it: by volume at the temperatures at which the machine runs. */
export interface Mix {
  readonly place: Place;
  /** B per A, with how it follows from the sheet. */
  readonly wanted: Input<Fraction>;
  readonly wantedBPerA: Fraction;
  readonly limits: OffRatioLimits | null;
  readonly limitsWorked: WorkedLimits | null;
  /** The target as the sheet counts it: parts of each tank on its basis. */
  readonly sheet: { readonly basis: 'weight' | 'volume'; readonly partsA: Fraction; readonly partsB: Fraction; readonly written: string };
  readonly limitsWritten: string | null;
  /** Density of B over density of A, both as run. */
  readonly densityBOverA: Given<Fraction>;
  readonly density_kg_per_m3: Readonly<Record<SideName, Given<Fraction>>>;
  /** The same as run, with how each came about. */
  readonly density: Readonly<Record<SideName, Given<Input<Fraction>>>>;
  readonly runAt_K: Readonly<Record<SideName, Given<Fraction>>>;
  readonly liquids: Readonly<Record<SideName, readonly TankLiquid[]>>;
  /** Known where the ratio comes from what reacts. */
  readonly chemistry: Given<Chemistry>;
}

/** Time for one change of each kind, exact, so that times that are equal compare equal however they add up. */
export interface Minutes {
  readonly sprocket_s: Fraction;
  readonly chainLength_s: Fraction;
  readonly centre_s: Fraction;
  readonly pump_s: Fraction;
}

/** An amount of material to be made: of the whole mix, or of one side with what belongs to it. */
export interface Batch {
  readonly place: Place;
  readonly of: 'mix' | SideName;
  readonly amount: { readonly kind: 'mass'; readonly mass_kg: Fraction } | { readonly kind: 'volume'; readonly volume_m3: Fraction };
}

export interface Named {
  readonly id: string;
  readonly name: string;
}

/** One machine, one rack, one material, complete and in SI; every optional input is known or not given. */
export interface Plan {
  readonly shop: string;
  readonly invented: boolean;
  readonly machine: Named;
  readonly material: Named;
  readonly rack: Named | null;
  readonly motor: {
    readonly place: Place;
    /** At 100 % of the dial. */
    readonly speed_rev_per_s: Fraction;
    /** Shares of that speed that may be used, 0 to 1. */
    readonly usable: Given<{ readonly from: Fraction; readonly to: Fraction }>;
    /** Smallest step of the dial, as a share. */
    readonly dialStep: Given<Fraction>;
    /** At its output shaft. */
    readonly ratedTorque_N_m: Given<Fraction>;
  };
  readonly stages: readonly Stage[];
  readonly sides: Readonly<Record<SideName, Side>>;
  readonly pieces: readonly Piece[];
  /** Of wheels to buy for this rack. */
  readonly prices: readonly Price[];
  /** The word for the money that prices count; null where the shop has given none. */
  readonly currency: string | null;
  readonly choice: Choice;
  readonly mix: Mix;
  readonly minutes: Minutes;
  /** Total flow of both sides that is wanted, with how it came about where a shot was given. */
  readonly wantedFlow: Given<Input<Fraction>>;
  readonly mixerVolume_m3: Given<Fraction>;
  /** Times which the load counts; at least 1. */
  readonly serviceFactor: Given<Fraction>;
  readonly batch: Given<Batch>;
  readonly catchTurns: number;
  readonly checklist: readonly string[];
  readonly cautions: readonly string[];
  /** What had to be assumed or is missing, said once for the whole plan. */
  readonly findings: readonly Finding[];
}

/** @throws RangeError where there is no such stage (a resolved plan has all that its trains name) */
export function stageAt({ stages }: Plan, index: number): Stage {
  const stage = stages[index];
  if (stage === undefined) throw new RangeError(`stageAt: there is no stage ${index}`);
  return stage;
}

/** @throws RangeError where a stage has no teeth (a build has teeth for every stage) */
export function teethAt(teeth: readonly Teeth[], index: number): Teeth {
  const pair = teeth[index];
  if (pair === undefined) throw new RangeError(`teethAt: stage ${index} has no teeth`);
  return pair;
}
