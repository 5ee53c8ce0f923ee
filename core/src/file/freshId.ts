/**
 * An id that no row has yet, numbered from 1.
 *
 * @param rows    the rows it must differ from
 * @param prefix  letters or digits, such as `pump`
 * @source our choice: the smallest free number, so that the same work gives the same file
 * @example freshId([{ id: 'pump-1' }], 'pump')  // 'pump-2'
 */
export function freshId(rows: readonly { readonly id: string }[], prefix: string): string {
  const taken = new Set(rows.map(({ id }) => id));
  for (let n = 1; ; n += 1) if (!taken.has(`${prefix}-${n}`)) return `${prefix}-${n}`;
}
