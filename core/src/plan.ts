import type { CentreLimits } from './drives/pitchCount.ts';
import type { Finding, Place } from './finding.ts';
import type { Given } from './given.ts';
import type { OffRatioLimits } from './mixRatio.ts';
import type { Fraction } from './ratio.ts';

export type SideName = 'A' | 'B';

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
  readonly speedFrom_rev_per_s: Given<Fraction>;
  readonly speedTo_rev_per_s: Given<Fraction>;
}

export interface Side {
  readonly name: SideName;
  /** The component in this tank, in the user's words. */
  readonly component: string;
  readonly pumps: readonly [Pump, ...Pump[]];
  readonly fitted: number;
  /** Stages between motor and pump, motor first, as indexes into `stages`. */
  readonly train: readonly number[];
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

/** What a search may use beyond what is fitted. */
export interface Choice {
  readonly wheels: 'rack' | 'rack and purchases' | 'any';
  /** Pieces that may be bought; without end for `any`. */
  readonly purchases: number;
  /** Teeth that may be bought or used at all; null leaves it to the limits of each slot. */
  readonly teeth: { readonly from: number; readonly to: number } | null;
  readonly anyPump: boolean;
}

/** The mix ratio as a plan needs it: by volume at the temperatures at which the machine runs. */
export interface Mix {
  readonly place: Place;
  readonly wantedBPerA: Fraction;
  readonly limits: OffRatioLimits | null;
  /** The target as the sheet counts it: parts of each tank on its basis. */
  readonly sheet: { readonly basis: 'weight' | 'volume'; readonly partsA: Fraction; readonly partsB: Fraction; readonly written: string };
  readonly limitsWritten: string | null;
  /** Density of B over density of A, both as run. */
  readonly densityBOverA: Given<Fraction>;
  readonly density_kg_per_m3: Readonly<Record<SideName, Given<Fraction>>>;
  readonly runAt_K: Readonly<Record<SideName, Given<Fraction>>>;
}

export interface Minutes {
  readonly sprocket_s: number;
  readonly chainLength_s: number;
  readonly centre_s: number;
  readonly pump_s: number;
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
  };
  readonly stages: readonly Stage[];
  readonly sides: Readonly<Record<SideName, Side>>;
  readonly pieces: readonly Piece[];
  readonly choice: Choice;
  readonly mix: Mix;
  readonly minutes: Minutes;
  readonly catchTurns: number;
  readonly checklist: readonly string[];
  readonly cautions: readonly string[];
  /** What had to be assumed or is missing, said once for the whole plan. */
  readonly findings: readonly Finding[];
}
