import { dateAfter } from '../days.ts';
import { nextNumber } from '../file/nextNumber.ts';
import { reading, si } from '../file/problems.ts';
import type { QuoteRecord } from '../file/quoteRecord.ts';
import type { Say } from '../format.ts';
import type { Plan } from '../plan.ts';
import { whole } from '../ratio.ts';
import type { Reach } from '../reach/figures.ts';
import { toleranceText, windowText } from '../reachWords.ts';
import { readNumber } from '../reading.ts';
import { type AboutQuote, type Quote, type QuotedMaterial, quoteOf } from './quote.ts';

/** What a person says of a quote; its number and dates follow. */
export interface AskedQuote extends Omit<AboutQuote, 'number' | 'validUntil'> {
  /** Null: as long as nothing it rests on changes. */
  readonly validDays: number | null;
}

/** A quote as it would be kept now. */
export interface ReadyQuote {
  readonly record: QuoteRecord;
  /** Whether it is kept already, word for word. */
  readonly isKept: boolean;
}

/**
 * A quote with its number: that of the same page kept on the same day, else the next one.
 *
 * @param kept  quotes of the file
 * @throws RangeError  where its date is none and days of validity are given
 * @source our choice: numbered through, whatever the machine
 */
export function readyQuote(
  plan: Plan,
  reach: Reach,
  materials: readonly QuotedMaterial[],
  asked: AskedQuote,
  kept: readonly QuoteRecord[],
): ReadyQuote {
  const validUntil = asked.validDays === null ? null : dateAfter(asked.date, asked.validDays);
  const recordOf = (number: string): QuoteRecord => {
    const quote = quoteOf(plan, reach, materials, { ...asked, number, validUntil });
    return recordFrom(quote, plan, reach, { number, validUntil, date: asked.date, customer: asked.customer });
  };
  for (const one of kept) {
    if (one.date !== asked.date || one.machine !== plan.machine.id) continue;
    const record = recordOf(one.number);
    if (sameQuote(record, one)) return { record: one, isKept: true };
  }
  return { record: recordOf(nextNumber(kept)), isKept: false };
}

function recordFrom(
  quote: Quote,
  plan: Plan,
  { wish }: Reach,
  { number, date, customer, validUntil }: Pick<AboutQuote, 'number' | 'date' | 'customer' | 'validUntil'>,
): QuoteRecord {
  return {
    id: `quote-${number}`,
    number,
    date,
    machine: plan.machine.id,
    window: { low: wish.low.toFraction(), high: wish.high.toFraction() },
    tolerance: { value: wish.tolerance.mul(whole(100)).toFraction(), unit: '%' },
    ...(customer === '' ? {} : { customer }),
    ...(validUntil === null ? {} : { validUntil }),
    page: quote.page,
    rule: quote.rule,
  };
}

/** Both have their keys in the order of the file: a quote is made in it. */
const sameQuote = (a: Quote, b: Quote): boolean => JSON.stringify([a.page, a.rule]) === JSON.stringify([b.page, b.rule]);

/**
 * The window of a kept quote and its tolerance, for a list.
 *
 * @source our choice of words
 * @example keptWindowText(quote of 1 to 5 within 2 %, say)  // '1 to 5 : 1, ± 2 %'
 */
export function keptWindowText({ window, tolerance }: QuoteRecord, say: Say): string {
  const end = (text: string) => reading(readNumber(text));
  return `${windowText({ low: end(window.low), high: end(window.high) }, say)}, ${toleranceText(si('share', tolerance), say)}`;
}
