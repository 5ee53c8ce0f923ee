import { driveKinds } from '../drives/index.ts';
import { en } from '../en.ts';
import { readEntry } from '../units.ts';

const COLUMNS = ['teeth', 'bore', 'keyway', 'quantity', 'part number', 'place'] as const;
/** One column of sizes for each drive kind: a row belongs to the kind whose size it gives. */
export const SIZES = driveKinds.map(({ kind, sizeHead }) => ({ kind, head: sizeHead }));
export const HEADS = [...SIZES.map(({ head }) => head), ...COLUMNS];
/** Heads that mean the same. */
const ALSO = new Map([
  ...SIZES.map(({ kind, head }) => [kind, head] as const),
  ['part', 'part number'],
  ['part no', 'part number'],
  ['pieces', 'quantity'],
]);

/** Where each known column stands, and the unit its head gives. */
export type Columns = ReadonlyMap<string, { readonly at: number; readonly unit: string | null }>;

/** Finds the columns by their heads; those not known are named, so that nothing is lost unsaid. */
export function readHead(cells: readonly string[]): {
  readonly columns: Columns;
  readonly ignored: readonly string[];
  readonly troubles: readonly string[];
} {
  const columns = new Map<string, { readonly at: number; readonly unit: string | null }>();
  const ignored: string[] = [];
  const troubles: string[] = [];
  cells.forEach((cell, at) => {
    const written = cell.trim().toLowerCase().replace(/_/g, ' ');
    const [, withUnit, unitText = ''] = /^(bore|keyway)[ ,]*[([]?([a-z"]+)[)\]]?$/.exec(written) ?? [];
    const unit = withUnit === undefined ? null : readEntry('length', `1 ${unitText}`);
    const name = unit?.ok ? withUnit : (ALSO.get(written) ?? written);
    if (name === undefined || !HEADS.includes(name)) {
      if (written !== '') ignored.push(cell.trim());
    } else if (columns.has(name)) troubles.push(en`The column "${name}" stands there twice.`);
    else columns.set(name, { at, unit: unit?.ok ? unit.value.unit : null });
  });
  const missing = ['teeth', 'quantity'].filter((name) => !columns.has(name));
  if (!SIZES.some(({ head }) => columns.has(head))) missing.unshift(SIZES.map(({ head }) => head).join(en` or `));
  if (missing.length > 0) troubles.push(en`The head lacks: ${missing.join(', ')}. The columns are: ${HEADS.join(', ')}.`);
  return { columns, ignored, troubles };
}
