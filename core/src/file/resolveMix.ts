import { en } from '../en.ts';
import type { Finding, Place } from '../finding.ts';
import type { Say } from '../format.ts';
import { type Given, known, NOT_GIVEN } from '../given.ts';
import { limitValues } from '../limits.ts';
import { bPerA, byVolume } from '../mixRatio.ts';
import { BY_BASIS, type Mix, type SideName } from '../plan.ts';
import type { Fraction } from '../ratio.ts';
import { visible } from '../visible.ts';
import { formula, type Input, input, type Worked, work } from '../working.ts';
import { type MaterialRow, material as materialSchema } from './material.ts';
import { agreementNotes, temperatureNotes, unusedNotes } from './mixNotes.ts';
import { checked, type Problems } from './problems.ts';
import { resolveLimits, writtenLimits } from './resolveLimits.ts';
import { type Basis, inTank, partsBy, type SheetRatio, sheetRatio } from './sheetRatio.ts';
import { type Tank, tankOf } from './tank.ts';

const densityRatio = formula({
  letter: 'd',
  written: 'b / a',
  dimension: 'number',
  source: en`definition: density of B over density of A`,
  of: ({ a, b }: Record<'a' | 'b', Fraction>) => b.div(a),
});

const impliedRatio = formula({
  letter: 'd',
  written: 'w / v',
  dimension: 'number',
  source: en`arithmetic: weight ratio = volume ratio × density ratio`,
  of: ({ w, v }: Record<'w' | 'v', Fraction>) => w.div(v),
});

const impliedAsRun = formula({
  letter: 'd',
  written: 'i · g / h',
  dimension: 'number',
  source: en`a liquid that has grown has its density divided by its growth`,
  of: ({ i, g, h }: Record<'i' | 'g' | 'h', Fraction>) => i.mul(g).div(h),
});

const volumeAsRun = formula({
  letter: 'r',
  written: 's · h / g',
  dimension: 'number',
  source: en`volumes of the sheet carried over by mass to where the machine runs`,
  of: ({ s, g, h }: Record<'s' | 'g' | 'h', Fraction>) => s.mul(h).div(g),
});

const densityFromA = formula({
  letter: 'ρ',
  written: 'a · d',
  dimension: 'density',
  source: en`the density of A and how much denser B is`,
  of: ({ a, d }: Record<'a' | 'd', Fraction>) => a.mul(d),
});

const densityFromB = formula({
  letter: 'ρ',
  written: 'b / d',
  dimension: 'density',
  source: en`the density of B and how much denser it is than A`,
  of: ({ b, d }: Record<'b' | 'd', Fraction>) => b.div(d),
});

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
  const { chemistry } = ratio;
  const limits =
    material.limits === undefined ? null : resolveLimits(material.limits, { ...target, chemistry }, [...place, 'limits'], say, problems);
  if (A === null || B === null || (material.limits !== undefined && limits === null)) return null;

  const tanks = { A, B };
  const implied = impliedDensity(ratio);
  const densityBOverA = relativeDensity(tanks, implied);
  const wanted = wantedByVolume(ratio, tanks, densityBOverA);
  if (wanted === null) {
    addMissingDensities([A, B], problems);
    return null;
  }
  const density = { A: densityOfA(tanks, densityBOverA), B: densityOfB(tanks, densityBOverA) };
  return {
    findings: [
      ...temperatureNotes(ratio, tanks, place, say),
      ...agreementNotes(implied?.value ?? null, tanks, place, say),
      ...unusedNotes(material, ratio, place),
    ],
    mix: {
      place,
      wanted,
      wantedBPerA: wanted.value,
      limits: limits && limitValues(limits),
      limitsWorked: limits,
      sheet: { basis: ratio.basis, partsA: target.A, partsB: target.B, written: ratio.written },
      limitsWritten: material.limits === undefined ? null : visible(writtenLimits(material.limits, chemistry)),
      densityBOverA: plain(densityBOverA),
      density_kg_per_m3: { A: plain(density.A), B: plain(density.B) },
      density,
      runAt_K: { A: A.runAt_K, B: B.runAt_K },
      liquids: { A: A.liquids, B: B.liquids },
      chemistry: chemistry === null ? NOT_GIVEN : known(chemistry),
    },
  };
}

type Tanks = Readonly<Record<SideName, Tank>>;

const plain = (one: Given<Input<Fraction>>): Given<Fraction> => (one.known ? known(one.value.value) : NOT_GIVEN);

/** B per A by volume as run: by weight through the densities, by volume carried over by mass from where the sheet's volumes hold. */
function wantedByVolume({ basis }: SheetRatio, { A, B }: Tanks, densityBOverA: Given<Input<Fraction>>): Input<Fraction> | null {
  const sheet = work(bPerA, en`B per A ${BY_BASIS[basis]} as the sheet counts`, { a: A.part, b: B.part });
  const what = en`B per A by volume as run, wanted`;
  if (basis === 'volume') return work(volumeAsRun, what, { s: sheet, g: A.growth, h: B.growth });
  return densityBOverA.known ? work(byVolume, what, { w: sheet, d: densityBOverA.value }) : null;
}

function addMissingDensities(tanks: readonly Tank[], problems: Problems): void {
  for (const { name, place, liquid } of tanks.flatMap((tank) => tank.contents)) {
    if (liquid.density_kg_per_m3.known) continue;
    problems.add(
      [...place, 'density'],
      en`the density of ${name} is missing: a ratio by weight needs all densities, or the sheet's ratio by volume as well`,
    );
  }
}

/** Density of B over A as run: from both densities, else from the sheet's ratios on both bases. */
function relativeDensity({ A, B }: Tanks, implied: Worked<Fraction> | null): Given<Input<Fraction>> {
  const what = en`density of B over density of A, as run`;
  if (A.density.known && B.density.known) return known(work(densityRatio, what, { a: A.density.value, b: B.density.value }));
  return implied === null ? NOT_GIVEN : known(work(impliedAsRun, what, { i: implied, g: A.growth, h: B.growth }));
}

/** Density of B over A that a sheet with both ratios asks for, where its volumes hold. */
function impliedDensity(ratio: SheetRatio): Worked<Fraction> | null {
  const onBasis = (basis: Basis): Worked<Fraction> | null => {
    const parts = partsBy(ratio, basis);
    if (parts === null) return null;
    const filled = (side: SideName) => input(en`parts in tank ${side} ${BY_BASIS[basis]}`, inTank(parts, side, ratio.thirdInto), 'number');
    return work(bPerA, en`B per A ${BY_BASIS[basis]} as the sheet counts`, { a: filled('A'), b: filled('B') });
  };
  const [w, v] = [onBasis('weight'), onBasis('volume')];
  return w && v && work(impliedRatio, en`density of B over density of A, out of the sheet's two ratios`, { w, v });
}

/** Its own density as run, else what that of B makes it. */
function densityOfA({ A, B }: Tanks, d: Given<Input<Fraction>>): Given<Input<Fraction>> {
  if (A.density.known || !B.density.known || !d.known) return A.density;
  return known(work(densityFromB, en`density of A as run`, { b: B.density.value, d: d.value }));
}

/** The same the other way round. */
function densityOfB({ A, B }: Tanks, d: Given<Input<Fraction>>): Given<Input<Fraction>> {
  if (B.density.known || !A.density.known || !d.known) return B.density;
  return known(work(densityFromA, en`density of B as run`, { a: A.density.value, d: d.value }));
}
