import { createSignal, type JSX, Show } from 'solid-js';

/** A line that opens to more. What nobody opens is not drawn: the workings of one option are thousands of elements. */
export function Opening(props: {
  readonly class?: string;
  readonly fact?: string;
  readonly line: JSX.Element;
  readonly children: JSX.Element;
}) {
  const [opened, open] = createSignal(false);
  return (
    <details class={props.class} data-fact={props.fact}>
      {/* biome-ignore lint/a11y: a summary is a control, and a key that opens it comes as a click */}
      <summary onClick={() => open(true)}>{props.line}</summary>
      <Show when={opened()}>{props.children}</Show>
    </details>
  );
}
