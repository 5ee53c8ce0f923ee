import { createMemo, createSignal } from 'solid-js';
import { unwrap } from 'solid-js/store';
import { type LimitsDraft, wholeLimits } from '../../../../core/src/file/limitsDraft.ts';
import { knownRatioOf, mixOf } from '../../../../core/src/file/mixOf.ts';
import type { Outcome, Place, ShopFile } from '../../../../core/src/index.ts';
import type { Mix } from '../../../../core/src/plan.ts';
import type { KnownRatio } from '../../../../core/src/sheetForms.ts';
import { placeKey, useApp } from '../../state/app.ts';
import { put } from '../../state/put.ts';

export type Material = ShopFile['materials'][number];
export type PartKey = 'A' | 'B' | 'third' | 'premix';

/** The material the page works on, and what follows from it by itself. */
export interface MaterialForm {
  readonly row: () => Material;
  readonly place: (...steps: Place) => Place;
  /** Changes the material; edits at one place in a row are one undo step. */
  readonly edit: (at: Place, change: (row: Material) => void) => void;
  /** Whether the ratio comes from chemistry instead of being printed on the sheet. */
  readonly fromChemistry: () => boolean;
  readonly takeFromChemistry: (yes: boolean) => void;
  readonly mix: () => Outcome<Mix> | null;
  readonly ratio: () => KnownRatio | null;
  /** Limits as they stand in their boxes: those of the file, or what is typed of them so far. */
  readonly limits: () => LimitsDraft;
  readonly setLimit: <Key extends keyof LimitsDraft>(key: Key, value: LimitsDraft[Key] | undefined) => void;
}

export function createMaterialForm(first: Material): MaterialForm {
  const app = useApp();
  const rows = () => app.shop.file?.materials ?? [];
  // While the row is being removed the form stands for a last moment without it.
  const row = createMemo<Material>((before) => rows().find(({ id }) => id === before.id) ?? before, first);
  const index = () => rows().findIndex(({ id }) => id === first.id);
  const place = (...steps: Place): Place => ['materials', Math.max(0, index()), ...steps];
  const edit = (at: Place, change: (row: Material) => void) =>
    app.shop.edit(placeKey(place(...at)), (file) => {
      const found = file.materials.find(({ id }) => id === first.id);
      if (found !== undefined) change(found);
    });
  const from = <T>(read: (file: ShopFile, index: number) => T): T | null => {
    const file = app.shop.file;
    return file === null || index() < 0 ? null : read(file, index());
  };
  // What is given up for the other way of giving the ratio comes back when that is picked again.
  let aside: Pick<Material, 'ratio' | 'otherRatio' | 'chemistry'> = {};
  const takeFromChemistry = (yes: boolean) =>
    edit(['chemistry', 'instead'], (changed) => {
      const { ratio, otherRatio, chemistry } = aside;
      aside = given(changed);
      put(changed, 'ratio', yes ? undefined : ratio);
      put(changed, 'otherRatio', yes ? undefined : otherRatio);
      put(changed, 'chemistry', yes ? (chemistry ?? {}) : undefined);
    });
  const [pending, setPending] = createSignal<LimitsDraft>({});
  const limits = () => row().limits ?? pending();
  return {
    row,
    place,
    edit,
    fromChemistry: () => row().chemistry !== undefined,
    takeFromChemistry,
    mix: createMemo(() => from((file, at) => mixOf(file, at, app.say()))),
    ratio: createMemo(() => from((file, at) => knownRatioOf(file, at, app.say()))),
    limits,
    setLimit(key, value) {
      const next: LimitsDraft = { ...limits() };
      put(next, key, value);
      const whole = wholeLimits(next);
      // Limits in part are kept out of the file; undo of the last one typed finds the others as they stood.
      if (whole === null) setPending(next);
      if (whole !== null || row().limits !== undefined) edit(['limits'], (changed) => put(changed, 'limits', whole ?? undefined));
    },
  };
}

/** A copy, free of the store, of all that says the ratio. */
function given(row: Material): Pick<Material, 'ratio' | 'otherRatio' | 'chemistry'> {
  const { ratio, otherRatio, chemistry } = unwrap(row);
  return structuredClone({ ...(ratio && { ratio }), ...(otherRatio && { otherRatio }), ...(chemistry && { chemistry }) });
}

/** Changes the ratio, which is there as long as anything is known of it. */
export function editRatio(form: MaterialForm, key: string, change: (ratio: NonNullable<Material['ratio']>, row: Material) => void): void {
  form.edit(['ratio', key], (row) => {
    row.ratio ??= {};
    change(row.ratio, row);
    if (Object.keys(row.ratio).length === 0) put(row, 'ratio', undefined);
  });
}

/** Changes one part; a third part or a mixture is there as long as anything is known of it. */
export function editPart(form: MaterialForm, key: PartKey, at: Place, change: (part: Material['A']) => void): void {
  form.edit([key, ...at], (row) => {
    row[key] ??= {};
    const part = row[key];
    change(part);
    if ((key === 'third' || key === 'premix') && Object.keys(part).length === 0) put(row, key, undefined);
  });
}
