import type { Finding, Place } from '../finding.ts';
import { type Say, temperatureText } from '../format.ts';
import { type Given, given, known, NOT_GIVEN } from '../given.ts';
import {
  expansionFromTwo_per_K,
  type Liquid,
  limitsOfOffRatio,
  mixedDensity_kg_per_m3,
  type OffRatioLimits,
  runningDensity_kg_per_m3,
  volumeGrowth,
} from '../mixRatio.ts';
import type { Mix, SideName } from '../plan.ts';
import { type Fraction, float, ONE, whole, ZERO } from '../ratio.ts';
import { readNumber, readRatio } from '../reading.ts';
import type { LimitsRow, MaterialRow, PartRow } from './material.ts';
import { type Problems, reading, si } from './problems.ts';

/** Usual volume expansion of a reactive liquid, used only to say what a missing one may cost. */
const USUAL_EXPANSION_per_K = 0.0007;
/** A sheet that prints both ratios rounds them; more than this between them and the densities is a contradiction (our choice). */
const RATIOS_AGREE_WITHIN = 0.01;

/** One side of the mix: the tank as it is metered, its share as the sheet counts it, and what its content does with temperature. */
interface Tank {
  readonly part: Fraction;
  /** Density as run. */
  readonly density_kg_per_m3: Given<Fraction>;
  readonly densityAt_K: Given<Fraction>;
  /** Volume as run of what fills one unit at the temperature where the sheet's volumes hold. */
  readonly growth: Fraction;
  readonly runAt_K: Given<Fraction>;
}

/** The mix ratio of a material, carried to volumes at run temperature; null where a problem was added. */
export function resolveMix(row: MaterialRow, place: Place, say: Say, problems: Problems): { mix: Mix; findings: Finding[] } | null {
  const material = stated(row, place, problems);
  if (material === null) return null;
  if (material.otherRatio?.basis === material.ratio.basis) {
    problems.add(
      [...place, 'otherRatio', 'basis'],
      `both ratios are by ${material.ratio.basis}: this one is the sheet's ratio on the other basis`,
    );
    return null;
  }
  const parts = sheetParts(material, place, problems);
  if (parts === null) return null;
  const findings: Finding[] = [];
  const tankOf = (side: SideName) => tank(material, side, parts, place, problems);
  const a = tankOf('A');
  const b = tankOf('B');
  if (a === null || b === null) return null;
  findings.push(...temperatureNotes(material, a, b, place, say));

  const densityBOverA = relativeDensity(material, a, b);
  const sheetBPerA = b.part.div(a.part);
  const byWeight = material.ratio.basis === 'weight';
  if (byWeight && !densityBOverA.known) {
    for (const side of missingDensities(a, b)) {
      problems.add(
        [...place, side, 'density'],
        `the density of ${side} is missing: a ratio by weight needs both densities, or the sheet's ratio by volume as well`,
      );
    }
    return null;
  }
  const wantedBPerA = byWeight && densityBOverA.known ? sheetBPerA.div(densityBOverA.value) : sheetBPerA.mul(b.growth).div(a.growth);
  const limits = material.limits === undefined ? null : resolveLimits(material.limits, a.part, b.part, [...place, 'limits'], problems);
  if (material.limits !== undefined && limits === null) return null;
  findings.push(...agreement(material, a, b, densityBOverA, place));

  const fill = (tank: Tank, other: Tank, overOther: Given<Fraction>): Given<Fraction> => {
    if (tank.density_kg_per_m3.known) return tank.density_kg_per_m3;
    return other.density_kg_per_m3.known && overOther.known ? known(other.density_kg_per_m3.value.mul(overOther.value)) : NOT_GIVEN;
  };
  const aOverB = densityBOverA.known ? known(ONE.div(densityBOverA.value)) : NOT_GIVEN;
  return {
    findings,
    mix: {
      place,
      wantedBPerA,
      limits,
      sheet: { basis: material.ratio.basis, partsA: a.part, partsB: b.part, written: writtenRatio(material) },
      limitsWritten: material.limits === undefined ? null : writtenLimits(material.limits),
      densityBOverA,
      density_kg_per_m3: { A: fill(a, b, aOverB), B: fill(b, a, densityBOverA) },
      runAt_K: { A: a.runAt_K, B: b.runAt_K },
    },
  };
}

