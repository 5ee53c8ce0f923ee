/** A table of words with its heads. */
export interface WordTable {
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}
