/** The name under which help knows the box that has the cursor: its place, else its name, else its id. */
export function nameOf(element: Element | null): string | null {
  if (!(element instanceof HTMLElement)) return null;
  const { place } = element.dataset;
  if (place !== undefined) return place;
  // Of a question with several answers the first carries the place.
  const group =
    element instanceof HTMLInputElement && element.type === 'radio' ? element.closest('fieldset')?.querySelector('[data-place]') : null;
  return group?.getAttribute('data-place') ?? element.getAttribute('name') ?? (element.id === '' ? null : element.id);
}

/** Lets a screen reader read the line of help behind what is said of the box already. Returns what takes it away again. */
export function describe(box: Element, by: string): () => void {
  const said = () => (box.getAttribute('aria-describedby') ?? '').split(' ').filter((id) => id !== '' && id !== by);
  box.setAttribute('aria-describedby', [...said(), by].join(' '));
  return () => {
    if (said().length === 0) box.removeAttribute('aria-describedby');
    else box.setAttribute('aria-describedby', said().join(' '));
  };
}
