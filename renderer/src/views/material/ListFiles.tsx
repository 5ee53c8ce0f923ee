import { en } from '../../../../core/src/en.ts';
import { LARGEST_CSV_BYTES, writeMaterials } from '../../../../core/src/file/materialCsv/index.ts';
import { download } from '../../host/download.ts';
import { sentenceOf, useApp } from '../../state/app.ts';
import type { PastedList } from './pastedList.ts';

/** A list out of a file into the box, and the materials of the shop file into a file of the same form. */
export function ListFiles(props: { readonly pasted: PastedList; readonly say: (said: string) => void }) {
  const app = useApp();
  const read = async (input: HTMLInputElement) => {
    const [file] = input.files ?? [];
    if (file === undefined) return;
    // The same file may be chosen again once it is mended.
    input.value = '';
    if (file.size > LARGEST_CSV_BYTES) {
      app.tell(en`${file.name} was not read: it has ${file.size} bytes, more than ${LARGEST_CSV_BYTES}.`);
      return;
    }
    const text = await file.text();
    const free = props.pasted.text().trim() === '';
    const question = en`The list is not empty. ${file.name} would stand in its place.`;
    if (!free && !(await app.ask({ text: question, yes: en`Replace the list`, no: en`Keep the list` }))) return;
    app.tell(null);
    props.say('');
    props.pasted.setText(text);
  };
  const write = () => {
    const file = app.shop.snapshot();
    if (file === null) return;
    const { text, leftOut } = writeMaterials(file.materials, app.say().decimal);
    download(`${file.shop.name || 'materials'}.csv`, text, 'text/csv');
    app.tell(leftOut.length === 0 ? null : en`Not in the file: ${leftOut.map(({ name, why }) => `${name}, ${why}`).join('; ')}.`);
  };
  let picker: HTMLInputElement | undefined;
  return (
    <>
      <button type="button" onClick={() => picker?.click()}>{en`Read a CSV file`}</button>
      <input
        ref={picker}
        class="heard"
        type="file"
        accept=".csv,.tsv,.txt,text/csv,text/plain"
        tabindex="-1"
        aria-label={en`CSV file of materials`}
        onChange={(event) => {
          read(event.currentTarget).catch((error: unknown) => app.tell(sentenceOf(error)));
        }}
      />
      <button type="button" onClick={write}>{en`Write this shop’s materials as CSV`}</button>
    </>
  );
}
