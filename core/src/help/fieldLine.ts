import { en } from '../en.ts';
/** What a box is for, in one line, and where its value is found; unit and limits come from the schema of the shop file. */
export interface FieldLine {
  /** Its place in the shop file, or the name of a box that the file does not keep. `*` is any row, `A|B` either of them. */
  readonly place: string;
  /** Further places that the same box holds. */
  readonly also?: readonly string[];
  readonly name: string;
  readonly means: string;
  readonly found: string;
  /** Where the file keeps the same figure within limits, if not at `place`. */
  readonly limitsOf?: string;
  /** What may be typed, where no schema says it. */
  readonly limits?: () => string;
}

/** The boxes of a page, or of a part of it. */
export interface FieldPage {
  readonly title: string;
  readonly lines: readonly FieldLine[];
}

/** For a choice that the file keeps as plain text. */
export const FROM_LIST = () => en`one of the list`;
