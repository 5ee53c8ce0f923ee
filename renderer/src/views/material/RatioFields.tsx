import { createSignal, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import type { Basis } from '../../../../core/src/file/sheetRatio.ts';
import { BY_BASIS } from '../../../../core/src/plan.ts';
import { partCount, partsOf, perHundredOf } from '../../../../core/src/ratioWriting.ts';
import { RatioField } from '../../fields/index.tsx';
import { put } from '../../state/put.ts';
import { Choices } from './Choices.tsx';
import { editRatio, type MaterialForm } from './materialForm.ts';
import { NumberField } from './NumberField.tsx';
import { SecondRatio } from './SecondRatio.tsx';
import { LeftOverThird, ThirdPart } from './ThirdPart.tsx';

const BASES = [
  ['weight', BY_BASIS.weight],
  ['volume', BY_BASIS.volume],
] as const;
type Writing = 'parts' | 'perHundredA';
const WRITINGS = [
  ['parts', 'A : B'],
  ['perHundredA', en`B per 100 A`],
] as const;
const otherBasis = (basis: Basis): Basis => (basis === 'weight' ? 'volume' : 'weight');

/** The mix ratio in the sheet's own words. */
export function RatioFields(props: { readonly form: MaterialForm }) {
  const form = () => props.form;
  const ratio = () => form().row().ratio;
  const pickBasis = (basis: Basis) =>
    editRatio(form(), 'basis', (changed, row) => {
      changed.basis = basis;
      // The second ratio is by definition the one on the other basis.
      if (row.otherRatio !== undefined) row.otherRatio.basis = otherBasis(basis);
    });
  const [empty, setEmpty] = createSignal<Writing>('parts');
  const writing = (): Writing => {
    const given = ratio();
    if (given?.perHundredA !== undefined) return 'perHundredA';
    return given?.parts === undefined ? empty() : 'parts';
  };
  const pickWriting = (next: Writing) => {
    const { parts, perHundredA } = ratio() ?? {};
    setEmpty(next);
    if (parts === undefined && perHundredA === undefined) return;
    editRatio(form(), 'writing', (changed) => {
      put(changed, 'parts', next === 'parts' ? (partsOf(perHundredA ?? '') ?? undefined) : undefined);
      put(changed, 'perHundredA', next === 'perHundredA' ? (perHundredOf(parts ?? '') ?? undefined) : undefined);
      put(changed, 'thirdInto', undefined);
    });
  };
  const leftOver = () => ratio() !== undefined && (form().row().third !== undefined || form().row().premix !== undefined);
  const basisWords = () => {
    const basis = ratio()?.basis;
    return basis === undefined ? '' : ` ${BY_BASIS[basis]}`;
  };
  return (
    <fieldset class="block">
      <legend>{en`Mix ratio as the sheet gives it`}</legend>
      <div class="asked">
        <Choices
          label={en`The sheet counts`}
          place={form().place('ratio', 'basis')}
          options={BASES}
          value={ratio()?.basis}
          pick={pickBasis}
        />
        <Choices label={en`and writes`} place={form().place('ratio', 'writing')} options={WRITINGS} value={writing()} pick={pickWriting} />
      </div>
      <Show when={ratio()?.basis === undefined}>
        <p class="hint warn">{en`By weight or by volume is not said yet. It is never guessed: the sheet says it.`}</p>
      </Show>
      <div class="g3 gap">
        <div class="large">
          <Show
            when={writing() === 'parts'}
            fallback={
              <NumberField
                label={en`B per 100 A${basisWords()}`}
                place={form().place('ratio', 'perHundredA')}
                also={[form().place('ratio', 'parts')]}
                value={ratio()?.perHundredA}
                set={(value) => {
                  setEmpty('perHundredA');
                  editRatio(form(), 'parts', (changed) => put(changed, 'perHundredA', value));
                }}
              />
            }
          >
            <RatioField
              label={`A : B${basisWords()}`}
              place={form().place('ratio', 'parts')}
              value={ratio()?.parts}
              set={(value) => {
                setEmpty('parts');
                editRatio(form(), 'parts', (changed) => {
                  put(changed, 'parts', value);
                  if (partCount(value ?? '') !== 3) put(changed, 'thirdInto', undefined);
                });
              }}
            />
          </Show>
        </div>
        <Show when={ratio()?.basis}>{(basis) => <SecondRatio form={form()} basis={otherBasis(basis())} />}</Show>
      </div>
      <Show
        when={partCount(ratio()?.parts ?? '') === 3}
        fallback={
          <Show when={leftOver()}>
            <LeftOverThird form={form()} />
          </Show>
        }
      >
        <ThirdPart form={form()} />
      </Show>
    </fieldset>
  );
}
