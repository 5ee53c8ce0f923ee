import type { Finding, Place } from '../finding.ts';
import type { Say } from '../format.ts';
import { type Given, known, NOT_GIVEN } from '../given.ts';
import { volumeFromWeight } from '../mixRatio.ts';
import type { Mix, SideName } from '../plan.ts';
import { type Fraction, ONE } from '../ratio.ts';
import { type MaterialRow, material as materialSchema } from './material.ts';
import { agreementNotes, temperatureNotes, unusedNotes } from './mixNotes.ts';
import { checked, type Problems } from './problems.ts';
import { resolveLimits, writtenLimits } from './resolveLimits.ts';
import { type Basis, inTank, partsBy, type SheetRatio, sheetRatio } from './sheetRatio.ts';
import { type Tank, tankOf } from './tank.ts';

/** The mix ratio of a material, carried to volumes at run temperature; null where a problem was added. */
export function resolveMix(
  material: MaterialRow,
  place: Place,
  say: Say,
  problems: Problems,
): { mix: Mix; findings: readonly Finding[] } | null {
  // A row may have been edited since its file was read.
  if (checked(materialSchema, material, place, problems) === null) return null;
  const ratio = sheetRatio(material, place, problems);
  if (ratio === null) return null;
  const A = tankOf(material, ratio, 'A', place, problems);
  const B = tankOf(material, ratio, 'B', place, problems);
  const target = { A: inTank(ratio.parts, 'A', ratio.thirdInto), B: inTank(ratio.parts, 'B', ratio.thirdInto) };
  const limits = material.limits === undefined ? null : resolveLimits(material.limits, target, [...place, 'limits'], say, problems);
  if (A === null || B === null || (material.limits !== undefined && limits === null)) return null;

  const implied = impliedDensity(ratio);
  const densityBOverA = relativeDensity(A, B, implied);
  const wantedBPerA = wanted(ratio, A, B, densityBOverA);
  if (wantedBPerA === null) {
    addMissingDensities([A, B], problems);
    return null;
  }
  const tanks = { A, B };
  const overA = densityBOverA.known ? known(ONE.div(densityBOverA.value)) : NOT_GIVEN;
  return {
    findings: [
      ...temperatureNotes(ratio, tanks, place, say),
      ...agreementNotes(implied, tanks, place, say),
      ...unusedNotes(material, ratio, place),
    ],
    mix: {
      place,
      wantedBPerA,
      limits,
      sheet: { basis: ratio.basis, partsA: target.A, partsB: target.B, written: ratio.written },
      limitsWritten: material.limits === undefined ? null : writtenLimits(material.limits),
      densityBOverA,
      density_kg_per_m3: { A: densityOf(A, B, overA), B: densityOf(B, A, densityBOverA) },
      runAt_K: { A: A.runAt_K, B: B.runAt_K },
      liquids: { A: A.liquids, B: B.liquids },
    },
  };
}

/** B per A by volume as run: by weight through the densities, by volume carried over by mass from where the sheet's volumes hold. */
function wanted(ratio: SheetRatio, a: Tank, b: Tank, densityBOverA: Given<Fraction>): Fraction | null {
  const sheetBPerA = b.part.div(a.part);
  if (ratio.basis === 'volume') return sheetBPerA.mul(b.growth).div(a.growth);
  return densityBOverA.known ? volumeFromWeight(sheetBPerA, densityBOverA.value) : null;
}

function addMissingDensities(tanks: readonly Tank[], problems: Problems): void {
  for (const { name, place, liquid } of tanks.flatMap((tank) => tank.contents)) {
    if (liquid.density_kg_per_m3.known) continue;
    problems.add(
      [...place, 'density'],
      `the density of ${name} is missing: a ratio by weight needs all densities, or the sheet's ratio by volume as well`,
    );
  }
}

/** Density of B over A as run: from both densities, else from the sheet's ratios on both bases. */
function relativeDensity(a: Tank, b: Tank, implied: Fraction | null): Given<Fraction> {
  if (a.density_kg_per_m3.known && b.density_kg_per_m3.known) return known(b.density_kg_per_m3.value.div(a.density_kg_per_m3.value));
  // A liquid that has grown by g has its density divided by g.
  return implied === null ? NOT_GIVEN : known(implied.mul(a.growth).div(b.growth));
}

/** Density of B over A that a sheet with both ratios asks for, where its volumes hold. */
function impliedDensity(ratio: SheetRatio): Fraction | null {
  const bPerA = (basis: Basis): Fraction | null => {
    const parts = partsBy(ratio, basis);
    const filled = (side: SideName, from: NonNullable<typeof parts>) => inTank(from, side, ratio.thirdInto);
    return parts && filled('B', parts).div(filled('A', parts));
  };
  const byWeight = bPerA('weight');
  const byVolume = bPerA('volume');
  return byWeight && byVolume && byWeight.div(byVolume);
}

/** Its own density as run, else what the other one's makes it. */
function densityOf(tank: Tank, other: Tank, overOther: Given<Fraction>): Given<Fraction> {
  if (tank.density_kg_per_m3.known) return tank.density_kg_per_m3;
  return other.density_kg_per_m3.known && overOther.known ? known(other.density_kg_per_m3.value.mul(overOther.value)) : NOT_GIVEN;
}
