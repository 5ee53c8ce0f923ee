/** What held the cursor last: what keeps the cursor comes after the first page, which may be gone by then. */
let held: EventTarget | null = null;

export const watchCursor = (): void => window.addEventListener('focusin', ({ target }) => (held = target));
export const lastHeld = (): EventTarget | null => held;
