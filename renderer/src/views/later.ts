import { type Component, createSignal } from 'solid-js';

/** A part of the window whose code comes in a file of its own. */
export interface Later<Props extends Record<string, unknown>> {
  /** Undefined until it is there; whoever shows it with `Dynamic` hears when it comes. */
  readonly get: () => Component<Props> | undefined;
  /** Rejects where the file cannot be read; asking again tries again. */
  readonly load: () => Promise<void>;
}

export function later<Props extends Record<string, unknown>>(read: () => Promise<Component<Props>>): Later<Props> {
  const [part, put] = createSignal<Component<Props>>();
  const load = async () => {
    if (part() !== undefined) return;
    const found = await read();
    put(() => found);
  };
  return { get: part, load };
}
