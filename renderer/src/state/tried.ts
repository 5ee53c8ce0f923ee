import { createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { takeTried } from '../../../core/src/file/takeTried.ts';
import type { Plan, ShopFile } from '../../../core/src/index.ts';
import { type Fraction, ONE } from '../../../core/src/ratio.ts';
import type { Reading } from '../../../core/src/reading.ts';
import { type RatioWriting, readTried, slidText, stepsOf, triedByVolume, writingOf } from '../../../core/src/triedRatio.ts';
import { type App, placeKey } from './app.ts';
import type { SentNear } from './messages.ts';
import { makeTries } from './tries.ts';

/** What can be built near a ratio that was tried; both belong together, even while a later one is asked for. */
export interface Near {
  readonly plan: Plan;
  readonly text: string;
  /** B per A by volume, as run. */
  readonly wanted: Fraction;
  readonly rows: readonly SentNear[];
}

/** Another ratio held against the present machine. The material hears nothing of it until `use`. */
export interface Tried {
  readonly text: () => string;
  readonly type: (text: string) => void;
  /** B per A on the sheet's basis, or what was expected. */
  readonly reading: () => Reading<Fraction> | null;
  readonly steps: () => number;
  readonly slide: (steps: number) => void;
  readonly near: () => Near | null;
  /** Whether a later answer is still awaited. */
  readonly behind: () => boolean;
  readonly usable: () => boolean;
  /** Why it cannot become the ratio of the material, where nothing else says it. */
  readonly notToUse: () => string;
  /** Makes it the ratio of the material. */
  readonly use: () => void;
}

const KEEP = 8;
/** What takes no longer than this needs no word. */
const QUIET_ms = 300;

export function createTried(app: App): Tried {
  const tries = makeTries();
  onCleanup(() => tries.stop());
  const plan = createMemo((): Plan | null => {
    const outcome = app.solution.plan();
    return outcome?.ok === true ? outcome.value : null;
  });
  const row = (): ShopFile['materials'][number] | undefined => app.shop.file?.materials[app.material()];
  const writing = createMemo((): RatioWriting | null => {
    const of = plan();
    return of === null ? null : writingOf(of, row()?.ratio?.perHundredA !== undefined);
  });
  const [typed, setTyped] = createSignal<{ readonly material: string; readonly text: string } | null>(null);
  const own = () => {
    const of = writing();
    return of === null ? '' : slidText(of, 0, app.say().decimal);
  };
  const text = createMemo(() => {
    const last = typed();
    return last !== null && last.material === row()?.id ? last.text : own();
  });
  const type = (next: string) => {
    const material = row()?.id;
    if (material !== undefined) setTyped({ material, text: next });
  };
  const reading = createMemo(() => {
    const of = writing();
    return of === null ? null : readTried(text(), of);
  });
  const steps = createMemo((before: number) => {
    const [of, read] = [writing(), reading()];
    return of !== null && read?.ok === true ? stepsOf(of, read.value) : before;
  }, 0);
  const [near, setNear] = createSignal<Near | null>(null);
  const [behind, setBehind] = createSignal(false);

  let last: Plan | null = null;
  let awaited: object | null = null;
  /** The worker hears of a plan before anything is tried on it. What was found on the one before stays in sight until there is more. */
  const tell = (of: Plan | null) => {
    if (of === last) return;
    last = of;
    const file = app.shop.snapshot();
    if (of === null) setNear(null);
    else if (file !== null) tries.plan({ file, selection: app.selection(), say: app.say() });
  };
  createEffect(
    on([plan, reading], ([of, read]) => {
      tell(of);
      if (of === null || read?.ok !== true) return;
      const asked = { plan: of, text: text(), wanted: triedByVolume(of, read.value) };
      const late = setTimeout(() => setBehind(true), QUIET_ms);
      onCleanup(() => clearTimeout(late));
      awaited = asked;
      const answered = () => {
        // An earlier answer does not end the wait for the last.
        if (awaited !== asked) return;
        clearTimeout(late);
        setBehind(false);
      };
      tries.near([asked.wanted.n, asked.wanted.d], KEEP, {
        found(rows) {
          answered();
          setNear({ ...asked, rows });
        },
        fault(message) {
          answered();
          app.tell(en`What can be built near this ratio was not found; this is a fault of the program: ${message}`);
        },
      });
    }),
  );

  /** B per A tried over the material's own; null where no ratio is read. */
  const ofOwn = (): Fraction | null => {
    const [of, read] = [writing(), reading()];
    return of !== null && read?.ok === true ? read.value.mul(of.partsA).div(of.partsB) : null;
  };
  const fromChemistry = () => row()?.ratio === undefined;
  const usable = () => !fromChemistry() && ofOwn()?.equals(ONE) === false;
  return {
    text,
    type,
    reading,
    steps,
    slide(to) {
      const of = writing();
      if (of !== null) type(slidText(of, to, app.say().decimal));
    },
    near,
    behind,
    usable,
    notToUse: () => (fromChemistry() ? en`Its ratio comes from chemistry, which the Material page holds.` : ''),
    use() {
      const times = ofOwn();
      const index = app.material();
      if (times === null || !usable()) return;
      const taken = text();
      // One undo step by itself, whatever was typed before or is typed after.
      app.shop.pause();
      app.shop.edit(placeKey(['materials', index, 'ratio', 'tried']), (file) => {
        const changed = file.materials[index];
        if (changed !== undefined) takeTried(changed, taken, times);
      });
      app.shop.pause();
      setTyped(null);
    },
  };
}
