import { en } from '../../../core/src/en.ts';
import {
  amountEntryText,
  type Dimension,
  type EntryText,
  quantityText,
  readAmountEntry,
  readCount,
  readQuantityEntry,
  readRatioEntry,
  stepNumber,
  type TypedQuantity,
} from '../../../core/src/entry.ts';
import type { Place } from '../../../core/src/index.ts';
import { useApp } from '../state/app.ts';
import { Entry } from './Entry.tsx';

interface FieldProps {
  readonly label: string;
  readonly place: Place;
  readonly also?: readonly Place[] | undefined;
  readonly bare?: boolean;
  readonly hint?: string | undefined;
  readonly placeholder?: string;
  readonly width?: string;
  readonly wide?: boolean;
}

interface QuantityProps extends FieldProps {
  readonly dimension: Dimension;
  /** The unit meant where none is typed. */
  readonly unit: string;
  readonly value: TypedQuantity | undefined;
  /** Undefined where the box was emptied: not given. */
  readonly set: (value: TypedQuantity | undefined) => void;
  /** What the file would refuse about a value that can be read; it is then not kept. */
  readonly check?: (value: TypedQuantity) => string | null;
}

/** A number with a unit: `12,5`, `12.5 mm`, `1/2 in`. Empty is not given. */
export function QuantityField(props: QuantityProps) {
  const app = useApp();
  const text = () => (props.value === undefined ? '' : quantityText(props.dimension, props.value, props.unit));
  return (
    <Entry
      {...props}
      label={props.label}
      text={text()}
      step={stepNumber}
      take={(typed) => keep(readQuantityEntry(props.dimension, typed, props.unit, app.say()), (value) => props.set(value), props.check)}
    />
  );
}

interface AmountProps extends FieldProps {
  readonly value: TypedQuantity | undefined;
  readonly set: (value: TypedQuantity | undefined) => void;
  readonly check?: (value: TypedQuantity) => string | null;
}

/** A mass or a volume, whichever its unit says: `400 g`, `2.5 L`. Empty is not given. */
export function AmountField(props: AmountProps) {
  const app = useApp();
  return (
    <Entry
      {...props}
      text={props.value === undefined ? '' : amountEntryText(props.value)}
      take={(typed) => keep(readAmountEntry(typed, app.say()), (value) => props.set(value), props.check)}
    />
  );
}

interface CountProps extends FieldProps {
  readonly value: number | undefined;
  readonly least: number;
  readonly most: number;
  readonly set: (value: number | undefined) => void;
  /** Why the box may not be emptied, where something else needs its value. */
  readonly whyNotEmpty?: () => string | null;
}

/** A whole number: teeth, pitches, pieces. */
export function CountField(props: CountProps) {
  const step = (text: string, by: 1 | -1) => {
    const next = Number(text) + by;
    return /^\d+$/.test(text) && next >= props.least && next <= props.most ? String(next) : null;
  };
  return (
    <Entry
      {...props}
      text={props.value === undefined ? '' : String(props.value)}
      step={step}
      take={(typed) => {
        const entry = readCount(typed, props.least, props.most);
        const needed = entry.ok && entry.value === undefined ? (props.whyNotEmpty?.() ?? null) : null;
        return needed === null ? keep(entry, (value) => props.set(value)) : { ok: false, expected: needed };
      }}
    />
  );
}

interface TextProps extends FieldProps {
  readonly value: string | undefined;
  readonly set: (value: string | undefined) => void;
}

/** One line of the user's own words. */
export function TextField(props: TextProps) {
  return (
    <Entry
      {...props}
      text={props.value ?? ''}
      take={(typed) => {
        if (typed.length > 200) return { ok: false, expected: en`At most 200 characters.` };
        props.set(typed === '' ? undefined : typed);
        return { ok: true };
      }}
    />
  );
}

interface RatioProps extends FieldProps {
  readonly value: string | undefined;
  readonly set: (value: string | undefined) => void;
}

/** A mix ratio as a sheet prints it: `100 : 45`, `2,5:1`, `4:1:1`. */
export function RatioField(props: RatioProps) {
  return <Entry {...props} text={props.value ?? ''} take={(typed) => keep(readRatioEntry(typed), (value) => props.set(value))} />;
}

function keep<T>(entry: EntryText<T>, set: (value: T | undefined) => void, check?: (value: T) => string | null) {
  if (!entry.ok) return { ok: false, expected: entry.expected } as const;
  const refused = entry.value === undefined ? null : (check?.(entry.value) ?? null);
  if (refused !== null) return { ok: false, expected: refused } as const;
  set(entry.value);
  return entry.reading === undefined ? ({ ok: true } as const) : ({ ok: true, reading: entry.reading } as const);
}
