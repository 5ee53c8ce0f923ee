/** The number after the largest one kept: sheets are numbered through, whatever the machine. */
export function nextSheetNumber(kept: readonly { readonly number: string }[]): string {
  const largest = kept.reduce((most, { number }) => Math.max(most, /^\d{1,9}$/.test(number) ? Number(number) : 0), 0);
  return String(largest + 1).padStart(4, '0');
}
