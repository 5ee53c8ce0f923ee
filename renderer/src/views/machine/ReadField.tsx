import { createSignal } from 'solid-js';
import type { EntryText } from '../../../../core/src/entry.ts';
import type { Place } from '../../../../core/src/index.ts';
import { Entry } from '../../fields/Entry.tsx';

interface ReadProps<T> {
  readonly label: string;
  readonly bare?: boolean;
  readonly place: Place;
  readonly also?: readonly Place[];
  readonly hint?: string | undefined;
  readonly placeholder?: string;
  readonly value: T | undefined;
  readonly read: (text: string) => EntryText<T>;
  readonly write: (value: T) => string;
  readonly set: (value: T | undefined) => void;
  /** What the file would refuse about a value that can be read; it is then not kept. */
  readonly check?: (value: T) => string | null;
}

/** A value that can be written in more ways than one, as a range: the way it was typed stays in the box. */
export function ReadField<T>(props: ReadProps<T>) {
  const [typed, setTyped] = createSignal('');
  const text = () => {
    const read = props.read(typed());
    if (read.ok && JSON.stringify(read.value) === JSON.stringify(props.value)) return typed();
    return props.value === undefined ? '' : props.write(props.value);
  };
  const take = (next: string) => {
    const read = props.read(next);
    if (!read.ok) return read;
    const trouble = read.value === undefined ? null : (props.check?.(read.value) ?? null);
    if (trouble !== null) return { ok: false, expected: trouble } as const;
    setTyped(next);
    props.set(read.value);
    return read;
  };
  return <Entry {...props} text={text()} take={take} />;
}
