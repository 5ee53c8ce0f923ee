import { en } from '../../../../core/src/en.ts';
import { type PriceRow, samePriced } from '../../../../core/src/file/prices.ts';
import { readTeethRange } from '../../../../core/src/teethRange.ts';

/** A range of teeth, one count alone being a range too, that no other row gives a price. */
export function readFreeTeeth(text: string, of: Pick<PriceRow, 'kind' | 'size'>, others: readonly PriceRow[]) {
  const typed = text.trim();
  const read = readTeethRange(/^\d+$/.test(typed) ? `${typed} to ${typed}` : typed);
  if (!read.ok) return read;
  if (read.value === undefined) return { ok: false, expected: en`Expected teeth, as 13 to 20.` } as const;
  const other = samePriced(others, { kind: of.kind, size: of.size, ...read.value });
  if (other === undefined) return { ok: true, value: read.value } as const;
  return { ok: false, expected: en`${other.size}, ${other.from} to ${other.to} teeth have a price already.` } as const;
}
