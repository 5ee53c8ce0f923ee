/** A word of the trade or of this program, in a sentence or two. */
export interface Word {
  readonly word: string;
  /** Other forms under which it stands on the screen and on paper. */
  readonly also?: readonly string[];
  readonly means: string;
}
