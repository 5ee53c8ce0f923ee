import type { Mounted, Ranked, Say, Selection, ShopFile } from '../../../core/src/index.ts';

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
