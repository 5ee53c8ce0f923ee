import { en } from '../en.ts';
import type { Place } from '../finding.ts';
import { type Given, given, known, NOT_GIVEN } from '../given.ts';
import { densityAt, expansionOfTwo, keepsVolume, type Liquid, mixedDensity, type NamedLiquid, stated, volumeGrowth } from '../liquid.ts';
import { BY_BASIS, type SideName, type TankLiquid } from '../plan.ts';
import { type Fraction, ONE, ratioOf, ZERO } from '../ratio.ts';
import { formula, type Input, input, work } from '../working.ts';
import type { MaterialRow, PartRow } from './material.ts';
import { type Problems, si } from './problems.ts';
import { type Basis, inTank, type Parts, partsBy, type SheetRatio } from './sheetRatio.ts';

/** A liquid that is filled into a tank, before its share of it is known. */
export type Content = Omit<TankLiquid, 'volumeShare'>;

/** One side of the mix: the tank as it is metered, its share as the sheet counts it, and what its content does with temperature. */
export interface Tank {
  readonly contents: readonly Content[];
  readonly liquids: readonly TankLiquid[];
  readonly part: Input<Fraction>;
  /** Density as run. */
  readonly density: Given<Input<Fraction>>;
  /** Density where the volumes of the sheet hold; as stated where that temperature is not given. */
  readonly sheetDensity_kg_per_m3: Given<Fraction>;
  /** Volume as run of what fills one unit at the temperature where the sheet's volumes hold. */
  readonly growth: Input<Fraction>;
  readonly runAt_K: Given<Fraction>;
}

const bothParts = formula({
  letter: 'P',
  written: 'm + t',
  dimension: 'number',
  source: en`the third part is premixed into this tank`,
  of: ({ m, t }: Record<'m' | 't', Fraction>) => m.add(t),
});

const massOfVolume = formula({
  letter: 'm',
  written: 'ρ · v · g',
  dimension: 'number',
  source: en`density times volume as run`,
  of: ({ ρ, v, g }: Record<'ρ' | 'v' | 'g', Fraction>) => ρ.mul(v).mul(g),
});

const growthOfBoth = formula({
  letter: 'g',
  written: '(m · g + t · h) / (m + t)',
  dimension: 'number',
  source: en`volumes of liquids in one tank add up`,
  of: ({ m, g, t, h }: Record<'m' | 'g' | 't' | 'h', Fraction>) => m.mul(g).add(t.mul(h)).div(m.add(t)),
});

/** The tank of a side with all that was filled into it; null where a problem was added. */
export function tankOf(material: MaterialRow, ratio: SheetRatio, side: SideName, place: Place, problems: Problems): Tank | null {
  const filled = contentsOf(material, ratio, side, place, problems);
  if (filled === null) return null;
  const runAt_K = filled[0].liquid.runAt_K;
  const growths = filled.map((one) => volumeGrowth(one, ratio.holdsAt_K, runAt_K));
  const shares = (parts: Parts, basis: Basis) => {
    const part = (name: string, value: Fraction) => input(en`parts of ${name} ${BY_BASIS[basis]}`, value, 'number');
    return filled.length === 1
      ? [part(side, inTank(parts, side, ratio.thirdInto))]
      : [part(side, parts[side]), part(en`the third part`, parts.third ?? ZERO)];
  };
  const masses = massesOf(shares(ratio.parts, ratio.basis), growths, filled, ratio, runAt_K);
  const byVolume = partsBy(ratio, 'volume');
  const atSheet = tankDensity(filled, masses, ratio.holdsAt_K, side, en`where the sheet's volumes hold`);
  return {
    contents: filled,
    liquids: withVolumeShares(filled, masses, runAt_K),
    part: partOf(ratio, side),
    density: tankDensity(filled, masses, runAt_K, side, en`as run`),
    sheetDensity_kg_per_m3: atSheet.known ? known(atSheet.value.value) : NOT_GIVEN,
    growth: growthOf(byVolume === null ? null : shares(byVolume, 'volume'), growths, side),
    runAt_K,
  };
}

