import { createMemo } from 'solid-js';
import { MOST_DAYS } from '../../../core/src/calendar.ts';
import { en } from '../../../core/src/en.ts';
import { readCount } from '../../../core/src/entry.ts';
import type { QuoteRecord } from '../../../core/src/file/quoteRecord.ts';
import type { MaterialReach } from '../../../core/src/materialReach.ts';
import { type ReadyQuote, readyQuote } from '../../../core/src/quote/kept.ts';
import type { QuotedMaterial } from '../../../core/src/quote/quote.ts';
import type { App } from './app.ts';
import { today } from './keepSheet.ts';
import type { ReachState } from './reach.ts';

const NOT_YET = en`Not worked out when this page was made.`;

/** The quote of the window that is shown, and those that were kept. */
export interface QuoteState {
  /** Null while its figures are still worked out. */
  readonly ready: () => ReadyQuote | null;
  /** Newest first. */
  readonly kept: () => readonly QuoteRecord[];
  /** Keeps the quote in the shop file, in one undo step; one that is kept already stays as it is. */
  readonly keep: () => void;
}

export function createQuote(app: App, reach: ReachState, rows: () => readonly MaterialReach[]): QuoteState {
  const kept = () => app.shop.file?.quotePages ?? [];
  const materials = (): readonly QuotedMaterial[] =>
    reach.materials().flatMap(({ id, plan }) => {
      const row = rows().find((one) => one.id === id);
      return plan === null || row === undefined ? [] : [{ plan, row }];
    });
  const validDays = (): number | null => {
    const days = readCount(app.quoteAsked().days, 1, MOST_DAYS);
    return days.ok ? (days.value ?? null) : null;
  };
  /** No page is made of figures that another window or another plan stands behind. */
  const ready = createMemo((): ReadyQuote | null => {
    const found = reach.found();
    const known = reach.materials().every(({ id, plan }) => plan === null || reach.best(id) !== undefined);
    if (found === null || !reach.current() || !known) return null;
    const { customer, note } = app.quoteAsked();
    const asked = {
      date: today(),
      validDays: validDays(),
      customer: customer.trim(),
      note: note.trim(),
      file: app.shop.name,
      say: app.say(),
      incomplete: reach.materials().flatMap(({ name, plan }) => (plan === null ? [name] : [])),
      add: reach.add() ?? [NOT_YET],
    };
    return readyQuote(found.plan, found.reach, materials(), asked, kept());
  });
  return {
    ready,
    kept: () => [...kept()].reverse(),
    keep() {
      const quote = ready();
      if (quote === null || quote.isKept) return;
      const record = structuredClone(quote.record);
      app.shop.edit(`keep ${record.id}`, (file) => {
        file.quotePages = [...(file.quotePages ?? []), record];
      });
      app.shop.pause();
    },
  };
}
