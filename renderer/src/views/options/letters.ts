import { isField } from '../../state/commands.ts';

/** Boxes to tick take no letters. */
const takesLetters = (target: EventTarget | null): boolean =>
  isField(target) && !(target instanceof HTMLInputElement && ['checkbox', 'radio'].includes(target.type));

/** Single letters of a page: they work outside fields only, so that nobody loses what is typed. Returns what ends it. */
export function listenForLetters(letters: Readonly<Record<string, () => void>>): () => void {
  const listen = (event: KeyboardEvent) => {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey || takesLetters(event.target)) return;
    const run = event.key.length === 1 ? letters[event.key.toUpperCase()] : undefined;
    if (run === undefined) return;
    event.preventDefault();
    run();
  };
  window.addEventListener('keydown', listen);
  return () => window.removeEventListener('keydown', listen);
}
