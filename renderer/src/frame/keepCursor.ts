import { lastHeld } from './lastHeld.ts';

/** What the cursor can fall back to: a part of the page that has a name or a heading of its own. */
const PARTS = 'section, fieldset, main, nav, dialog';

/**
 * The cursor is never lost: where what holds it goes, or can no longer be pressed, it goes to what took its place, else to the
 * part of the page around it, from which Tab goes on. It never goes to another button, which the next Enter would press.
 */
export function keepCursor(): () => void {
  const before = lastHeld();
  let last = before instanceof HTMLElement ? before : null;
  let around: readonly Element[] = [];
  const remember = () => {
    const here = document.activeElement;
    if (!(here instanceof HTMLElement) || here === document.body) return;
    last = here;
    around = ancestors(here);
  };
  const isLost = () => {
    const here = document.activeElement;
    return last !== null && (!last.isConnected || last.matches(':disabled')) && (here === last || here === document.body || here === null);
  };
  const look = () => {
    // A page that puts the cursor somewhere itself does so when it is drawn.
    if (isLost()) requestAnimationFrame(() => isLost() && last !== null && find(last, around));
  };
  const watch = new MutationObserver(look);
  remember();
  look();
  window.addEventListener('focusin', remember);
  watch.observe(document.body, { subtree: true, childList: true, attributeFilter: ['disabled'] });
  return () => {
    window.removeEventListener('focusin', remember);
    watch.disconnect();
  };
}

function ancestors(of: Element): readonly Element[] {
  const found: Element[] = [];
  for (let one = of.parentElement; one !== null; one = one.parentElement) found.push(one);
  return found;
}

function find(last: HTMLElement, around: readonly Element[]): void {
  const twin = last.isConnected ? undefined : twinOf(last);
  if (twin !== undefined) {
    twin.focus();
    return;
  }
  const part = around.find((one) => one.isConnected && one.matches(PARTS)) ?? document.querySelector('main');
  if (part instanceof HTMLElement) focusPart(part);
}

/** The same box, drawn anew. */
function twinOf(last: HTMLElement): HTMLElement | undefined {
  const key = ['data-place', 'name'].find((name) => last.hasAttribute(name));
  if (key === undefined) return undefined;
  const alike = document.querySelectorAll<HTMLElement>(`${last.tagName}[${key}="${CSS.escape(last.getAttribute(key) ?? '')}"]`);
  return [...alike].find((one) => one.getAttribute('type') !== 'radio' || one.getAttribute('value') === last.getAttribute('value'));
}

/** A part takes the cursor only while it holds it; a press of the mouse in it goes where it always went. */
function focusPart(part: HTMLElement): void {
  if (!part.hasAttribute('tabindex')) {
    part.tabIndex = -1;
    part.addEventListener('blur', () => part.removeAttribute('tabindex'), { once: true });
  }
  part.focus({ preventScroll: true });
}
