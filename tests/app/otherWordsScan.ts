import type { Page } from 'playwright-core';

// What is wrong with a page that speaks another language: words that stayed English, and words that find no room.

/** A text that is rightly not translated, and why. */
export interface Allowed {
  readonly what: RegExp;
  readonly why: string;
}

interface Said {
  /** Where it stands, for the message of a test. */
  readonly at: string;
  readonly text: string;
}

/** Every text of the page that people can read or hear, shadow trees and what is folded away included. */
const textsSaid = (page: Page): Promise<readonly Said[]> =>
  page.evaluate(() => {
    const heard = ['title', 'aria-label', 'aria-description', 'aria-valuetext', 'aria-roledescription', 'placeholder', 'alt', 'label'];
    const found: { at: string; text: string }[] = [{ at: 'document title', text: document.title }];
    const look = (root: ParentNode): void => {
      for (const element of root.querySelectorAll('*')) {
        if (element.matches('script, style, .formula, .formula *')) continue;
        const at = `${element.localName}${element.classList.length > 0 ? `.${[...element.classList].join('.')}` : ''}`;
        for (const node of element.childNodes)
          if (node.nodeType === Node.TEXT_NODE && node.nodeValue?.trim()) found.push({ at, text: node.nodeValue.trim() });
        for (const name of [...heard, 'data-unread']) {
          const text = element.getAttribute(name);
          if (text) found.push({ at: `${at} ${name}`, text });
        }
        for (const where of ['::before', '::after']) {
          const { content } = getComputedStyle(element, where);
          // Where an attribute is named the words are its.
          if (/^"/.test(content) && !content.includes('attr(')) found.push({ at: `${at}${where}`, text: content });
        }
        if (element.shadowRoot !== null) look(element.shadowRoot);
      }
    };
    look(document);
    return found;
  });

/** Texts with a plain English word of three letters or more, each once, with what was left of it in brackets. */
export async function plainWords(page: Page, own: readonly string[], allowed: readonly Allowed[]): Promise<readonly string[]> {
  return leftIn(await textsSaid(page), own, allowed);
}

/** @param own  texts of the open file, the longest first */
export function leftIn(said: readonly Said[], own: readonly string[], allowed: readonly Allowed[]): readonly string[] {
  const letters = own.filter((text) => /[a-z]{3}/i.test(text));
  const found = said.flatMap(({ at, text }) => {
    const others = letters.reduce((rest, one) => rest.replaceAll(one, '·'), text);
    const left = allowed.reduce((rest, { what }) => rest.replace(what, '·'), others);
    const words = left.match(/[a-z]{3,}/gi);
    return words === null ? [] : [`${at}: ${text} [${words.join(' ')}]`];
  });
  return [...new Set(found)];
}

/**
 * Texts that are cut, stand beyond the window, or beyond the button, cell or box they are in; and a page that scrolls sideways. What
 * scrolls by itself may hold more than it shows.
 *
 * @param own  texts of the open file: a name somebody gave may be cut where its title says all of it
 */
export const cutOff = (page: Page, own: readonly string[]): Promise<readonly string[]> =>
  page.evaluate(
    (names) => {
      const SLACK_px = 1.5;
      const found = new Set<string>();
      const nameOf = (element: Element) =>
        `${element.localName}${element.classList.length > 0 ? `.${[...element.classList].join('.')}` : ''}`;
      const say = (what: string, element: Element, text: string) => found.add(`${what}: ${nameOf(element)}: ${text.trim().slice(0, 70)}`);
      const parentOf = (element: Element): Element | null => {
        const root = element.getRootNode();
        return element.parentElement ?? (root instanceof ShadowRoot ? root.host : null);
      };
      const scrolls = (overflow: string) => overflow === 'auto' || overflow === 'scroll';
      const clips = (overflow: string) => overflow === 'hidden' || overflow === 'clip';
      /** Whether somebody can see it at all; what is only heard is one pixel large. */
      const isSeen = (element: Element): boolean => {
        if (!element.checkVisibility({ opacityProperty: true, visibilityProperty: true, contentVisibilityAuto: true })) return false;
        for (let one: Element | null = element; one !== null; one = parentOf(one)) {
          const style = getComputedStyle(one);
          if (style.clipPath === 'inset(50%)' || (one instanceof HTMLElement && one.classList.contains('skip'))) return false;
        }
        return true;
      };
      const look = (text: Text, element: Element): void => {
        const range = document.createRange();
        range.selectNodeContents(text);
        const rects = [...range.getClientRects()].filter(({ width, height }) => width > 0 && height > 0);
        const words = text.nodeValue ?? '';
        const right = Math.max(...rects.map((rect) => rect.right));
        const left = Math.min(...rects.map((rect) => rect.left));
        // What stands above and below the letters may be cut.
        const air = Math.min(...rects.map(({ height }) => height)) / 4;
        const bottom = Math.max(...rects.map((rect) => rect.bottom)) - air;
        const top = Math.min(...rects.map((rect) => rect.top)) + air;
        if (rects.length === 0) return;
        const isName = (box: Element) => {
          const whole = box.closest('[title]')?.getAttribute('title') ?? '';
          return names.some((name) => words.includes(name)) && whole.includes(words.trim());
        };
        let [across, along] = [true, true];
        for (let box: Element | null = element; box !== null; box = parentOf(box)) {
          const style = getComputedStyle(box);
          const rect = box.getBoundingClientRect();
          if (style.display === 'inline' || style.display === 'contents' || box.localName === 'tspan' || box.localName === 'g') continue;
          // Of a drawing only the whole is a box, and where its figures stand in its margins what is around it.
          if (box instanceof SVGElement && (style.overflowX === 'visible' || parentOf(box) instanceof SVGElement)) continue;
          if (box === document.documentElement || box === document.body) break;
          if (across && scrolls(style.overflowX)) across = false;
          if (along && scrolls(style.overflowY)) along = false;
          if (across && (right > rect.right + SLACK_px || left < rect.left - SLACK_px)) {
            if (clips(style.overflowX)) {
              if (!isName(box)) say('cut', element, words);
              return;
            }
            say(`beyond ${nameOf(box)}`, element, words);
            return;
          }
          if (along && clips(style.overflowY) && (bottom > rect.bottom + SLACK_px || top < rect.top - SLACK_px)) {
            say('cut below', element, words);
            return;
          }
          if (box instanceof HTMLElement && ['fixed', 'absolute'].includes(style.position)) break;
        }
        if (across && (right > innerWidth + SLACK_px || left < -SLACK_px)) say('beyond the window', element, words);
      };
      const measure = document.createElement('canvas').getContext('2d');
      /** Boxes keep their own text apart from the page: what stands in them while they are empty, and what is picked. */
      const inBox = (element: Element): void => {
        if (measure === null || !isSeen(element)) return;
        const style = getComputedStyle(element);
        measure.font = style.font;
        const room = element.clientWidth - Number.parseFloat(style.paddingLeft) - Number.parseFloat(style.paddingRight);
        const text =
          element instanceof HTMLSelectElement
            ? (element.selectedOptions[0]?.text ?? '')
            : element instanceof HTMLInputElement && element.value === '' && /^(text|search)$/.test(element.type)
              ? element.placeholder
              : '';
        if (text === '' || names.some((name) => text.includes(name))) return;
        if (measure.measureText(text).width > room + SLACK_px)
          say(`wider than its box by ${Math.round(measure.measureText(text).width - room)}`, element, text);
      };
      const walk = (root: ParentNode): void => {
        for (const element of root.querySelectorAll('*')) {
          if (element.matches('script, style, option, title')) continue;
          if (element.matches('input, select')) inBox(element);
          if (element.shadowRoot !== null) walk(element.shadowRoot);
          const texts = [...element.childNodes].filter((node): node is Text => node instanceof Text && node.nodeValue?.trim() !== '');
          if (texts.length === 0 || !isSeen(element)) continue;
          for (const text of texts) look(text, element);
          const style = getComputedStyle(element);
          if (style.textOverflow === 'ellipsis' && clips(style.overflowX) && element.scrollWidth > element.clientWidth) {
            const whole = element.getAttribute('title') ?? '';
            if (!names.some((name) => element.textContent?.includes(name) && whole.includes(name)))
              say('ellipsis', element, element.textContent ?? '');
          }
        }
      };
      walk(document.body);
      const { scrollWidth, clientWidth } = document.documentElement;
      if (scrollWidth > clientWidth) found.add(`the page scrolls sideways: ${scrollWidth} in ${clientWidth}`);
      return [...found];
    },
    own.filter((text) => /[a-z]{3}/i.test(text)),
  );
