import type { Outcome, Place } from '../finding.ts';
import type { Say } from '../format.ts';
import { known, NOT_GIVEN } from '../given.ts';
import { limitValues } from '../limits.ts';
import type { Mix } from '../plan.ts';
import type { KnownRatio } from '../sheetForms.ts';
import { type MaterialRow, material } from './material.ts';
import { checked, Problems } from './problems.ts';
import { resolveLimits } from './resolveLimits.ts';
import { resolveMix } from './resolveMix.ts';
import { inTank, sheetRatio } from './sheetRatio.ts';
import type { ShopFile } from './shopFile.ts';

/**
 * The mix ratio of one material by itself, whatever else the file still lacks.
 *
 * @param file           a shop file, which may have been edited since it was read
 * @param materialIndex  which of its materials, counted from 0
 * @returns the mix with its notes, or all that stands against it
 * @throws RangeError    where the file has no such material
 * @example mixOf(demo, 0, say)  // wanted B per A by volume 1 / 2.17229
 */
export function mixOf(file: ShopFile, materialIndex: number, say: Say): Outcome<Mix> {
  const problems = new Problems();
  const row = rowOf(file, materialIndex, problems);
  const found = row && resolveMix(row, placeOf(materialIndex), say, problems);
  return found === null ? problems.failure() : { ok: true, value: found.mix, findings: found.findings };
}

/**
 * The ratio of a material as far as it is known: without densities a ratio by weight still has its parts and its limits.
 *
 * @param file           a shop file, which may have been edited since it was read
 * @param materialIndex  which of its materials, counted from 0
 * @returns null while the ratio itself is incomplete
 * @throws RangeError    where the file has no such material
 * @example knownRatioOf(demo, 0, say)?.partsB  // 389/10
 */
export function knownRatioOf(file: ShopFile, materialIndex: number, say: Say): KnownRatio | null {
  // What is wrong or missing is for `mixOf` to say.
  const unheard = new Problems();
  const place = placeOf(materialIndex);
  const row = rowOf(file, materialIndex, unheard);
  const ratio = row && sheetRatio(withoutOther(row), place, unheard);
  if (row === null || ratio === null) return null;
  const { basis, parts, thirdInto, written, chemistry } = ratio;
  const target = { A: inTank(parts, 'A', thirdInto), B: inTank(parts, 'B', thirdInto), chemistry };
  const limits = row.limits === undefined ? null : resolveLimits(row.limits, target, place, say, unheard);
  const mix = resolveMix(withoutLimits(row), place, say, unheard)?.mix;
  return {
    basis,
    written,
    premixed: thirdInto !== null,
    partsA: target.A,
    partsB: target.B,
    limits: limits && limitValues(limits),
    chemistry,
    runBPerA: mix === undefined ? NOT_GIVEN : known(mix.wantedBPerA),
    densityBOverA: mix?.densityBOverA ?? NOT_GIVEN,
    runAt_K: mix?.runAt_K ?? { A: NOT_GIVEN, B: NOT_GIVEN },
  };
}

function rowOf(file: ShopFile, materialIndex: number, problems: Problems): MaterialRow | null {
  const row = file.materials[materialIndex];
  if (row === undefined) throw new RangeError(`the file has no material ${materialIndex}`);
  return checked(material, row, placeOf(materialIndex), problems);
}

const placeOf = (materialIndex: number): Place => ['materials', materialIndex];

const withoutOther = ({ otherRatio, ...rest }: MaterialRow): MaterialRow => rest;
const withoutLimits = ({ limits, ...rest }: MaterialRow): MaterialRow => rest;
