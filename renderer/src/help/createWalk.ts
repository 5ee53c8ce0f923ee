import { createEffect, createSignal, onCleanup, onMount } from 'solid-js';
import { FIRST_CHANGE, isExample, nextStepIndex, type SeenSoFar, type Step } from '../../../core/src/help/firstChange.ts';
import { matches } from '../../../core/src/help/match.ts';
import { isBlank, writtenCatches } from '../../../core/src/ratioCheck/blankCatch.ts';
import { boxesOf } from '../../../core/src/ratioCheck/boxes.ts';
import type { App } from '../state/app.ts';
import type { Command } from '../state/commands.ts';
import { nameOf } from './boxes.ts';

/** The first change, as far as it is done. It looks on; nothing of the shop file is ever changed by it. */
export interface Walk {
  /** Null while nobody walks; the number of steps once all is done. */
  readonly at: () => number | null;
  readonly step: () => Step | null;
  /** On the invented example: where another file is open, it is asked for as by its own command. */
  readonly begin: () => Promise<void>;
  readonly leave: () => void;
  /** Opens the page of the step and puts the cursor there. */
  readonly show: () => Promise<void>;
}

export function createWalk(app: App, commands: () => readonly Command[]): Walk {
  const [at, setAt] = createSignal<number | null>(null);
  const [workings, setWorkings] = createSignal(false);
  const look = () => setWorkings(document.querySelector('.figures > details[open]') !== null);
  onMount(() => {
    document.addEventListener('toggle', look, true);
    onCleanup(() => document.removeEventListener('toggle', look, true));
  });
  createEffect(() => {
    const from = at();
    if (from !== null) setAt(nextStepIndex(from, seenBy(app, workings())));
  });
  const step = () => FIRST_CHANGE[at() ?? -1] ?? null;
  return {
    at,
    step,
    async begin() {
      if (!isExample(app.shop.file))
        await commands()
          .find(({ id }) => id === 'start.demo')
          ?.run();
      if (!isExample(app.shop.file)) return;
      look();
      setAt(0);
    },
    leave: () => void setAt(null),
    async show() {
      const of = step();
      if (of === null) return;
      await app.show(of.page);
      requestAnimationFrame(() => boxAt(of.place)?.focus());
    },
  };
}

/** What the page shows of a step: its box, else the page itself. */
function boxAt(place: string | null): HTMLElement | undefined {
  const boxes = [...document.querySelectorAll<HTMLElement>('main input, main select')];
  const box = place === null ? undefined : boxes.find((one) => matches(place, (nameOf(one) ?? '').split('.')));
  return box ?? document.querySelector<HTMLElement>('main button, main [tabindex="0"]') ?? undefined;
}

function seenBy(app: App, workings: boolean): SeenSoFar {
  const { machine, material } = app.selection();
  const { file } = app.shop;
  const check = file?.unfinishedChecks?.find((one) => one.machine === machine);
  const boxes = check === undefined ? [] : boxesOf(check);
  const whole = check === undefined ? [] : writtenCatches(check).filter(({ A, B }) => !isBlank(A, boxes) && !isBlank(B, boxes));
  return {
    page: app.page(),
    machine,
    material,
    chosen: app.solution.chosenMount()?.teeth ?? null,
    workings,
    sheets: (file?.changeSheets ?? [])
      .filter((sheet) => sheet.machine === machine && sheet.material === material)
      .map(({ id, mounted, fittedOn }) => ({ id, teeth: mounted.teeth, isFitted: fittedOn !== undefined })),
    catchCount: whole.length,
    proved: (file?.ratioChecks ?? []).flatMap(({ changeSheet }) => changeSheet ?? []),
  };
}
