import { createEffect, onCleanup, onMount } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { SheetBody } from '../../../../core/src/sheet/changeSheetPage.ts';
import { type Paper as PaperSize, pageStyle } from '../../../../core/src/sheet/pageStyle.ts';

/** The app's own font, so that screen and print measure the same on every computer. */
const FONT = `:host { font-family: var(--font); font-variant-numeric: tabular-nums lining-nums; color: #000; display: block }`;

/**
 * The page as it prints. It lives in a shadow tree, so that its style and the app's do not touch each other; the paper's size
 * is a rule of the whole document and is taken back when the page is left.
 */
export function Paper(props: { readonly body: SheetBody; readonly size: PaperSize }) {
  let host: HTMLElement | undefined;
  const style = new CSSStyleSheet();
  const page = new CSSStyleSheet();
  const font = new CSSStyleSheet();
  font.replaceSync(FONT);
  onMount(() => {
    const root = host?.attachShadow({ mode: 'open' });
    if (root === undefined) return;
    const sheet = document.createElement('div');
    sheet.className = 'sheet';
    root.append(sheet);
    root.adoptedStyleSheets = [style, font];
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, page];
    createEffect(() => {
      style.replaceSync(pageStyle(props.size));
      page.replaceSync(`@page { size: ${props.size === 'A4' ? 'A4' : 'letter'}; margin: 12mm }`);
    });
    createEffect(() => {
      // Made by core: every word of the user is escaped there, and the content policy forbids scripts.
      sheet.innerHTML = props.body.html;
      sheet.style.fontSize = `${props.body.size_pt}pt`;
    });
  });
  onCleanup(() => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== page);
  });
  // It scrolls in a narrow window, so the keyboard must reach it.
  return <section ref={host} class="paper-holder" tabindex="0" aria-label={en`The page as it prints`} />;
}
