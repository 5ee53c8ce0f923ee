import type { Fraction } from '../ratio.ts';
import type { Input, Worked } from '../working.ts';
import type { CentreLimits, CountResult } from './pitchCount.ts';

/** Diameters of one wheel: where its chain runs, its bare teeth, and all that turns with the chain on. */
export interface WheelSize {
  readonly pitchDiameter_m: number;
  readonly outsideDiameter_m: number;
  readonly runningDiameter_m: number;
}

/** A stage with its two wheels, laid out: what the checks judge and the sheet draws. */
export interface StageFit {
  readonly driver: WheelSize;
  readonly driven: WheelSize;
  /** The chain or belt round both; null where the centre limits and the present length are not given. */
  readonly loop: LoopFit | null;
}

export interface LoopFit {
  /** How the pitch count was chosen; null where the centre limits are not given and the present count stays. */
  readonly count: CountResult | null;
  /** What goes on, even where it does not fit: pitches, centre to set, slack left there. */
  readonly pitches: number;
  readonly centre_m: number;
  readonly slack_pitches: number;
  /** Contact angle on the smaller wheel. */
  readonly wrap_rad: number;
  /** Free run between the tangent points. */
  readonly span_m: number;
}

/** How the diameters of a wheel and the ripple of its teeth come about. */
export interface WheelWorkings {
  readonly pitchDiameter: Worked<number>;
  readonly outsideDiameter: Worked<number>;
  readonly runningDiameter: Worked<number>;
  readonly ripple: Worked<number>;
}

/** How the taut length at a centre distance, the wrap on the smaller wheel and the free span come about. */
export interface LoopWorkings {
  readonly length: Worked<number>;
  readonly wrap: Worked<number>;
  readonly span: Worked<number>;
}

/** How far the middle of the slack span may move by hand, and the spare length of the loop that it stands for. */
export interface SlackEnd {
  readonly movement: Worked<number>;
  readonly spare: Worked<number>;
}

/** What each way of oiling will do for, slowest first; the last has no end. */
export interface Oiling {
  readonly ways: readonly { readonly how: string; readonly to_m_per_s: number }[];
  /** The size whose limits these are, where it has none of its own. */
  readonly takenFrom: string | null;
}

/** Words of a kind, as they stand in sentences and on sheets. */
export interface KindWords {
  readonly wheel: string;
  readonly wheels: string;
  readonly loop: string;
  readonly size: string;
}

/** What a kind of drive must supply; `index.ts` lists the kinds, and nothing else tells them apart. */
export interface DriveKind {
  readonly kind: string;
  readonly words: KindWords;
  /** Head of the column of its sizes in a rack as CSV, which is read back. */
  readonly sizeHead: string;
  readonly sizes: readonly string[];
  /** The size as this kind writes it, or null where it is not known. */
  size(written: string): string | null;
  /** Two names of one size, as 40 and 08A. */
  sameSize(a: string, b: string): boolean;
  /** Output turns per input turn. */
  turns(driverTeeth: number, drivenTeeth: number): Fraction;
  /** Fewest teeth for smooth running, with its source. */
  readonly smooth: { readonly teeth: number; readonly source: string };
  /** How far the speed drops between two teeth, as a share. */
  ripple(teeth: number): Worked<number>;
  /** Lays out a pair of wheels; the size gives the pitch. */
  fit(size: string, driverTeeth: number, drivenTeeth: number, request: LoopRequest): StageFit;
  wheelWorkings(size: string, teeth: number): WheelWorkings;
  /** The loop round two wheels that stand so far apart. */
  loopWorkings(size: string, driverTeeth: number, drivenTeeth: number, centre_m: number): LoopWorkings;
  /** Where the force in the loop acts on a wheel. */
  pitchDiameter(size: string, teeth: number): Worked<number>;
  /** Speed of the loop, from a wheel and its speed. */
  loopSpeed(size: string, teeth: number, speed: Input<number>): Worked<number>;
  /** Most that the loop may pull; `what` of it says by which rule. */
  allowedPull(size: string, offsetLink: boolean): Worked<number>;
  /** Whether a loop of so many pitches closes only with an offset link. */
  needsOffsetLink(pitches: number): boolean;
  /** Power a loop takes on a wheel at a speed above 0; null where none is published for the size. */
  ratedPower(size: string, smallerTeeth: number, itsSpeed: Input<number>): Worked<number> | null;
  /** Null where no limits are known for the size. */
  oiling(size: string): Oiling | null;
  /** Total movement at mid-span, as shares of the free span, from the tightest to the loosest. */
  readonly slackShares: { readonly from: number; readonly to: number };
  /** The same for a span, with the length that it stands for. */
  slack(span: Input<number>): { readonly from: SlackEnd; readonly to: SlackEnd };
  /** What a number of pitches measures when new, and may measure when worn. */
  wear(size: string, pitches: number): { readonly asNew: Worked<number>; readonly limit: Worked<number> };
}

/** What a stage says of its loop; null where not given. */
export interface LoopRequest {
  readonly centre: CentreLimits | null;
  readonly takeUp_pitches: number | null;
  readonly presentPitches: number | null;
  readonly offsetLinkAllowed: boolean;
}
