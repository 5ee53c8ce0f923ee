import { readNumberEntry, stepNumber } from '../../../../core/src/entry.ts';
import type { Place } from '../../../../core/src/index.ts';
import { Entry } from '../../fields/Entry.tsx';
import { useApp } from '../../state/app.ts';

interface NumberProps {
  readonly label: string;
  readonly place: Place;
  readonly also?: readonly Place[];
  readonly hint?: string | undefined;
  readonly value: string | undefined;
  /** Undefined where the box was emptied: not given. */
  readonly set: (value: string | undefined) => void;
  /** What the file would refuse about a number that can be read; it is then not kept. */
  readonly check?: (typed: string) => string | null;
}

/** A number without a unit, kept as typed: `38.9`, `-2`, `20/7`. */
export function NumberField(props: NumberProps) {
  const app = useApp();
  return (
    <Entry
      {...props}
      text={props.value ?? ''}
      step={stepNumber}
      take={(typed) => {
        const read = readNumberEntry(typed, app.say());
        const refused = read.ok && read.value !== undefined ? (props.check?.(read.value) ?? null) : null;
        if (refused !== null) return { ok: false, expected: refused };
        if (read.ok) props.set(read.value);
        return read;
      }}
    />
  );
}
