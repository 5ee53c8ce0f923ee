import path from 'node:path';
import { dateAfter } from '../src/days.ts';
import { en } from '../src/en.ts';
import { type Outcome, resolve, type ShopFile } from '../src/index.ts';
import { materialReach } from '../src/materialReach.ts';
import { quoteAdd } from '../src/quote/add.ts';
import { type QuotedMaterial, quoteBody, quoteOf } from '../src/quote/quote.ts';
import { reachOf } from '../src/reach/reach.ts';
import { quoteLines } from '../src/sheet/quoteLines.ts';
import { wholePage } from '../src/sheet/wholePage.ts';
import type { Call } from './flags.ts';
import { targetsOf } from './materials.ts';
import type { Window } from './windowFlag.ts';

const BINS = 40;

/** A quote: as lines or JSON, and as the page to print. */
export interface MadeQuote {
  readonly text: string;
  readonly html: () => string;
  readonly machine: string;
}

/** The quote page of a machine with every complete material of the file, the others by name; the clock that core does not have is read here. */
export function quoteText(file: ShopFile, window: Window, call: Call): Outcome<MadeQuote> {
  const targets = targetsOf(file, call.selection, call);
  if (!targets.ok) return targets;
  const complete = targets.value.find(({ plan }) => plan !== null)?.id ?? file.materials[0]?.id ?? '';
  const main = resolve(file, { ...call.selection, material: call.selection.material ?? complete }, call.say);
  if (!main.ok) return main;
  const plan = main.value;
  const materials = targets.value.flatMap((target): readonly QuotedMaterial[] =>
    target.plan === null ? [] : [{ plan: target.plan, row: materialReach(target.plan, target.best, call.say) }],
  );
  const plans = materials.map((one) => one.plan);
  const date = call.date ?? new Date().toISOString().slice(0, 10);
  const quote = quoteOf(plan, reachOf(plan, { ...window, bins: BINS }), materials, {
    number: call.number === '' ? en`unnumbered` : call.number,
    date,
    validUntil: call.validDays === null ? null : dateAfter(date, call.validDays),
    customer: call.customer,
    note: call.note,
    file: path.basename(call.file),
    say: call.say,
    incomplete: targets.value.flatMap((target) => (target.plan === null ? [target.name] : [])),
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
