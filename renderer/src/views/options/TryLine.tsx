import { createMemo, createSignal, Match, Show, Switch } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { exactRatioText, isBlocked, offRatioText, type PlannedOption, ratioText } from '../../../../core/src/index.ts';
import { fittedMount } from '../../../../core/src/optionList.ts';
import { insideWord } from '../../../../core/src/optionWords.ts';
import { ONE } from '../../../../core/src/ratio.ts';
import { readTeeth } from '../../../../core/src/tryTeeth.ts';
import { SAID_SEVERITY } from '../../saidSeverity.ts';
import { useApp } from '../../state/app.ts';

/** Any teeth somebody has in mind, judged at once with the pumps as fitted. */
export function TryLine(props: { readonly box: (element: HTMLInputElement) => void }) {
  const app = useApp();
  const [text, setText] = createSignal('');
  const tried = createMemo(() => {
    const plan = app.solution.answered()?.plan;
    if (plan === undefined || text().trim() === '') return null;
    const read = readTeeth(text(), plan.stages);
    if (!read.ok) return { refused: read.expected };
    const mounted = { pumps: fittedMount(plan).pumps, teeth: read.teeth };
    return { mounted, option: app.solution.lay(mounted) };
  });
  const option = () => tried()?.option;
  const placeholder = () => {
    const read = readTeeth('', app.solution.answered()?.plan.stages ?? []);
    return read.ok ? '' : read.expected.replace(/^.*: /, '');
  };
  return (
    <form
      class="tryline"
      onSubmit={(event) => {
        event.preventDefault();
        const mounted = tried()?.mounted;
        if (mounted !== undefined) app.solution.choose(mounted);
      }}
    >
      <label for="try-teeth">
        {en`What would these teeth give?`} <kbd>T</kbd>
      </label>
      <input
        id="try-teeth"
        ref={(element) => props.box(element)}
        type="text"
        size="16"
        autocomplete="off"
        spellcheck={false}
        placeholder={placeholder()}
        aria-invalid={tried()?.refused === undefined ? undefined : 'true'}
        aria-describedby="try-gives"
        value={text()}
        onInput={(event) => setText(event.currentTarget.value)}
      />
      <button type="submit" disabled={option() === undefined}>{en`Choose these teeth`}</button>
      <output id="try-gives" for="try-teeth">
        <Switch>
          <Match when={tried()?.refused}>{(words) => <span class="bad">{words()}</span>}</Match>
          <Match when={option()}>{(found) => <Gives option={found()} />}</Match>
        </Switch>
      </output>
    </form>
  );
}

function Gives(props: { readonly option: PlannedOption }) {
  const app = useApp();
  const R = () => ONE.div(props.option.bPerA);
  const reasons = () => props.option.findings.filter(({ severity }) => severity === 'blocks').map(({ what }) => what);
  return (
    <>
      {exactRatioText(R())} = {ratioText(R(), app.say())}, {offRatioText(props.option.offRatio, app.say(), 3)}
      <Show when={insideWord(props.option.inside)}>
        {(word) => (
          <>
            , <span class={props.option.inside ? 'good' : 'bad'}>{word()}</span>
          </>
        )}
      </Show>
      <Show when={isBlocked(props.option)}>
        {' '}
        {en`but`} <span class="bad">{SAID_SEVERITY.blocked}</span>: {reasons().join(' ')}
      </Show>
    </>
  );
}
