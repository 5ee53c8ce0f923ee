import path from 'node:path';
import { dateAfter } from '../src/days.ts';
import { firstOption } from '../src/firstOption.ts';
import { type Outcome, resolve, type ShopFile } from '../src/index.ts';
import { materialReach } from '../src/materialReach.ts';
import { quoteAdd } from '../src/quote/add.ts';
import { type QuotedMaterial, quoteBody, quoteOf } from '../src/quote/quote.ts';
import { reachOf } from '../src/reach/reach.ts';
import { quoteLines } from '../src/sheet/quoteLines.ts';
import { wholePage } from '../src/sheet/wholePage.ts';
import type { Call } from './flags.ts';
import type { Window } from './windowFlag.ts';

const BINS = 40;

/** A quote: as lines or JSON, and as the page to print. */
export interface MadeQuote {
  readonly text: string;
  readonly html: () => string;
  readonly machine: string;
}

/** The quote page of a machine with every complete material of the file; the clock that core does not have is read here. */
export function quoteText(file: ShopFile, window: Window, call: Call): Outcome<MadeQuote> {
  const main = resolve(file, { ...call.selection, material: call.selection.material ?? file.materials[0]?.id ?? '' }, call.say);
  if (!main.ok) return main;
  const plan = main.value;
  const materials = file.materials.flatMap(({ id }): readonly QuotedMaterial[] => {
    const resolved = resolve(file, { ...call.selection, material: id }, call.say);
    if (!resolved.ok) return [];
    const best = firstOption(resolved.value);
    return [{ plan: resolved.value, row: materialReach(resolved.value, best, call.say) }];
  });
  const plans = materials.map((one) => one.plan);
  const date = call.date ?? new Date().toISOString().slice(0, 10);
  const quote = quoteOf(plan, reachOf(plan, { ...window, bins: BINS }), materials, {
    number: call.number === '' ? 'unnumbered' : call.number,
    date,
    validUntil: call.validDays === null ? null : dateAfter(date, call.validDays),
    customer: call.customer,
    note: call.note,
    file: path.basename(call.file),
    say: call.say,
    add: quoteAdd(plans, call.say),
  });
  const { page } = quote;
  const text = call.json ? JSON.stringify({ format: 'ratiowright quote', ...page }, null, 2) : quoteLines(page).join('\n');
  return {
    ok: true,
    findings: main.findings,
    value: {
      text: `${call.json ? text : text.replaceAll('\u00a0', ' ').replaceAll('\u2011', '-')}\n`,
      html: () => wholePage(page.title, quoteBody(quote), call.paper),
      machine: plan.machine.name,
    },
  };
}
