import { createSignal, Show } from 'solid-js';
import { en } from '../../../../core/src/en.ts';
import { useApp } from '../../state/app.ts';
import '../../style/material.css';
import { ChemistryFields } from './ChemistryFields.tsx';
import { DensityTable } from './DensityTable.tsx';
import { LimitsFields } from './LimitsFields.tsx';
import { AddMaterial, ListButton, MaterialHead } from './MaterialHead.tsx';
import { Meaning } from './Meaning.tsx';
import { createMaterialForm, type Material } from './materialForm.ts';
import { LIST_PLACE, PasteList } from './PasteList.tsx';
import { RatioFields } from './RatioFields.tsx';
import { RatioSource } from './RatioSource.tsx';

/** Left: what the data sheet says, as it says it. Right: what that means, and what is missing. */
export function MaterialPage() {
  const [lists, setLists] = createSignal(false);
  const back = () => {
    setLists(false);
    document.querySelector<HTMLElement>(`[data-place="${LIST_PLACE}"]`)?.focus();
  };
  return (
    <Show when={lists()} fallback={<OneMaterial list={() => setLists(true)} />}>
      <PasteList back={back} />
    </Show>
  );
}

function OneMaterial(props: { readonly list: () => void }) {
  const app = useApp();
  const row = () => app.shop.file?.materials[app.material()];
  return (
    <main id="main" class="two material">
      <Show
        when={row()?.id}
        keyed
        fallback={
          <section aria-label={en`Data sheet`}>
            <h1 class="t">{en`The file holds no material yet.`}</h1>
            <p class="gap">{en`Have the data sheet at hand: the mix ratio, by weight or by volume, its limits, and both densities.`}</p>
            <p class="gap bar-of">
              <AddMaterial />
              <ListButton list={props.list} />
            </p>
          </section>
        }
      >
        <Show when={row()}>{(first) => <Sheet first={first()} list={props.list} />}</Show>
      </Show>
    </main>
  );
}

function Sheet(props: { readonly first: Material; readonly list: () => void }) {
  // One form a material: the page is keyed by its id.
  const form = createMaterialForm(props.first);
  return (
    <>
      <section aria-label={en`Data sheet`}>
        <div class="head">
          <h1>{en`Material`}</h1>
          <span class="faint">{en`what the data sheet says, as it says it`}</span>
        </div>
        <MaterialHead form={form} list={props.list} />
        <RatioSource form={form} />
        <Show when={form.fromChemistry()} fallback={<RatioFields form={form} />}>
          <ChemistryFields form={form} />
        </Show>
        <LimitsFields form={form} />
        <DensityTable form={form} />
      </section>
      <Meaning form={form} />
    </>
  );
}