/** A material whose ratio says all that a plan needs of it. */
type StatedMaterial = Omit<MaterialRow, 'ratio'> & {
  readonly ratio: Omit<NonNullable<MaterialRow['ratio']>, 'basis'> & { readonly basis: 'weight' | 'volume' };
};

/** The basis is never guessed: a wrong one costs as much as the densities differ. */
function stated(row: MaterialRow, place: Place, problems: Problems): StatedMaterial | null {
  const ratio = row.ratio;
  if (ratio === undefined || (ratio.parts === undefined && ratio.perHundredA === undefined)) {
    problems.add([...place, 'ratio', 'parts'], 'the mix ratio is missing: the data sheet of the material gives it');
  }
  if (ratio?.basis === undefined) {
    problems.add(
      [...place, 'ratio', 'basis'],
      'whether the mix ratio is by weight or by volume is missing; it is never guessed, the data sheet says it',
    );
  }
  return ratio?.basis === undefined || (ratio.parts === undefined && ratio.perHundredA === undefined)
    ? null
    : { ...row, ratio: { ...ratio, basis: ratio.basis } };
}

interface SheetParts {
  readonly A: Fraction;
  readonly B: Fraction;
  readonly third: Fraction | null;
}

function sheetParts(material: StatedMaterial, place: Place, problems: Problems): SheetParts | null {
  const { parts, perHundredA, thirdInto } = material.ratio;
  const at = [...place, 'ratio'];
  if (parts === undefined) {
    const perHundred = perHundredA === undefined ? null : reading(readNumber(perHundredA));
    if (perHundred === null || perHundred.compare(ZERO) <= 0) {
      problems.add([...at, 'perHundredA'], 'the parts of B per 100 A must be above 0');
      return null;
    }
    if (thirdInto !== undefined) problems.add([...at, 'thirdInto'], 'a third part needs its own number: write the ratio as A : B : third');
    return thirdInto === undefined ? { A: whole(100), B: perHundred, third: null } : null;
  }
  const [A, B, third = null] = reading(readRatio(parts));
  if (third !== null && thirdInto === undefined) {
    problems.add([...at, 'thirdInto'], `"${parts}" has three parts for two pumps: say into which tank, A or B, the third is premixed`);
    return null;
  }
  if (third === null && thirdInto !== undefined) {
    problems.add([...at, 'parts'], `"${parts}" has two parts, but a third is said to be premixed into ${thirdInto}: write A : B : third`);
    return null;
  }
  return { A, B, third };
}

function liquid(row: PartRow, place: Place, problems: Problems): Liquid | null {
  const density = row.density;
  const densityAt_K = given(density?.at, (at) => si('temperature', at));
  const stated = {
    density_kg_per_m3: given(density?.value, (value) => si('density', value)),
    densityAt_K,
    runAt_K: given(row.runAt, (at) => si('temperature', at)),
  };
  const second = row.secondDensity;
  if (second === undefined) return { ...stated, expansion_per_K: given(row.expansion, (value) => si('expansion', value)) };
  if (row.expansion !== undefined) {
    problems.add([...place, 'secondDensity'], 'a second density and an expansion say the same thing twice: keep one of them');
    return null;
  }
  if (density === undefined || !stated.density_kg_per_m3.known || !densityAt_K.known || second.at === undefined) {
    problems.add([...place, 'secondDensity'], 'two densities give the expansion only where both are given with their temperature');
    return null;
  }
  const secondAt_K = si('temperature', second.at);
  if (secondAt_K.equals(densityAt_K.value)) {
    problems.add([...place, 'secondDensity', 'at'], 'both densities are stated at one temperature: they give no expansion');
    return null;
  }
  const expansion = expansionFromTwo_per_K(stated.density_kg_per_m3.value, densityAt_K.value, si('density', second.value), secondAt_K);
  return { ...stated, expansion_per_K: known(expansion) };
}

