import { textWidth_em } from './textWidth.ts';

/** Height of a line of body text, in its ems. */
export const LINE = 1.3;

const SPACE_em = textWidth_em(' ');

/**
 * Height of texts set one below the other.
 *
 * @param width_mm  of the column, > 0
 * @param size      of their type, in ems of the body
 * @param em_mm     the body's em
 * @returns ems of the body
 * @source our choice: words are set as a browser sets them, each on the line while there is room, with the widths of `textWidth_em`
 */
export function textHeight_em(texts: readonly string[], width_mm: number, size: number, em_mm: number): number {
  const width_em = width_mm / em_mm / size;
  return texts.reduce((sum, text) => sum + lineCount(text, width_em), 0) * LINE * size;
}

function lineCount(text: string, width_em: number): number {
  let lines = 1;
  let used_em = 0;
  for (const word of text.split(' ')) {
    const word_em = textWidth_em(word);
    const room_em = width_em - used_em - (used_em === 0 ? 0 : SPACE_em);
    if (word_em <= room_em) {
      used_em = width_em - room_em + word_em;
      continue;
    }
    if (used_em > 0) lines += 1;
    // A word wider than the line is broken anywhere.
    const full = Math.ceil(word_em / width_em) - 1;
    lines += full;
    used_em = word_em - full * width_em;
  }
  return lines;
}

/** A list in two columns, read downwards. */
export interface Columns {
  readonly first: readonly string[];
  readonly second: readonly string[];
  readonly height_em: number;
}

/** Parts a list where the higher column is lowest; of equal ways, so that the first column is the longer. */
function parted(texts: readonly string[], height_em: (text: string) => number): Columns {
  const heights = texts.map(height_em);
  const sum = (some: readonly number[]) => some.reduce((total, height) => total + height, 0);
  const higher = (count: number) => Math.max(sum(heights.slice(0, count)), sum(heights.slice(count)));
  const counts = Array.from({ length: texts.length + 1 }, (_, index) => texts.length - index);
  const best = counts.reduce((lowest, count) => (higher(count) < higher(lowest) ? count : lowest));
  return { first: texts.slice(0, best), second: texts.slice(best), height_em: higher(best) };
}

/** Steps stand beside a box, with a little air between them. */
export const stepColumns = (steps: readonly string[], em_mm: number): Columns =>
  parted(steps, (step) => textHeight_em([step], 90 - 2 * em_mm, 0.95, em_mm) + 0.27);

/** Sentences in columns that are a little wider than those of the cautions. */
export const sentenceColumns = (sentences: readonly string[], em_mm: number): Columns =>
  parted(sentences, (sentence) => textHeight_em([sentence], 90 - em_mm, 0.9, em_mm));

export const cautionColumns = (cautions: readonly string[], em_mm: number): Columns =>
  parted(cautions, (caution) => textHeight_em([caution], 84, 0.9, em_mm));
