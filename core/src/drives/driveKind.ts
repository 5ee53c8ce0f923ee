import type { Fraction } from '../ratio.ts';
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

/** Words of a kind, in the singular, as they stand in sentences and on sheets. */
export interface KindWords {
  readonly wheel: string;
  readonly loop: string;
  readonly size: string;
}

/** What a kind of drive must supply; `index.ts` lists the kinds, and nothing else tells them apart. */
export interface DriveKind {
  readonly kind: string;
  readonly words: KindWords;
  readonly sizes: readonly string[];
  /** The size as this kind writes it, or null where it is not known. */
  size(written: string): string | null;
  /** Two names of one size, as 40 and 08A. */
  sameSize(a: string, b: string): boolean;
  /** Output turns per input turn. */
  turns(driverTeeth: number, drivenTeeth: number): Fraction;
  /** Fewest teeth for smooth running, with its source. */
  readonly smooth: { readonly teeth: number; readonly source: string };
  /** Lays out a pair of wheels; the size gives the pitch. */
  fit(size: string, driverTeeth: number, drivenTeeth: number, request: LoopRequest): StageFit;
  /** What a number of pitches may measure when worn, new and at the limit. */
  wear(size: string, pitches: number): { readonly new_m: number; readonly limit_m: number };
}

/** What a stage says of its loop; null where not given. */
export interface LoopRequest {
  readonly centre: CentreLimits | null;
  readonly takeUp_pitches: number | null;
  readonly presentPitches: number | null;
  readonly offsetLinkAllowed: boolean;
}