function tank(material: StatedMaterial, side: SideName, parts: SheetParts, place: Place, problems: Problems): Tank | null {
  const main = liquid(material[side], [...place, side], problems);
  if (main === null) return null;
  const holdsAt_K = given(material.ratio.at, (at) => si('temperature', at));
  if (parts.third === null || material.ratio.thirdInto !== side) {
    return {
      part: parts[side],
      density_kg_per_m3: runningDensity_kg_per_m3(main, main.runAt_K),
      densityAt_K: main.densityAt_K,
      growth: volumeGrowth(main, holdsAt_K, main.runAt_K),
      runAt_K: main.runAt_K,
    };
  }
  const part = parts[side].add(parts.third);
  if (material.premix !== undefined) {
    const mixture = liquid(
      { ...material.premix, ...(material[side].runAt && { runAt: material[side].runAt }) },
      [...place, 'premix'],
      problems,
    );
    if (mixture === null) return null;
    return {
      part,
      density_kg_per_m3: runningDensity_kg_per_m3(mixture, mixture.runAt_K),
      densityAt_K: mixture.densityAt_K,
      growth: volumeGrowth(mixture, holdsAt_K, mixture.runAt_K),
      runAt_K: mixture.runAt_K,
    };
  }
  const third = liquid(material.third ?? {}, [...place, 'third'], problems);
  return third === null ? null : mixedTank(material, part, [parts[side], main], [parts.third, third], holdsAt_K);
}

/** Both parts stand at the temperature of their tank; their volumes add up. */
function mixedTank(
  material: StatedMaterial,
  part: Fraction,
  [mainPart, main]: readonly [Fraction, Liquid],
  [thirdPart, third]: readonly [Fraction, Liquid],
  holdsAt_K: Given<Fraction>,
): Tank {
  const runAt_K = main.runAt_K;
  const growth = [volumeGrowth(main, holdsAt_K, runAt_K), volumeGrowth(third, holdsAt_K, runAt_K)] as const;
  const running = [runningDensity_kg_per_m3(main, runAt_K), runningDensity_kg_per_m3(third, runAt_K)] as const;
  const byWeight = material.ratio.basis === 'weight';
  const mixtureGrowth = mainPart.mul(growth[0]).add(thirdPart.mul(growth[1])).div(part);
  const common = { part, densityAt_K: main.densityAt_K, growth: byWeight ? ONE : mixtureGrowth, runAt_K };
  if (!running[0].known || !running[1].known) return { ...common, density_kg_per_m3: NOT_GIVEN };
  const masses = byWeight
    ? ([mainPart, thirdPart] as const)
    : ([mainPart.mul(growth[0]).mul(running[0].value), thirdPart.mul(growth[1]).mul(running[1].value)] as const);
  return {
    ...common,
    density_kg_per_m3: known(
      mixedDensity_kg_per_m3([
        [masses[0], running[0].value],
        [masses[1], running[1].value],
      ]),
    ),
  };
}

const missingDensities = (a: Tank, b: Tank): readonly SideName[] => [
  ...(a.density_kg_per_m3.known ? [] : (['A'] as const)),
  ...(b.density_kg_per_m3.known ? [] : (['B'] as const)),
];

/** Density of B over A as run: from both densities, else from the sheet's ratios on both bases. */
function relativeDensity(material: StatedMaterial, a: Tank, b: Tank): Given<Fraction> {
  if (a.density_kg_per_m3.known && b.density_kg_per_m3.known) return known(b.density_kg_per_m3.value.div(a.density_kg_per_m3.value));
  const implied = impliedByBothRatios(material, a, b);
  // A liquid that has grown by g has its density divided by g.
  return implied === null ? NOT_GIVEN : known(implied.mul(a.growth).div(b.growth));
}

function impliedByBothRatios(material: StatedMaterial, a: Tank, b: Tank): Fraction | null {
  const other = material.otherRatio;
  if (other === undefined) return null;
  const [otherA, otherB, otherThird = ZERO] = reading(readRatio(other.parts));
  const into = material.ratio.thirdInto;
  const otherBPerA = (into === 'B' ? otherB.add(otherThird) : otherB).div(into === 'A' ? otherA.add(otherThird) : otherA);
  const sheetBPerA = b.part.div(a.part);
  return other.basis === 'volume' ? sheetBPerA.div(otherBPerA) : otherBPerA.div(sheetBPerA);
}

