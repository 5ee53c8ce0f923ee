import type { Place } from '../finding.ts';
import { type Given, given, known, NOT_GIVEN } from '../given.ts';
import {
  expansionFromTwo_per_K,
  keepsVolume,
  type Liquid,
  mixedDensity_kg_per_m3,
  runningDensity_kg_per_m3,
  volumeGrowth,
} from '../mixRatio.ts';
import type { SideName, TankLiquid } from '../plan.ts';
import { type Fraction, ONE, ratioOf, ZERO } from '../ratio.ts';
import type { MaterialRow, PartRow } from './material.ts';
import { type Problems, si } from './problems.ts';
import { inTank, type Parts, partsBy, type SheetRatio } from './sheetRatio.ts';

/** A liquid that is filled into a tank, before its share of it is known. */
export type Content = Omit<TankLiquid, 'volumeShare'>;

/** One side of the mix: the tank as it is metered, its share as the sheet counts it, and what its content does with temperature. */
export interface Tank {
  readonly contents: readonly Content[];
  readonly liquids: readonly TankLiquid[];
  readonly part: Fraction;
  /** Density as run. */
  readonly density_kg_per_m3: Given<Fraction>;
  /** Density where the volumes of the sheet hold; as stated where that temperature is not given. */
  readonly sheetDensity_kg_per_m3: Given<Fraction>;
  /** Volume as run of what fills one unit at the temperature where the sheet's volumes hold. */
  readonly growth: Fraction;
  readonly runAt_K: Given<Fraction>;
}

/** The tank of a side with all that was filled into it; null where a problem was added. */
export function tankOf(material: MaterialRow, ratio: SheetRatio, side: SideName, place: Place, problems: Problems): Tank | null {
  const contents = contentsOf(material, ratio, side, place, problems);
  if (contents === null) return null;
  const runAt_K = contents[0].liquid.runAt_K;
  const growths = contents.map(({ liquid }) => volumeGrowth(liquid, ratio.holdsAt_K, runAt_K));
  const shares = (parts: Parts) => (contents.length === 1 ? [inTank(parts, side, ratio.thirdInto)] : [parts[side], parts.third ?? ZERO]);
  const grown = (parts: Parts) => shares(parts).map((share, index) => share.mul(growths[index] ?? ONE));
  const masses = ratio.basis === 'weight' ? shares(ratio.parts).map(known) : massesOf(grown(ratio.parts), contents, runAt_K);
  const byVolume = partsBy(ratio, 'volume');
  return {
    contents,
    liquids: withVolumeShares(contents, masses, runAt_K),
    part: inTank(ratio.parts, side, ratio.thirdInto),
    density_kg_per_m3: mixtureDensity(contents, masses, runAt_K),
    sheetDensity_kg_per_m3: mixtureDensity(contents, masses, ratio.holdsAt_K),
    growth: byVolume === null ? ONE : sum(grown(byVolume)).div(sum(shares(byVolume))),
    runAt_K,
  };
}

const sum = (terms: readonly Fraction[]): Fraction => terms.reduce((total, term) => total.add(term), ZERO);

/** Masses of volumes as run. */
function massesOf(volumes: readonly Fraction[], contents: readonly Content[], runAt_K: Given<Fraction>): readonly Given<Fraction>[] {
  return contents.map(({ liquid }, index) => {
    const density = runningDensity_kg_per_m3(liquid, runAt_K);
    return density.known ? known(density.value.mul(volumes[index] ?? ZERO)) : NOT_GIVEN;
  });
}

/** Each liquid with its share of the volume as run; a lone one has all of it. */
function withVolumeShares(
  contents: readonly Content[],
  masses: readonly Given<Fraction>[],
  runAt_K: Given<Fraction>,
): readonly TankLiquid[] {
  if (contents.length === 1) return contents.map((content) => ({ ...content, volumeShare: known(ONE) }));
  const volumes = contents.map(({ liquid }, index) => {
    const mass = masses[index] ?? NOT_GIVEN;
    const density = runningDensity_kg_per_m3(liquid, runAt_K);
    return mass.known && density.known ? mass.value.div(density.value) : null;
  });
  const all = volumes.every((volume) => volume !== null) ? sum(volumes) : null;
  return contents.map((content, index) => {
    const volume = volumes[index];
    return { ...content, volumeShare: volume && all ? known(volume.div(all)) : NOT_GIVEN };
  });
}

/** Density of all that is in the tank, at one temperature; not given where that of one liquid is not. */
function mixtureDensity(contents: readonly Content[], masses: readonly Given<Fraction>[], at_K: Given<Fraction>): Given<Fraction> {
  const shares: (readonly [Fraction, Fraction])[] = [];
  for (const [index, { liquid }] of contents.entries()) {
    const mass = masses[index] ?? NOT_GIVEN;
    const density = runningDensity_kg_per_m3(liquid, at_K);
    if (!mass.known || !density.known) return NOT_GIVEN;
    shares.push([mass.value, density.value]);
  }
  return known(mixedDensity_kg_per_m3(shares));
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
    return liquid && { name, place: where, liquid, densityUncertainty, temperatureUncertainty_K };
  };
  const takesThird = ratio.thirdInto === side;
  if (takesThird && material.premix !== undefined) {
    const mixture = content('the premix', material.premix, [...place, 'premix'], material[side].runAt);
    return mixture && [mixture];
  }
  const main = content(side, material[side], [...place, side], material[side].runAt);
  if (!takesThird) return main && [main];
  const third = content('the third part', material.third ?? {}, [...place, 'third'], material[side].runAt);
  return main && third && [main, third];
}

/** A liquid that keeps a volume at every temperature that matters; null where a problem was added. */
function liquidOf(name: string, row: PartRow, holdsAt_K: Given<Fraction>, place: Place, problems: Problems): Liquid | null {
  const stated = {
    density_kg_per_m3: given(row.density?.value, (value) => si('density', value)),
    densityAt_K: given(row.density?.at, (at) => si('temperature', at)),
    runAt_K: given(row.runAt, (at) => si('temperature', at)),
  };
  const typed = { ...stated, expansion_per_K: given(row.expansion, (value) => si('expansion', value)) };
  const liquid = row.secondDensity === undefined ? typed : withTwoDensities(name, row, row.secondDensity, typed, place, problems);
  if (liquid === null || keepsVolume(liquid, holdsAt_K)) return liquid;
  const field = row.secondDensity === undefined ? 'expansion' : 'secondDensity';
  problems.add([...place, field], `the expansion of ${name} leaves it no volume at the temperatures given: check them and the expansion`);
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
): Liquid | null {
  const wrong = (where: Place, what: string) => {
    problems.add([...place, 'secondDensity', ...where], what);
    return null;
  };
  const { density_kg_per_m3: first, densityAt_K } = liquid;
  if (row.expansion !== undefined) return wrong([], 'a second density and an expansion say the same thing twice: keep one of them');
  if (!first.known || !densityAt_K.known || second.at === undefined) {
    return wrong([], 'two densities give the expansion only where both are given with their temperature');
  }
  const at_K = si('temperature', second.at);
  if (at_K.equals(densityAt_K.value)) return wrong(['at'], 'both densities are stated at one temperature: they give no expansion');
  const expansion = expansionFromTwo_per_K(first.value, densityAt_K.value, si('density', second.value), at_K);
  if (expansion.abs().compare(MOST_EXPANSION_per_K) <= 0) return { ...liquid, expansion_per_K: known(expansion) };
  return wrong([], `the two densities of ${name} lie further apart than 1 % per K: check them and their temperatures`);
}
