import type { RatioCheckRow } from '../../../core/src/file/ratioCheckRow.ts';
import type { Mounted, Ranked, Say, Selection, ShopFile } from '../../../core/src/index.ts';
import type { Fraction } from '../../../core/src/ratio.ts';
import type { Reach } from '../../../core/src/reach/reach.ts';
import type { ReachWindow } from '../../../core/src/reachWindow.ts';

/** What the page asks of the search worker, and what comes back; `id` tells late answers apart. */
export interface SearchRequest {
  readonly id: number;
  readonly file: ShopFile;
  readonly selection: Selection;
  readonly say: Say;
}

export type SearchReply =
  | { readonly id: number; readonly kind: 'progress'; readonly done: number }
  | { readonly id: number; readonly kind: 'found'; readonly ranked: Ranked<Mounted> }
  | { readonly id: number; readonly kind: 'fault'; readonly message: string };

/** What the page asks of the worker that tries ratios: a plan goes ahead of all that is tried on it. */
export type TryRequest =
  | ({ readonly kind: 'plan' } & Omit<SearchRequest, 'id'>)
  | { readonly kind: 'try'; readonly id: number; readonly wanted: SentRatio; readonly keep: number };

/** An exact ratio as it goes between threads, over its denominator. */
export type SentRatio = readonly [numerator: bigint, denominator: bigint];

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

/** What the page asks of the worker that knows the reach: a plan goes ahead of all that is asked of it. */
export type ReachRequest =
  | ({ readonly kind: 'plan' } & Omit<SearchRequest, 'id'>)
  | ({ readonly kind: 'reach'; readonly id: number } & AskedReach)
  | { readonly kind: 'best'; readonly id: number; readonly material: string }
  | { readonly kind: 'add'; readonly id: number; readonly materials: readonly string[] };

export type ReachReply =
  | { readonly id: number; readonly kind: 'progress'; readonly done: number }
  | { readonly id: number; readonly kind: 'reach'; readonly reach: Reach }
  | { readonly id: number; readonly kind: 'best'; readonly material: string; readonly best: Mounted | null }
  | { readonly id: number; readonly kind: 'add'; readonly words: readonly string[] }
  | { readonly id: number; readonly kind: 'fault'; readonly message: string };

/** What the page asks of the worker that looks for the causes of a check. */
export interface JudgeRequest {
  readonly id: number;
  readonly file: ShopFile;
  readonly row: RatioCheckRow;
  readonly say: Say;
}
