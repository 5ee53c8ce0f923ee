import { createMemo, createSignal, onCleanup, onMount, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { fixed } from '../../../../core/src/index.ts';
import { knownOnRule } from '../../../../core/src/knownOnRule.ts';
import { flagWords, limitsOnRule, type MaterialReach } from '../../../../core/src/materialReach.ts';
import { float } from '../../../../core/src/ratio.ts';
import { type ReachRule as Rule, reachRule, type ShownReach } from '../../../../core/src/reachRule.ts';
import { movedWindow, type ReachWindow, zoomedWindow } from '../../../../core/src/reachWindow.ts';
import { reachSentences } from '../../../../core/src/reachWords.ts';
import type { PageKey } from '../../help/pageKeys.ts';
import { useApp } from '../../state/app.ts';
import type { GapChoice } from '../../state/gapChoice.ts';
import type { ReachState } from '../../state/reach.ts';
import { RuleDrawing } from './RuleDrawing.tsx';
import { ruleHand } from './ruleHand.ts';

/** Size of the text on the drawing, as the style sheet has it. */
const TEXT_px = 12;
/** What a key or a button moves and zooms by. */
const STEP = 0.1;
const ZOOM = 1.25;
/** Of the wheel, for one such zoom. */
const WHEEL_px = 100;

/** The rule: it follows hand, wheel, keys and fields at once, drawn from what is known; the exact figures follow. */
export function ReachRule(props: { readonly reach: ReachState; readonly rows: readonly MaterialReach[]; readonly choice: GapChoice }) {
  const app = useApp();
  const [width_px, setWidth_px] = createSignal(960);
  let box: HTMLElement | undefined;
  /** Worked out once for each answer, not for each step of the hand. */
  const known = createMemo(() => {
    const found = props.reach.found();
    return found === null ? null : knownOnRule(found.reach);
  });
  const flagOf = (row: MaterialReach): ShownReach['flags'][number] => {
    const plan = props.reach.materials().find(({ id }) => id === row.id)?.plan;
    return {
      id: row.id,
      words: props.reach.best(row.id) === undefined ? row.name : flagWords(row),
      wanted: float(row.wantedAPerB),
      limits: plan === null || plan === undefined ? null : limitsOnRule(plan),
      best: row.best === null ? null : float(row.best.aPerB),
    };
  };
  const gaps = () => props.reach.found()?.reach.gaps ?? [];
  const chosen = () => {
    const gap = props.choice.chosen();
    return gap === null ? null : gaps().indexOf(gap);
  };
  const shown = createMemo((): ShownReach | null => {
    const [window, of] = [props.reach.window(), known()];
    if (window === null || of === null) return null;
    return {
      low: float(window.low),
      high: float(window.high),
      ...of,
      flags: props.rows.map((row) => flagOf(row)),
    };
  });
  const rule = createMemo((): Rule | null => {
    const of = shown();
    return of === null ? null : reachRule(of, width_px() / TEXT_px);
  });
  const change = (to: (window: ReachWindow) => ReachWindow) => {
    const window = props.reach.window();
    if (window !== null) props.reach.show(to(window));
  };
  const move = (by: number) => change((window) => movedWindow(window, by));
  const zoom = (times: number, about = 0.5) => change((window) => zoomedWindow(window, about, times));
  const keys: Readonly<Record<string, () => void>> = {
    ArrowLeft: () => move(-STEP),
    ArrowRight: () => move(STEP),
    '+': () => zoom(1 / ZOOM),
    '-': () => zoom(ZOOM),
    Home: () => props.reach.showAll(),
    g: () => props.choice.step(1),
    G: () => props.choice.step(-1),
  } satisfies Record<PageKey<'rule'>, () => void>;
  const pressed = (event: KeyboardEvent) => {
    const run = event.ctrlKey || event.altKey || event.metaKey ? undefined : keys[event.key];
    if (run === undefined) return;
    event.preventDefault();
    run();
  };
  const hand = ruleHand({
    box: () => box,
    window: () => props.reach.window(),
    show: (window) => props.reach.show(window),
    choose: (gap) => props.choice.choose(gaps()[gap] ?? null),
  });
  /** Whoever scrolls the page past the rule does not change the window that was typed: it has the cursor first, or Ctrl is held. */
  const turn = (event: WheelEvent) => {
    if (document.activeElement !== box && !event.ctrlKey) return;
    event.preventDefault();
    zoom(ZOOM ** (event.deltaY / WHEEL_px), hand.place(event));
  };
  onMount(() => {
    if (box === undefined) return;
    const element = box;
    const watch = new ResizeObserver(() => setWidth_px(Math.max(1, element.clientWidth)));
    watch.observe(element);
    // Solid's own would be passive, and the page would scroll with it.
    element.addEventListener('wheel', turn, { passive: false });
    onCleanup(() => watch.disconnect());
  });
  const sentence = () => {
    const found = props.reach.found();
    return found === null ? en`Reach` : en`Reach on a log scale, more B to the left. ${reachSentences(found.reach, app.say()).join(' ')}`;
  };
  return (
    <figure class="reachrule">
      <section
        ref={box}
        class="hold"
        tabindex="0"
        aria-label={en`Window: arrow keys move it, plus and minus zoom, Home shows all, G chooses the next gap`}
        onKeyDown={pressed}
        onPointerDown={hand.grab}
        onPointerMove={hand.drag}
        onPointerUp={hand.release}
        onPointerCancel={hand.drop}
      >
        <Show when={rule()} fallback={<svg class="reachsvg" height="200" aria-hidden="true" />}>
          {(drawn) => <RuleDrawing rule={drawn()} sentence={sentence()} chosen={chosen()} />}
        </Show>
      </section>
      <figcaption>
        <span class="faint">
          {en`above: how many ratios, at most ${fixed(rule()?.most ?? 0, 0, app.say())} in one bar; each ratio; A : B by volume · below: gaps wider than the tolerance; A : B by weight · more B to the left · dashes: limits; solid: best option`}
        </span>
        <span class="bar-of">
          <button type="button" onClick={() => move(-STEP)}>{en`More B`}</button>
          <button type="button" onClick={() => move(STEP)}>{en`Less B`}</button>
          <button type="button" onClick={() => zoom(1 / ZOOM)}>{en`Zoom in`}</button>
          <button type="button" onClick={() => zoom(ZOOM)}>{en`Zoom out`}</button>
          <button type="button" onClick={() => props.reach.showAll()}>{en`Show all`}</button>
        </span>
      </figcaption>
    </figure>
  );
}
