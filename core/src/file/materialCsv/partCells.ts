import { en } from '../../en.ts';
import type { SideName } from '../../plan.ts';
import type { TypedQuantity } from '../../reading.ts';
import { type Dimension, readEntry, unitsOf } from '../../units.ts';
import { quoted } from '../../visible.ts';
import type { PartRow } from '../material.ts';
import { atParts, type Column, dimensionOf } from './columns.ts';
import type { Say } from './ratioCells.ts';

/** One row of a list by the names of its columns. */
export interface Cells {
  /** Trimmed; empty where there is no such column. */
  readonly text: (name: string) => string;
  readonly column: (name: string) => Column | undefined;
}

/** The unit in the example of a refusal. */
const EXAMPLES: Partial<Record<Dimension, string>> = { density: 'g/cm3', viscosity: 'mPa s', share: '%' };

/**
 * One part of a material, out of the cells of its columns.
 *
 * @source our choice: a quantity takes its unit from its cell, else from its head; without one it is refused
 */
export function partOf(side: SideName, cells: Cells, say: Say): PartRow {
  const name = cells.text(`name ${side}`);
  const of = (word: string) => quantityIn(`${word} ${side}`, cells, say);
  const density = densityIn(`density ${side}`, cells, say);
  const secondDensity = densityIn(`second density ${side}`, cells, say);
  const expansion = of('expansion');
  const runAt = of('run');
  const viscosity = of('viscosity');
  const densityUncertainty = of('density uncertainty');
  const temperatureUncertainty = of('temperature uncertainty');
  return {
    ...(name !== '' && { name }),
    ...(density && { density }),
    ...(secondDensity && { secondDensity }),
    ...(expansion && { expansion }),
    ...(runAt && { runAt }),
    ...(viscosity && { viscosity }),
    ...(densityUncertainty && { densityUncertainty }),
    ...(temperatureUncertainty && { temperatureUncertainty }),
  };
}

function densityIn(name: string, cells: Cells, say: Say): PartRow['density'] | null {
  const own = quantityIn(`${name} at`, cells, say);
  const [value = '', inCell = null] = atParts(cells.text(name));
  const head = cells.column(name);
  const density = quantityOf(name, 'density', value, head?.unit ?? null, say);
  if (density === null) {
    if (value === '' && (own !== null || inCell !== null)) say(name, en`Nothing is given beside its temperature.`);
    return null;
  }
  if (own !== null && inCell !== null) say(name, en`Its temperature is given twice: in its cell and in a column of its own.`);
  const ofBoth = name.startsWith('density') ? quantityIn('density at', cells, say) : null;
  const written = inCell ?? head?.heldAt ?? '';
  const at = own ?? quantityOf(name, 'temperature', written, null, say) ?? ofBoth;
  return { value: density, ...(at && { at }) };
}

/** The quantity in a column, as typed; null where there is none, or it was refused. */
export function quantityIn(name: string, cells: Cells, say: Say): TypedQuantity | null {
  const dimension = dimensionOf(name);
  if (dimension === null) throw new RangeError(`quantityIn: ${name} holds no quantity`);
  return quantityOf(name, dimension, cells.text(name), cells.column(name)?.unit ?? null, say);
}

function quantityOf(name: string, dimension: Dimension, text: string, unitInHead: string | null, say: Say): TypedQuantity | null {
  if (text === '') return null;
  const read = readEntry(dimension, text);
  if (!read.ok) {
    say(name, read.expected);
    return null;
  }
  const unit = read.value.unit ?? unitInHead;
  if (unit !== null) return { value: read.value.value, unit };
  const example = EXAMPLES[dimension] ?? unitsOf(dimension)[0] ?? '';
  say(name, en`${quoted(text)} has no unit: write ${text} ${example}, or the unit in the head, as "${name} ${example}".`);
  return null;
}
