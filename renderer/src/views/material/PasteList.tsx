import { createSignal, createUniqueId, For, onMount } from 'solid-js';
import { en, plural } from '../../../../core/src/en.ts';
import { LIMIT_DEFINITIONS, PLAIN_ORDER } from '../../../../core/src/file/materialCsv/index.ts';
import { DEFINITION_WORDS } from '../../../../core/src/mixRatio.ts';
import { placeKey, useApp } from '../../state/app.ts';
import { ListFiles } from './ListFiles.tsx';
import { ListPreview } from './ListPreview.tsx';
import { createPastedList } from './pastedList.ts';

/** Where the button that opens the list carries the cursor back to. */
export const LIST_PLACE = placeKey(['materials', 'list']);

/** Many materials at once, out of a spreadsheet: pasted, looked over, added. */
export function PasteList(props: { readonly back: () => void }) {
  const app = useApp();
  const pasted = createPastedList();
  const [said, say] = createSignal('');
  const id = createUniqueId();
  let box: HTMLTextAreaElement | undefined;
  onMount(() => box?.focus());
  const good = () => pasted.list().materials.length;
  const bad = () => new Set(pasted.list().faults.map(({ line }) => line)).size;
  const add = () => {
    const added = pasted.add();
    const left = bad();
    const rest =
      left === 0
        ? en`The Reach page shows the best option of each.`
        : plural(left)`1 row with a fault stays here.|${left} rows with faults stay here.`;
    say(`${plural(added)`1 material added to the shop file.|${added} materials added to the shop file.`} ${rest}`);
    box?.focus();
  };
  const typed = (text: string) => {
    say('');
    pasted.setText(text);
  };
  /** In this box Ctrl Z takes back what was typed, not what was done to the file. */
  const takeBack = (event: KeyboardEvent) => {
    if (pasted.text() === '' || event.key.toLowerCase() !== 'z' || !(event.ctrlKey || event.metaKey)) return;
    event.preventDefault();
    document.execCommand(event.shiftKey ? 'redo' : 'undo');
  };
  return (
    <main id="main" class="material list">
      <section aria-label={en`List of materials`}>
        <div class="head">
          <h1>{en`Paste a list of materials`}</h1>
          <span class="faint">{en`out of a spreadsheet, or as CSV`}</span>
        </div>
        <p id={`${id}-how`} class="how">
          {en`One material a row. Name, ratio (`}
          <b>100:38.9</b> {en`or`} <b>{en`38.9 per 100 A`}</b>
          {en`) and basis (weight or volume) must be there; the rest may be left out. With a head the columns stand in any order, without one as:`}{' '}
          {PLAIN_ORDER.join(', ')}
          {'. '}
          {en`A quantity carries its unit in its cell or in its head.`}
        </p>
        <label class="k" for={id}>{en`The list`}</label>
        <textarea
          ref={box}
          id={id}
          name="list.text"
          aria-describedby={`${id}-how`}
          rows="10"
          spellcheck={false}
          wrap="off"
          value={pasted.text()}
          onInput={(event) => typed(event.currentTarget.value)}
          onKeyDown={takeBack}
        />
        <div class="bar-of">
          <label class="k" for={`${id}-mean`}>{en`Limits without a definition are`}</label>
          <select
            id={`${id}-mean`}
            name="list.limits"
            onChange={(event) => {
              const definition = LIMIT_DEFINITIONS.find((one) => one === event.currentTarget.value);
              if (definition !== undefined) pasted.setLimitsMean(definition);
            }}
          >
            <For each={LIMIT_DEFINITIONS}>
              {(definition) => (
                <option value={definition} selected={definition === pasted.limitsMean()}>
                  {DEFINITION_WORDS[definition]}
                </option>
              )}
            </For>
          </select>
          <ListFiles pasted={pasted} say={say} />
        </div>
        <p class="gap bar-of">
          <button type="button" class="pri" disabled={good() === 0} onClick={add}>
            {good() === 0 ? en`Add the materials` : en`Add ${materials(good())}`}
          </button>
          <button type="button" onClick={() => props.back()}>{en`Back to the material`}</button>
          <span role="status">{said() || state()}</span>
        </p>
        <ListPreview list={pasted.list()} say={app.say()} />
      </section>
    </main>
  );

  function state(): string {
    if (pasted.text().trim() === '') return '';
    const fault =
      bad() === 0
        ? en`no fault found`
        : plural(bad())`1 row with a fault stays here until mended|${bad()} rows with faults stay here until mended`;
    return en`${materials(good())} read, ${fault}.`;
  }
}

const materials = (count: number): string => plural(count)`1 material|${count} materials`;
