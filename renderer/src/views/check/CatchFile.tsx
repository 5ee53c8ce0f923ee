import { en } from '../../../../core/src/en.ts';
import { takeCatches } from '../../../../core/src/ratioCheck/takeCatches.ts';
import { useApp } from '../../state/app.ts';
import type { RatioCheckState } from '../../state/ratioCheck.ts';

const MOST_FAULTS = 8;

/** Catches out of a file of a scale or a spreadsheet, as a whole or not at all. */
export function CatchFile(props: { readonly state: RatioCheckState }) {
  const app = useApp();
  let picker: HTMLInputElement | undefined;
  const read = async (input: HTMLInputElement) => {
    const [file] = input.files ?? [];
    if (file === undefined) return;
    const { LARGEST_CSV_BYTES } = await import('../../../../core/src/file/csv.ts');
    const { readCatchCsv } = await import('../../../../core/src/file/catchCsv.ts');
    const refused = (why: string) => app.tell(en`${file.name} was not read, the catches stay as they were. ${why}`);
    if (file.size > LARGEST_CSV_BYTES) return refused(en`It has ${file.size} bytes, more than ${LARGEST_CSV_BYTES}.`);
    const table = readCatchCsv(await file.text());
    // The same file may be chosen again once it is mended.
    input.value = '';
    if (!table.ok) {
      const faults = table.faults.map(({ line, column, what }) => en`Line ${line}${column === null ? '' : `, ${column}`}: ${what}`);
      return refused([...faults.slice(0, MOST_FAULTS), ...(faults.length > MOST_FAULTS ? [en`And more.`] : [])].join('\n'));
    }
    let against: string | null = null;
    app.shop.pause();
    props.state.edit(['catches', 'file'], (check) => {
      against = takeCatches(check, table.catches);
    });
    app.shop.pause();
    if (against !== null) return refused(against);
    app.tell(table.ignored.length === 0 ? null : en`Columns not read: ${table.ignored.join(', ')}.`);
  };
  return (
    <>
      <button type="button" onClick={() => picker?.click()}>{en`Read a CSV file`}</button>
      <input
        ref={picker}
        class="heard"
        type="file"
        accept=".csv,text/csv"
        tabindex="-1"
        aria-label={en`CSV file of catches`}
        onChange={(event) => {
          read(event.currentTarget).catch((error: unknown) => app.tell(error instanceof Error ? error.message : String(error)));
        }}
      />
    </>
  );
}
