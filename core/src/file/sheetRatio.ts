import type { Chemistry } from '../chemistry/chemistry.ts';
import { en } from '../en.ts';
import type { Place } from '../finding.ts';
import { type Given, given, NOT_GIVEN } from '../given.ts';
import { BY_BASIS, type SideName } from '../plan.ts';
import { type Fraction, whole, ZERO } from '../ratio.ts';
import { readNumber, readRatio } from '../reading.ts';
import { visible } from '../visible.ts';
import { resolveChemistry } from './chemistryMix.ts';
import type { MaterialRow } from './material.ts';
import { type Problems, reading, si } from './problems.ts';

export type Basis = 'weight' | 'volume';

/** Parts of a ratio as a sheet counts them. */
export interface Parts {
  readonly A: Fraction;
  readonly B: Fraction;
  readonly third: Fraction | null;
}

/** The mix ratio of a data sheet, read. */
export interface SheetRatio {
  readonly basis: Basis;
  readonly parts: Parts;
  /** The same mix on the other basis, where the sheet prints both. */
  readonly other: Parts | null;
  /** The tank that takes the third part; null where there is none. */
  readonly thirdInto: SideName | null;
  /** The temperature at which its volumes hold. */
  readonly holdsAt_K: Given<Fraction>;
  readonly written: string;
  /** Null where the sheet prints the ratio itself. */
  readonly chemistry: Chemistry | null;
}

/** The parts on a basis, where the sheet gives them. */
export const partsBy = (ratio: SheetRatio, basis: Basis): Parts | null => (basis === ratio.basis ? ratio.parts : ratio.other);

/** What goes into a tank, as a ratio counts it. */
export function inTank(parts: Parts, side: SideName, thirdInto: SideName | null): Fraction {
  return parts.third !== null && thirdInto === side ? parts[side].add(parts.third) : parts[side];
}

/** The mix ratio as the sheet gives it; null where a problem was added. Its basis is never guessed: a wrong one costs as much as the densities differ. */
export function sheetRatio(material: MaterialRow, place: Place, problems: Problems): SheetRatio | null {
  return material.chemistry === undefined ? printedRatio(material, place, problems) : ratioOfChemistry(material, place, problems);
}

/** Equivalents are weighed: the ratio is by weight, and volumes hold nowhere but as run. */
function ratioOfChemistry(material: MaterialRow, place: Place, problems: Problems): SheetRatio | null {
  const found = material.chemistry === undefined ? null : resolveChemistry(material.chemistry, [...place, 'chemistry'], problems);
  if (found === null) return null;
  if (material.otherRatio !== undefined) {
    const what = en`a second ratio stands beside one that the sheet prints; beside a ratio from chemistry it is to be taken away`;
    problems.add([...place, 'otherRatio'], what);
    return null;
  }
  const parts: Parts = { A: whole(100), B: found.chemistry.perHundredA.value, third: null };
  return { basis: 'weight', parts, other: null, thirdInto: null, holdsAt_K: NOT_GIVEN, ...found };
}

function printedRatio(material: MaterialRow, place: Place, problems: Problems): SheetRatio | null {
  const row = material.ratio;
  const at = [...place, 'ratio'];
  const parts = mainParts(row, at, problems);
  if (row?.basis === undefined) {
    const where = row === undefined ? at : [...at, 'basis'];
    problems.add(where, en`whether the mix ratio is by weight or by volume is missing; it is never guessed, the data sheet says it`);
  }
  if (row?.basis === undefined || parts === null) return null;
  const other =
    material.otherRatio === undefined ? null : otherParts(material.otherRatio, row.basis, parts, [...place, 'otherRatio'], problems);
  if (material.otherRatio !== undefined && other === null) return null;
  const thirdInto = row.thirdInto ?? null;
  const said = `${visible(row.parts ?? `100 : ${row.perHundredA}`)} ${BY_BASIS[row.basis]}`;
  return {
    basis: row.basis,
    parts,
    other,
    thirdInto,
    holdsAt_K: given(row.at, (temperature) => si('temperature', temperature)),
    written: thirdInto === null ? said : en`${said}, third part premixed into ${thirdInto}`,
    chemistry: null,
  };
}

function mainParts(row: MaterialRow['ratio'], at: Place, problems: Problems): Parts | null {
  if (row?.parts !== undefined) return threeParts(row.parts, row.thirdInto, at, problems);
  if (row?.perHundredA === undefined) {
    problems.add(row === undefined ? at : [...at, 'parts'], en`the mix ratio is missing: the data sheet of the material gives it`);
    return null;
  }
  if (row.thirdInto !== undefined) {
    problems.add([...at, 'thirdInto'], en`a third part needs its own number: write the ratio as A : B : third`);
    return null;
  }
  const perHundred = reading(readNumber(row.perHundredA));
  if (perHundred.compare(ZERO) > 0) return { A: whole(100), B: perHundred, third: null };
  problems.add([...at, 'perHundredA'], en`${row.perHundredA} is out of range: the parts of B per 100 A must be above 0`);
  return null;
}

function threeParts(typed: string, into: SideName | undefined, at: Place, problems: Problems): Parts | null {
  const [A, B, third = null] = reading(readRatio(typed));
  if (third !== null && into === undefined) {
    problems.add([...at, 'thirdInto'], en`"${typed}" has three parts for two pumps: say into which tank, A or B, the third is premixed`);
    return null;
  }
  if (third === null && into !== undefined) {
    problems.add([...at, 'parts'], en`"${typed}" has two parts, but a third is said to be premixed into ${into}: write A : B : third`);
    return null;
  }
  return { A, B, third };
}

function otherParts(row: NonNullable<MaterialRow['otherRatio']>, basis: Basis, parts: Parts, at: Place, problems: Problems): Parts | null {
  if (row.basis === basis) {
    problems.add([...at, 'basis'], en`both ratios are ${BY_BASIS[basis]}: this one is the sheet's ratio on the other basis`);
    return null;
  }
  const [A, B, third = null] = reading(readRatio(row.parts));
  if ((third === null) === (parts.third === null)) return { A, B, third };
  problems.add([...at, 'parts'], en`"${row.parts}" and the ratio ${BY_BASIS[basis]} must have the same number of parts`);
  return null;
}
