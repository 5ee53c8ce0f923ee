import { createSignal } from 'solid-js';
import type { DriveKind } from '../../../../core/src/drives/driveKind.ts';
import { en } from '../../../../core/src/en.ts';
import { machineTrouble } from '../../../../core/src/file/machineTrouble.ts';
import { applyRackLine } from '../../../../core/src/rackChange.ts';
import { RACK_LINE_EXAMPLE, rackLineReading, readRackLine, writeRackLine } from '../../../../core/src/rackLine.ts';
import type { TypedQuantity } from '../../../../core/src/reading.ts';
import { Entry } from '../../fields/Entry.tsx';
import { QuantityField } from '../../fields/index.tsx';
import type { RackForm } from './rackForm.ts';

interface LineProps {
  readonly form: RackForm;
  readonly kind: DriveKind;
  readonly lengthUnit: string;
}

/** The rack in one line. It is read as it is typed, and the rack follows it once it is set. */
export function RackLine(props: LineProps) {
  const pieces = () => props.form.row().pieces;
  const line = () => writeRackLine(pieces(), props.kind);
  const [typed, setTyped] = createSignal<string | null>(null);
  const [bore, setBore] = createSignal<TypedQuantity | undefined>();
  const take = (text: string) => {
    setTyped(text);
    const read = readRackLine(text, props.kind);
    if (!read.ok) return read;
    const { gone } = applyRackLine(pieces(), read.value, props.kind, bore());
    const reading = rackLineReading(read.value, props.kind);
    return {
      ok: true,
      reading: gone.length === 0 ? reading : en`${reading}; off the rack: ${gone.map(({ teeth }) => teeth).join(', ')}`,
    } as const;
  };
  const apply = (event: SubmitEvent) => {
    event.preventDefault();
    const read = readRackLine(typed() ?? line(), props.kind);
    if (!read.ok) return;
    const { rows } = applyRackLine(props.form.copy().pieces, read.value, props.kind, bore());
    props.form.act('line', (rack) => {
      rack.pieces = [...rows];
    });
    setTyped(null);
  };
  return (
    <form class="rackline" onSubmit={apply}>
      <Entry
        label={en`Quick entry: ${props.kind.words.size}, then teeth, ranges and counts`}
        place={props.form.place('pieces')}
        placeholder={RACK_LINE_EXAMPLE}
        text={line()}
        take={take}
        hint={now()}
      />
      <QuantityField
        label={en`Bore of new rows, ${props.lengthUnit}`}
        place={props.form.place('newBore')}
        dimension="length"
        unit={props.lengthUnit}
        value={bore()}
        check={(value) => machineTrouble({ slot: { bore: value } })}
        set={setBore}
      />
      <button type="submit" class="setrack">
        {en`Set the rack`} <kbd>{en`Enter`}</kbd>
      </button>
    </form>
  );

  function now(): string {
    const read = readRackLine(line(), props.kind);
    const counts = read.ok ? rackLineReading(read.value, props.kind) : '';
    return typed() === null || typed() === line()
      ? en`On the rack: ${counts}`
      : en`Enter sets the rack; bores, part numbers and places of rows that stay are kept.`;
  }
}
