import { en } from '../../../../core/src/en.ts';
import { Choices } from './Choices.tsx';
import type { MaterialForm } from './materialForm.ts';

const SOURCES = [
  ['sheet', en`as the sheet prints it`],
  ['chemistry', en`from chemistry`],
] as const;

/** Where the mix ratio comes from. */
export function RatioSource(props: { readonly form: MaterialForm }) {
  return (
    <div class="block ruled">
      <Choices
        label={en`The mix ratio is given`}
        place={props.form.place('chemistry')}
        // Beside chemistry a second ratio has no box: the other answer takes it away.
        also={props.form.fromChemistry() ? [props.form.place('otherRatio')] : []}
        options={SOURCES}
        value={props.form.fromChemistry() ? 'chemistry' : 'sheet'}
        pick={(source) => props.form.takeFromChemistry(source === 'chemistry')}
      />
    </div>
  );
}
