import type { Mark } from './band.ts';

/** Steps of a power of ten, coarse to fine: what is a round number to a person. */
const ROUND = [5, 2, 1] as const;

/**
 * Round numbers on a log scale: the roundest first, and between them rounder ones before others, wherever there is room.
 *
 * @param from, to  ends of the scale, above zero
 * @param share     of the scale that two marks keep between them, above 0
 * @returns ascending; `at` in per cent of the scale; as many places as the step needs on which a mark lies
 * @source our choice
 * @example logMarks(1, 5, 0.1)  // 1, 1.2, 1.5, 2, 2.5, 3, 4, 5
 */
export function logMarks(from: number, to: number, share: number): readonly Mark[] {
  const span = Math.log(to / from);
  const marks: Mark[] = [];
  for (let power = Math.floor(Math.log10(to)); ; power -= 1) {
    for (const round of ROUND) {
      const step = round * 10 ** power;
      // Steps closer together than the marks may be even where they are widest find no more room.
      if (Math.log1p(step / from) / span < share / 2) return marks.sort((a, b) => a.at - b.at);
      addMultiples(step, Math.max(0, -power));
    }
  }
  function addMultiples(step: number, places: number): void {
    const room = 100 * share;
    // A hair beyond both ends, where floats put a mark that is an end.
    const first = Math.ceil(from / step - 1e-9);
    for (let n = Math.max(1, first); n * step <= to * (1 + 1e-9); n += 1) {
      const at = (100 * Math.log((n * step) / from)) / span;
      if (marks.every((mark) => Math.abs(mark.at - at) >= room)) marks.push({ at, value: n * step, places });
    }
  }
}
