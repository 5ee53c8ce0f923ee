import { createSignal, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { CsvTrouble } from '../../../../core/src/file/csv.ts';
import { download } from '../../host/download.ts';
import { sentenceOf, useApp } from '../../state/app.ts';
import type { RackForm } from './rackForm.ts';
import { rackTables } from './rackTables.ts';

const MOST_TROUBLES = 12;

/** The rack to and from a file for spreadsheets. A file is taken as a whole or not at all. */
export function RackFiles(props: { readonly form: RackForm }) {
  const app = useApp();
  const [said, say] = createSignal('');
  const read = async (input: HTMLInputElement) => {
    const [file] = input.files ?? [];
    if (file === undefined) return;
    say('');
    // The same file may be chosen again once it is mended.
    input.value = '';
    const { LARGEST_CSV_BYTES, readRackCsv } = await rackTables();
    if (file.size > LARGEST_CSV_BYTES) {
      app.tell(en`${file.name} was not read: it has ${file.size} bytes, more than ${LARGEST_CSV_BYTES}.`);
      return;
    }
    const table = readRackCsv(await file.text());
    if (!table.ok) {
      app.tell(en`${file.name} was not read, the rack stays as it was. ${troubleText(table.troubles)}`);
      return;
    }
    props.form.act('csv', (rack) => {
      rack.pieces = [...table.rows];
    });
    app.tell(null);
    const left = table.ignored.length === 0 ? '' : en` Columns not read: ${table.ignored.join(', ')}.`;
    say(en`${table.rows.length} rows read from ${file.name} in place of those before.${left}`);
  };
  const write = async () => {
    const { writeRackCsv } = await rackTables();
    download(`${props.form.row().name || 'rack'}.csv`, writeRackCsv(props.form.copy().pieces, app.say().decimal), 'text/csv');
  };
  const guarded = (work: Promise<void>) => {
    work.catch((error: unknown) => app.tell(sentenceOf(error)));
  };
  let picker: HTMLInputElement | undefined;
  return (
    <>
      <button type="button" onClick={() => picker?.click()}>{en`Read a CSV file`}</button>
      <input
        ref={picker}
        class="heard"
        type="file"
        accept=".csv,text/csv"
        tabindex="-1"
        aria-label={en`CSV file of the rack`}
        onChange={(event) => guarded(read(event.currentTarget))}
      />
      <button type="button" onClick={() => guarded(write())}>{en`Write a CSV file`}</button>
      <Show when={said()}>
        <output class="reading">{said()}</output>
      </Show>
    </>
  );
}

function troubleText(troubles: readonly CsvTrouble[]): string {
  const lines = troubles.slice(0, MOST_TROUBLES).map(({ line, what }) => en`Line ${line}: ${what}`);
  const more = troubles.length - lines.length;
  return [...lines, ...(more > 0 ? [en`And ${more} more.`] : [])].join('\n');
}
