import { movedWindow, type ReachWindow } from '../../../../core/src/reachWindow.ts';

/** What a hand on the rule works on. */
interface Ruled {
  readonly box: () => HTMLElement | undefined;
  readonly window: () => ReachWindow | null;
  readonly show: (window: ReachWindow) => void;
  readonly choose: (gap: number) => void;
}

/** So far a hand may slip while it presses. */
const STILL_px = 4;

/** A hand that drags the rule, or presses a gap. */
export function ruleHand({ box, window, show, choose }: Ruled) {
  let held: { readonly window: ReachWindow; readonly at: number; readonly gap: number | null } | null = null;
  /** Where on the rule, 0 to 1. */
  const place = (event: MouseEvent): number => {
    const of = box()?.getBoundingClientRect();
    return of === undefined ? 0.5 : (event.clientX - of.left) / of.width;
  };
  return {
    place,
    grab(event: PointerEvent) {
      const from = window();
      if (event.button !== 0 || from === null) return;
      box()?.setPointerCapture(event.pointerId);
      held = { window: from, at: place(event), gap: gapAt(event.target) };
    },
    drag(event: PointerEvent) {
      if (held === null) return;
      const by = held.at - place(event);
      // A press on a gap chooses it, unless the hand goes on.
      if (held.gap !== null && Math.abs(by) * (box()?.clientWidth ?? 1) < STILL_px) return;
      held = { ...held, gap: null };
      show(movedWindow(held.window, by));
    },
    release() {
      const gap = held?.gap ?? null;
      held = null;
      if (gap !== null) choose(gap);
    },
    drop() {
      held = null;
    },
  };
}

/** The gap that is pressed, by its place in the list. */
function gapAt(target: EventTarget | null): number | null {
  const touched = target instanceof Element ? target.getAttribute('data-touch') : null;
  return touched === null ? null : Number(touched);
}
