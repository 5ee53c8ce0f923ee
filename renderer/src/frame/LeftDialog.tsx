import { Show } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import type { Difference } from '../../../core/src/file/differences.ts';
import { visible } from '../../../core/src/visible.ts';
import type { LeftWork } from '../host/host.ts';
import type { App } from '../state/app.ts';
import { ChangeList } from './ChangeList.tsx';
import { askIn } from './dialog.tsx';

export type LeftChoice = 'open' | 'copy' | 'drop' | 'later';

interface Left {
  readonly work: LeftWork;
  /** Against the file as it was opened or saved last; null where it cannot be told. */
  readonly changes: readonly Difference[] | null;
  readonly readable: boolean;
  /** Somebody else changed the file on the disk since. */
  readonly stranger: boolean;
}

const two = (n: number): string => String(n).padStart(2, '0');

/** A moment as it is on the clock of this place. */
function timeText(at_ms: number): string {
  const at = new Date(at_ms);
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}, ${two(at.getHours())}:${two(at.getMinutes())}`;
}

/** Offers work that an earlier start left behind: what it is, when it was kept, and how it differs. */
export function askAboutLeft(app: App, { work, changes, readable, stranger }: Left): Promise<LeftChoice> {
  return askIn<LeftChoice>('later', (answer) => (
    <>
      <h2 id="asked">
        <bdi>{visible(work.name)}</bdi> {en`was left unsaved`}
      </h2>
      <p>
        {en`The program ended before it was saved. It was kept on ${timeText(work.at_ms)}.`}
        <Show when={work.onDisk === null}> {en`Its file cannot be looked at, or it never had one.`}</Show>
        <Show when={stranger}> {en`Somebody else changed its file since: saving will show what.`}</Show>
      </p>
      <section aria-label={en`What it changes`} class="differs" tabindex="0">
        <Show
          when={changes}
          fallback={
            <p class="faint">
              {readable
                ? en`What it changes cannot be told.`
                : en`What it changes cannot be told: another version of the program wrote it.`}
            </p>
          }
        >
          {(found) => (
            <>
              <h2>{en`What it changes`}</h2>
              <ChangeList changes={found()} />
            </>
          )}
        </Show>
      </section>
      <p class="bar-of gap">
        <Show when={readable} fallback={<button type="button" class="pri" onClick={() => answer('copy')}>{en`Save it as it is`}</button>}>
          <button type="button" class="pri" onClick={() => answer('open')}>{en`Go on with it`}</button>
        </Show>
        <button type="button" onClick={() => answer('later')}>{en`Decide later`}</button>
        <button type="button" onClick={() => answer('drop')}>{en`Throw it away`}</button>
      </p>
      <Show when={app.shop.file !== null}>
        <p class="hint">
          {en`It takes the place of`} <bdi>{visible(app.shop.name)}</bdi>
          {en`, which stays on the disk as it is.`}
        </p>
      </Show>
    </>
  ));
}
