import { MOST_DAYS } from '../../../../core/src/calendar.ts';
import { dateAfter } from '../../../../core/src/days.ts';
import { en } from '../../../../core/src/en.ts';
import { readCount } from '../../../../core/src/entry.ts';
import { CUSTOMER_LENGTH, NOTE_LENGTH } from '../../../../core/src/quote/quote.ts';
import { Entry, type EntryReading } from '../../fields/Entry.tsx';
import { type QuoteAsked, useApp } from '../../state/app.ts';
import { today } from '../../state/keepSheet.ts';

/** Whom the quote is for, a note, and how long it holds. */
export function QuoteFields() {
  const app = useApp();
  const keep = (part: Partial<QuoteAsked>) => app.askQuote({ ...app.quoteAsked(), ...part });
  const words = (name: 'customer' | 'note', text: string, most: number): EntryReading => {
    if (text.length > most) return { ok: false, expected: en`At most ${most} characters, not ${text.length}.` };
    keep({ [name]: text });
    return { ok: true };
  };
  const days = (text: string): EntryReading => {
    const read = readCount(text, 1, MOST_DAYS);
    if (!read.ok) return read;
    keep({ days: text });
    return read.value === undefined ? { ok: true } : { ok: true, reading: en`until ${dateAfter(today(), read.value)}` };
  };
  return (
    <div class="quotefields screen">
      <Entry
        label={en`For (customer)`}
        place={['quote', 'customer']}
        text={app.quoteAsked().customer}
        take={(text) => words('customer', text, CUSTOMER_LENGTH)}
      />
      <Entry label={en`Note`} place={['quote', 'note']} text={app.quoteAsked().note} take={(text) => words('note', text, NOTE_LENGTH)} />
      <Entry
        label={en`Holds for, days`}
        place={['quote', 'days']}
        text={app.quoteAsked().days}
        hint={app.quoteAsked().days.trim() === '' ? en`Empty: until anything it rests on changes.` : undefined}
        take={days}
      />
    </div>
  );
}
