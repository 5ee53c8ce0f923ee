import type { Buying, GapClosers, LaidBuying } from '../../../core/src/buying/index.ts';
import type { RatioCheckRow } from '../../../core/src/file/ratioCheckRow.ts';
import type { Mounted, Say, Selection, ShopFile } from '../../../core/src/index.ts';
import type { Fraction } from '../../../core/src/ratio.ts';
import type { Reach, ReachGap } from '../../../core/src/reach/figures.ts';
import type { ReachWindow } from '../../../core/src/reachWindow.ts';
import type { TeethRange } from '../../../core/src/teethRange.ts';
import type { WindowPlans } from '../../../core/src/windowPlans.ts';

/** Which plan is meant. */
export interface PlanRequest {
  readonly file: ShopFile;
  readonly selection: Selection;
  readonly say: Say;
}

/** What the page asks of a worker, and what comes back: a plan goes ahead of all that is asked about it, `id` tells late answers apart. */
export type JobRequest<Asked> =
  | { readonly kind: 'plan'; readonly plan: PlanRequest }
  | { readonly kind: 'job'; readonly id: number; readonly asked: Asked };

export type JobReply<Answer> =
  | { readonly id: number; readonly kind: 'progress'; readonly done: number }
  | { readonly id: number; readonly kind: 'found'; readonly answer: Answer }
  | { readonly id: number; readonly kind: 'fault'; readonly message: string };

/** An exact ratio as it goes between threads, over its denominator. */
export type SentRatio = readonly [numerator: bigint, denominator: bigint];

export interface TryAsked {
  readonly wanted: SentRatio;
  readonly keep: number;
}

export interface SentNear {
  readonly bPerA: SentRatio;
  readonly inside: boolean | null;
  readonly partsChanged: number;
  readonly first: Mounted;
}

export interface AskedReach {
  /** Null: all that can be built, and these ratios with it. */
  readonly window: ReachWindow | null;
  readonly around: readonly Fraction[];
  readonly tolerance: Fraction;
}

export type ReachAsked =
  | ({ readonly kind: 'reach' } & AskedReach)
  | { readonly kind: 'best'; readonly material: string }
  | { readonly kind: 'add'; readonly materials: readonly string[] };

export type ReachAnswer =
  | { readonly kind: 'reach'; readonly reach: Reach }
  | { readonly kind: 'best'; readonly best: Mounted | null }
  | { readonly kind: 'add'; readonly words: readonly string[] };

/** What may be bought; no teeth: as the machine says. */
export interface BuyWish {
  readonly most: number;
  /** Whether pumps that are not fitted have to be bought too. */
  readonly pumps: boolean;
  readonly teeth: TeethRange | null;
}

export type BuyAsked =
  | { readonly kind: 'closers'; readonly gap: Pick<ReachGap, 'low' | 'high'>; readonly window: WantedWindow; readonly wish: BuyWish }
  | { readonly kind: 'materials'; readonly materials: readonly string[]; readonly wish: BuyWish }
  | { readonly kind: 'window'; readonly window: WantedWindow; readonly wish: BuyWish };

/** A per B, every ratio of it within the tolerance. */
export interface WantedWindow extends ReachWindow {
  readonly tolerance: Fraction;
}

export type BuyAnswer =
  | { readonly kind: 'closers'; readonly closers: GapClosers }
  | { readonly kind: 'materials'; readonly plans: MaterialPlans }
  | { readonly kind: 'window'; readonly plans: WindowPlans };

/** For materials by their place in the list that was asked. */
export interface MaterialPlans extends LaidBuying {
  readonly found: Buying;
}

/** The check whose causes are looked for. */
export interface JudgeAsked {
  readonly file: ShopFile;
  readonly say: Say;
  readonly row: RatioCheckRow;
}
