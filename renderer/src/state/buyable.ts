import { createMemo } from 'solid-js';
import { type Plan, resolve } from '../../../core/src/index.ts';
import { readTeethRange, type TeethRange } from '../../../core/src/teethRange.ts';
import type { App } from './app.ts';

/** Which wheels may be bought for the present plan, or what stands against saying so. */
export type Buyable =
  | { readonly ok: true; readonly plan: Plan; readonly teeth: TeethRange | null }
  | { readonly ok: false; readonly trouble: string };

/** Null where there is no plan. */
export function createBuyable(app: App): () => Buyable | null {
  // A material that is ticked changes nothing here.
  const typed = createMemo(() => app.buyAsked().teeth);
  return createMemo((): Buyable | null => {
    const file = app.shop.file;
    const outcome = app.solution.plan();
    if (file === null || outcome?.ok !== true) return null;
    const range = readTeethRange(typed());
    if (!range.ok) return { ok: false, trouble: range.expected };
    const teeth = range.value ?? null;
    const bought = resolve(file, { ...app.selection(), purchases: 1, ...(teeth !== null && { teeth }) }, app.say());
    if (!bought.ok) return { ok: false, trouble: bought.findings.map(({ what }) => what).join(' ') };
    return { ok: true, plan: outcome.value, teeth };
  });
}
