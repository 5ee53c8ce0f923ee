import { en } from '../src/en.ts';
import { quoted } from '../src/visible.ts';

/** What a wheel costs by its teeth. */
export interface PriceRow {
  readonly from: number;
  readonly to: number;
  /** In hundredths, so that sums are exact. */
  readonly price: number;
}

const ROW = /^(\d{1,3})(?:-(\d{1,3}))?=(\d{1,9})(?:[.](\d{1,2}))?$/;

/** Prices as `13-20=18,21-40=25.50`; what is wrong with them is added to the problems. */
export function readPrices(text: string | undefined, problems: string[]): readonly PriceRow[] | null {
  if (text === undefined) return null;
  const rows = text.split(',').flatMap((part): readonly PriceRow[] => {
    const [, from, to, price, hundredths = ''] = ROW.exec(part.trim()) ?? [];
    const row = { from: Number(from), to: Number(to ?? from), price: 100 * Number(price) + Number(hundredths.padEnd(2, '0')) };
    if (from !== undefined && row.from <= row.to) return [row];
    problems.push(en`--prices takes teeth and their price as 13-20=18,21=25.50, not ${quoted(part)}.`);
    return [];
  });
  const twice = rows.find((row, index) => rows.slice(0, index).some((other) => other.from <= row.to && row.from <= other.to));
  if (twice !== undefined) problems.push(en`--prices gives ${twice.from} to ${twice.to} teeth a second price.`);
  return rows;
}

/** Null for teeth that no row names. */
export const priceOf = (rows: readonly PriceRow[], teeth: number): number | null =>
  rows.find(({ from, to }) => from <= teeth && teeth <= to)?.price ?? null;

/** Of a pump by its id, in hundredths. */
export type PumpPrices = ReadonlyMap<string, number>;

const PUMP_ROW = /^([^=,]+)=(\d{1,9})(?:[.](\d{1,2}))?$/;

/** Prices as `b-2=350,b-3=410.50`; what is wrong with them is added to the problems. */
export function readPumpPrices(text: string | undefined, problems: string[]): PumpPrices | null {
  if (text === undefined) return null;
  const prices = new Map<string, number>();
  for (const part of text.split(',')) {
    const [, id, price, hundredths = ''] = PUMP_ROW.exec(part.trim()) ?? [];
    if (id === undefined) problems.push(en`--pump-prices takes pumps and their price as b-2=350,b-3=410.50, not ${quoted(part)}.`);
    else if (prices.has(id)) problems.push(en`--pump-prices gives ${id} a second price.`);
    else prices.set(id, 100 * Number(price) + Number(hundredths.padEnd(2, '0')));
  }
  return prices;
}
