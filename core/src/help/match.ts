/**
 * Whether a place, step by step, is one that a pattern stands for.
 *
 * @param pattern  steps between dots; `*` is any step, `A|B` either
 * @param steps    the place; a row may be its number or `*`
 * @returns whether the pattern's steps begin the place; `whole`: whether they are all of it
 * @source our choice
 * @example begins('machines.*.A|B.pressure', ['machines', '0', 'B', 'pressure'])  // true
 */
export function begins(pattern: string, steps: readonly string[]): boolean {
  const wanted = pattern.split('.');
  return wanted.length <= steps.length && wanted.every((want, at) => want === '*' || want.split('|').includes(steps[at] ?? ''));
}

/** Whether the pattern stands for the place itself, and not only for what it lies in. */
export const matches = (pattern: string, steps: readonly string[]): boolean =>
  pattern.split('.').length === steps.length && begins(pattern, steps);
