import { en } from '../en.ts';
import { escaped } from './html.ts';

/**
 * The foot of a page. The bar is drawn in millimetres, apart from the type size, so that it tells whether the printer has scaled the page.
 *
 * @param invented  the mark of an invented example; null for a real shop
 */
export function footBlock(footer: string, invented: string | null): string {
  const marks = Array.from({ length: 9 }, (_, index) => `<path d="M${11 + index * 10} 2.2V3.8" stroke="#000" stroke-width=".2"/>`).join('');
  const bar = `<svg width="102mm" height="6mm" viewBox="0 0 102 6" role="img" aria-label="${escaped(en`100 mm bar`)}"><path id="bar" d="M1 3H101" stroke="#000" stroke-width=".3"/><path d="M1 1V5M101 1V5" stroke="#000" stroke-width=".3"/>${marks}</svg>`;
  const mark = invented === null ? '' : `<div>${escaped(invented)}</div>`;
  return `<footer class="foot"><div>${bar}${escaped(en`This bar is 100 mm long, or the print is not to scale.`)}</div><div class="right"><div>${escaped(footer)}</div>${mark}</div></footer>`;
}
