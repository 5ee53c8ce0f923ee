import type { Place } from '../../../core/src/index.ts';
import { type Page, placeKey } from './app.ts';

/** Opens the page that holds a place, and puts the cursor there once the page is drawn. */
export async function goTo(place: Place, from: Page, show: (page: Page) => Promise<void>): Promise<void> {
  await show(pageOf(place) ?? from);
  requestAnimationFrame(() => focusField(place));
}

/** The page that holds a place of the file; null for one that stands on none. */
function pageOf([list, , field]: Place): Page | null {
  // The search settings of a machine stand at the head of its options, prices with what is to be bought.
  if (list === 'machines' || list === 'racks') return field === 'search' ? 'options' : field === 'prices' ? 'reach' : 'machine';
  if (list === 'unfinishedChecks' || list === 'ratioChecks') return 'check';
  return list === 'materials' ? 'material' : null;
}

/** A finding may point at a group, so the nearest box inside or above it is taken. */
function focusField(place: Place): void {
  for (let length = place.length; length > 0; length -= 1) {
    const key = CSS.escape(placeKey(place.slice(0, length)));
    const inside = `[data-also~="${key}"], [data-place^="${key}."]`;
    const field = document.querySelector<HTMLElement>(`[data-place="${key}"]`) ?? document.querySelector<HTMLElement>(inside);
    if (field === null) continue;
    openBlocksAround(field);
    field.focus();
    field.scrollIntoView({ block: 'nearest' });
    return;
  }
}

/** What stands in a closed block cannot take the cursor. */
function openBlocksAround(field: HTMLElement): void {
  for (let block = field.closest('details'); block !== null; block = block.parentElement?.closest('details') ?? null) block.open = true;
}