const sum = (terms: readonly Fraction[]): Fraction => terms.reduce((total, term) => total.add(term), ZERO);

/** What goes into the tank, as the ratio counts it. */
function partOf({ parts, thirdInto, basis, chemistry }: SheetRatio, side: SideName): Input<Fraction> {
  if (chemistry !== null && side === 'B') return chemistry.perHundredA;
  const main = input(en`parts of ${side} ${BY_BASIS[basis]}`, parts[side], 'number');
  if (thirdInto !== side || parts.third === null) return main;
  return work(bothParts, en`parts in tank ${side} ${BY_BASIS[basis]}`, {
    m: main,
    t: input(en`parts of the third ${BY_BASIS[basis]}`, parts.third, 'number'),
  });
}

function growthOf(shares: readonly Input<Fraction>[] | null, growths: readonly Input<Fraction>[], side: SideName): Input<Fraction> {
  const [g, h] = growths;
  if (shares === null || g === undefined)
    return input(en`growth of ${side} with temperature, which does not matter by weight`, ONE, 'number');
  const [m, t] = shares;
  if (m === undefined || t === undefined || h === undefined) return g;
  return work(growthOfBoth, en`volume of ${side} as run over its volume where the sheet's volumes hold`, { m, g, t, h });
}

/** Masses in the tank, in any common unit: the parts of a ratio by weight, or those of volumes as run. */
function massesOf(
  shares: readonly Input<Fraction>[],
  growths: readonly Input<Fraction>[],
  filled: readonly Content[],
  { basis }: SheetRatio,
  runAt_K: Given<Fraction>,
): readonly Given<Input<Fraction>>[] {
  if (basis === 'weight') return shares.map(known);
  return filled.map((one, index) => {
    const ρ = densityAt(one, runAt_K, en`as run`);
    const [v, g] = [shares[index], growths[index]];
    return ρ.known && v && g ? known(work(massOfVolume, en`mass of ${one.name} in its tank`, { ρ: ρ.value, v, g })) : NOT_GIVEN;
  });
}

/** Each liquid with its share of the volume as run; a lone one has all of it. */
function withVolumeShares(
  filled: readonly Content[],
  masses: readonly Given<Input<Fraction>>[],
  runAt_K: Given<Fraction>,
): readonly TankLiquid[] {
  if (filled.length === 1) return filled.map((content) => ({ ...content, volumeShare: known(ONE) }));
  const volumes = filled.map((one, index) => {
    const mass = masses[index] ?? NOT_GIVEN;
    const density = densityAt(one, runAt_K, en`as run`);
    return mass.known && density.known ? mass.value.value.div(density.value.value) : null;
  });
  const all = volumes.every((volume) => volume !== null) ? sum(volumes) : null;
  return filled.map((content, index) => {
    const volume = volumes[index];
    return { ...content, volumeShare: volume && all ? known(volume.div(all)) : NOT_GIVEN };
  });
}

/** Density of all that is in the tank, at one temperature; not given where that of one liquid is not. */
function tankDensity(
  filled: readonly Content[],
  masses: readonly Given<Input<Fraction>>[],
  at_K: Given<Fraction>,
  side: SideName,
  when: string,
): Given<Input<Fraction>> {
  const shares: (readonly [Input<Fraction>, Input<Fraction>])[] = [];
  for (const [index, one] of filled.entries()) {
    const mass = masses[index] ?? NOT_GIVEN;
    const density = densityAt(one, at_K, when);
    if (!density.known) return NOT_GIVEN;
    if (filled.length === 1) return density;
    if (!mass.known) return NOT_GIVEN;
    shares.push([mass.value, density.value]);
  }
  return known(mixedDensity(en`density in tank ${side} ${when}`, shares));
}

