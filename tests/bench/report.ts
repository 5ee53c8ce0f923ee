/** How long a plain way takes for what the product does. */
export interface Baseline {
  readonly ms: number;
  /** `ran`: timed from beginning to end; `rate`: time per combination of a run that ended, in this process, times the combinations */
  readonly how: 'ran' | 'rate';
}

/** One line of the table. */
export interface Row {
  readonly name: string;
  /** combinations of choices, before anything is left out by thinking; null where that says nothing */
  readonly raw: number | null;
  /** null: stopped, as `note` says */
  readonly median_ms: number | null;
  readonly max_ms: number | null;
  readonly loops: Baseline | null;
  readonly twin: Baseline | null;
  /** in use at the end of one search beyond what was before, what waits to be collected included */
  readonly memory_MB: number | null;
  readonly note: string;
}

/** What is claimed of the product, and what was found. */
export interface Claim {
  readonly what: string;
  /** null: could not be measured, as `note` says */
  readonly figure: number | null;
  readonly least?: number;
  readonly most?: number;
  readonly unit: 'x' | 'MB' | '%';
  readonly note: string;
}

/** What one entry of the benchmark found. */
export interface Outcome {
  readonly rows: readonly Row[];
  readonly claims: readonly Claim[];
  /** answers of two ways that should be one and the same and were not */
  readonly differences: readonly string[];
}

export const holds = ({ figure, least = -Infinity, most = Infinity }: Claim): boolean =>
  figure !== null && figure >= least && figure <= most;

/** How many times faster the product is; null where one of the two is not known. */
export const timesFaster = ({ median_ms }: Row, baseline: Baseline | null): number | null =>
  baseline && median_ms !== null && median_ms > 0 ? baseline.ms / median_ms : null;