function resolveLimits(row: LimitsRow, partsA: Fraction, partsB: Fraction, place: Place, problems: Problems): OffRatioLimits | null {
  const low = reading(readNumber(row.low));
  const high = reading(readNumber(row.high));
  const absolute = row.definition === 'parts of B';
  const target = absolute ? partsB : ZERO;
  const said = absolute ? `the target of ${partsB.toString()} parts` : 'the target, which is 0';
  if (low.compare(target) > 0)
    problems.add(
      [...place, 'low'],
      `the low limit ${row.low} lies above ${said}${absolute ? '' : '; a deviation below carries a minus sign'}`,
    );
  if (high.compare(target) < 0) problems.add([...place, 'high'], `the high limit ${row.high} lies below ${said}`);
  const share = partsB.div(partsA.add(partsB)).mul(100);
  const tooLow = {
    '% of B per A': whole(-100),
    '% of A per B': whole(-100),
    'points of B in the total': share.neg(),
    'parts of B': ZERO,
  }[row.definition];
  if (low.compare(tooLow) <= 0)
    problems.add([...place, 'low'], `the low limit ${row.low} would leave no B: it must be above ${tooLow.toString(4)}`);
  if (row.definition === 'points of B in the total' && high.compare(whole(100).sub(share)) >= 0) {
    problems.add([...place, 'high'], `the high limit ${row.high} would leave no A: it must be below ${whole(100).sub(share).toString(4)}`);
  }
  return problems.none ? limitsOfOffRatio(row.definition, low, high, partsA, partsB) : null;
}

function temperatureNotes(material: StatedMaterial, a: Tank, b: Tank, place: Place, say: Say): Finding[] {
  const notes: Finding[] = [];
  const note = (check: string, where: Place, what: string, severity: 'notes' | 'warns' = 'notes') =>
    notes.push({ check, severity, where, what, figure: null, limit: null, source: 'definition of volume expansion', missing: true });
  for (const [side, tank] of [
    ['A', a],
    ['B', b],
  ] as const) {
    const row = material[side];
    const at = [...place, side];
    const reference_K = material.ratio.basis === 'volume' ? given(material.ratio.at, (t) => si('temperature', t)) : tank.densityAt_K;
    if (!tank.runAt_K.known) {
      note(
        'material.runTemperature',
        [...at, 'runAt'],
        `${side}: the temperature it is run at is not given; its density is taken as stated.`,
      );
    } else if (!reference_K.known) {
      const field = material.ratio.basis === 'volume' ? 'the ratio by volume' : `the density of ${side}`;
      note(
        'material.referenceTemperature',
        at,
        `${side}: no temperature is given for ${field}; it is taken as holding at ${temperatureText(tank.runAt_K.value, say)}.`,
      );
    } else if (row.expansion === undefined && row.secondDensity === undefined && material.premix === undefined) {
      const step_K = Math.abs(float(tank.runAt_K.value.sub(reference_K.value)));
      if (step_K === 0) continue;
      const cost = (100 * USUAL_EXPANSION_per_K * step_K).toFixed(2);
      note(
        'material.expansion',
        [...at, 'expansion'],
        `${side}: its expansion is not given and is taken as none; a usual 0.0007 per K over ${step_K.toFixed(1)} K would shift the ratio by ${cost} %.`,
        'warns',
      );
    }
  }
  return notes;
}

/** Where a sheet prints both ratios and both densities, they must tell one story. */
function agreement(material: StatedMaterial, a: Tank, b: Tank, densityBOverA: Given<Fraction>, place: Place): Finding[] {
  if (!a.density_kg_per_m3.known || !b.density_kg_per_m3.known || !densityBOverA.known) return [];
  const implied = impliedByBothRatios(material, a, b);
  if (implied === null) return [];
  const difference = float(densityBOverA.value.div(implied.mul(a.growth).div(b.growth)).sub(ONE));
  if (Math.abs(difference) <= RATIOS_AGREE_WITHIN) return [];
  return [
    {
      check: 'material.twoRatios',
      severity: 'warns',
      where: [...place, 'otherRatio'],
      what: `The ratios by weight and by volume ask for B to be ${float(implied).toFixed(4)} times as dense as A; the densities say ${float(densityBOverA.value).toFixed(4)}. One of the four numbers is wrong: ask the supplier.`,
      figure: { value: 100 * difference, unit: '%' },
      limit: { value: 100 * RATIOS_AGREE_WITHIN, unit: '%' },
      source: 'arithmetic: weight ratio = volume ratio x density ratio; 1 % is our choice',
      missing: false,
    },
  ];
}

function writtenRatio(material: StatedMaterial): string {
  const { parts, perHundredA, basis, thirdInto } = material.ratio;
  const into = thirdInto === undefined ? '' : `, third part premixed into ${thirdInto}`;
  return `${parts ?? `100 : ${perHundredA}`} by ${basis}${into}`;
}

const writtenLimits = (limits: LimitsRow): string => `${limits.low} to ${limits.high} ${limits.definition}`;