/** What was filled into the tank: its component, the mixture as such, or the component and the third part, which stands at the same temperature. */
function contentsOf(
  material: MaterialRow,
  ratio: SheetRatio,
  side: SideName,
  place: Place,
  problems: Problems,
): readonly [Content, ...Content[]] | null {
  const content = (name: string, row: PartRow, where: Place, runAt: PartRow['runAt']): Content | null => {
    const liquid = liquidOf(name, { ...row, ...(runAt && { runAt }) }, ratio.holdsAt_K, where, problems);
    const densityUncertainty = given(row.densityUncertainty, (share) => si('share', share));
    const temperatureUncertainty_K = given(row.temperatureUncertainty, (step) => si('temperatureDifference', step));
    return liquid && { ...liquid, place: where, densityUncertainty, temperatureUncertainty_K };
  };
  const takesThird = ratio.thirdInto === side;
  if (takesThird && material.premix !== undefined) {
    const mixture = content(en`the premix`, material.premix, [...place, 'premix'], material[side].runAt);
    return mixture && [mixture];
  }
  const main = content(side, material[side], [...place, side], material[side].runAt);
  if (!takesThird) return main && [main];
  const third = content(en`the third part`, material.third ?? {}, [...place, 'third'], material[side].runAt);
  return main && third && [main, third];
}

/** A liquid that keeps a volume at every temperature that matters; null where a problem was added. */
function liquidOf(name: string, row: PartRow, holdsAt_K: Given<Fraction>, place: Place, problems: Problems): NamedLiquid | null {
  const liquid = {
    density_kg_per_m3: given(row.density?.value, (value) => si('density', value)),
    densityAt_K: given(row.density?.at, (at) => si('temperature', at)),
    runAt_K: given(row.runAt, (at) => si('temperature', at)),
    expansion_per_K: given(row.expansion, (value) => si('expansion', value)),
  };
  const found =
    row.secondDensity === undefined ? stated(name, liquid) : withTwoDensities(name, row, row.secondDensity, liquid, place, problems);
  if (found === null || keepsVolume(found.liquid, holdsAt_K)) return found;
  const field = row.secondDensity === undefined ? 'expansion' : 'secondDensity';
  problems.add([...place, field], en`the expansion of ${name} leaves it no volume at the temperatures given: check them and the expansion`);
  return null;
}

/** Most volume expansion that two densities may stand for; the schema holds a typed one to the same. */
const MOST_EXPANSION_per_K = ratioOf(1, 100);

function withTwoDensities(
  name: string,
  row: PartRow,
  second: NonNullable<PartRow['secondDensity']>,
  liquid: Liquid,
  place: Place,
  problems: Problems,
): NamedLiquid | null {
  const wrong = (where: Place, what: string) => {
    problems.add([...place, 'secondDensity', ...where], what);
    return null;
  };
  const { density_kg_per_m3: first, densityAt_K } = liquid;
  if (row.expansion !== undefined) return wrong([], en`a second density and an expansion say the same thing twice: keep one of them`);
  if (!first.known || !densityAt_K.known || second.at === undefined) {
    return wrong([], en`two densities give the expansion only where both are given with their temperature`);
  }
  const at_K = si('temperature', second.at);
  if (at_K.equals(densityAt_K.value)) return wrong(['at'], en`both densities are stated at one temperature: they give no expansion`);
  const expansion = work(expansionOfTwo, en`expansion of ${name}`, {
    'ρ₁': input(en`density of ${name} as stated`, first.value, 'density'),
    'ρ₂': input(en`second density of ${name}`, si('density', second.value), 'density'),
    'T₁': input(en`temperature of the density of ${name}`, densityAt_K.value, 'temperature'),
    'T₂': input(en`temperature of the second density of ${name}`, at_K, 'temperature'),
  });
  if (expansion.value.abs().compare(MOST_EXPANSION_per_K) <= 0)
    return { name, liquid: { ...liquid, expansion_per_K: known(expansion.value) }, expansion: known(expansion) };
  return wrong([], en`the two densities of ${name} lie further apart than 1 % per K: check them and their temperatures`);
}
