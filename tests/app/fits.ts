import type { Page } from 'playwright-core';

/** What may be wider than its frame and scrolls in it: tables, the drawn drive, the list to paste, a page as it prints. */
const FRAMES = '.scrollx, .listscroll, .near, .paper-holder, textarea';
/** Shortened on purpose; the whole of it stands beside the list or can be heard. */
const SHORTENED = '.short, .whose, .heard, .skip, svg';

/** What does not fit the window sideways: the page itself, frames that should not scroll or are out of reach of the keyboard, words that are cut. */
export function sideways(page: Page): Promise<readonly string[]> {
  return page.evaluate(
    ([frames, shortened]) => {
      const root = document.documentElement;
      const wide = root.clientWidth;
      const name = (one: Element) =>
        `${one.tagName.toLowerCase()}.${one.getAttribute('class') ?? ''} ${(one.textContent ?? '').trim().slice(0, 40)}`;
      const shown = [...document.body.querySelectorAll<HTMLElement>('*')].filter(
        (one) => one.checkVisibility() && one.getBoundingClientRect().width > 0 && one.closest(shortened) === null,
      );
      const scrolls = (one: Element) =>
        one.scrollWidth > one.clientWidth + 1 && ['auto', 'scroll'].includes(getComputedStyle(one).overflowX);
      const reached = (one: HTMLElement) =>
        one.tabIndex >= 0 || one.querySelector('button, input, select, summary, [tabindex="0"]') !== null;
      const says = (one: Element) => [...one.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && node.nodeValue?.trim() !== '');
      const beyond = (one: Element) => one.getBoundingClientRect().right > wide + 1 || one.getBoundingClientRect().left < -1;
      const hides = (one: Element) =>
        ['hidden', 'clip'].includes(getComputedStyle(one).overflowX) && one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 0;
      return [
        ...(root.scrollWidth > wide ? [`the page is ${root.scrollWidth} wide`] : []),
        ...shown.filter((one) => scrolls(one) && !one.matches(frames)).map((one) => `scrolls: ${name(one)}`),
        ...shown.filter((one) => scrolls(one) && !reached(one)).map((one) => `out of reach: ${name(one)}`),
        ...shown
          .filter((one) => one.closest(frames) === null && (says(one) || one.matches('input, select, button')) && beyond(one))
          .map((one) => `beyond: ${name(one)}`),
        ...shown.filter((one) => hides(one) && !one.matches('input')).map((one) => `cut: ${name(one)}`),
        ...shown
          .filter(
            (one) =>
              one.matches('button, summary, label, legend, h1, h2, h3') &&
              one.scrollWidth > one.clientWidth + 1 &&
              getComputedStyle(one).display !== 'inline' &&
              one.closest(frames) === null,
          )
          .map((one) => `wider than itself: ${name(one)}`),
      ];
    },
    [FRAMES, SHORTENED] as const,
  );
}

/** Words that stand higher than what holds them and are cut off there. */
export function cutBelow(page: Page): Promise<readonly string[]> {
  return page.evaluate(
    (shortened) =>
      [...document.body.querySelectorAll<HTMLElement>('*')]
        .filter((one) => one.checkVisibility() && one.closest(shortened) === null && one.clientHeight > 0)
        .filter((one) => ['hidden', 'clip'].includes(getComputedStyle(one).overflowY) || one.matches('button'))
        .filter((one) => one.scrollHeight > one.clientHeight + 2)
        .map((one) => `${one.tagName.toLowerCase()}.${one.className} ${(one.textContent ?? '').trim().slice(0, 40)}`),
    SHORTENED,
  );
}

/** The spacing of words, letters and lines that a reader may set [WCAG 2.2, 1.4.12]; by script, as the content policy forbids style elements. */
export async function spaceOut(page: Page): Promise<void> {
  await page.evaluate(() => {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(
      '*{line-height:1.5!important;letter-spacing:.12em!important;word-spacing:.16em!important}p{margin-bottom:2em!important}svg text{letter-spacing:normal!important;word-spacing:normal!important}',
    );
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  });
}
