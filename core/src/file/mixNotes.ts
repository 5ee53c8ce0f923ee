import { en } from '../en.ts';
import type { Finding, Place } from '../finding.ts';
import { capital, fixed, type Say, temperatureText } from '../format.ts';
import type { Given } from '../given.ts';
import type { SideName } from '../plan.ts';
import { type Fraction, ONE, ratioOf, whole, ZERO } from '../ratio.ts';
import type { MaterialRow } from './material.ts';
import type { SheetRatio } from './sheetRatio.ts';
import type { Content, Tank } from './tank.ts';

/** Usual volume expansion of a reactive liquid, used only to say what a missing one may cost (our choice, among handbook values). */
const USUAL_EXPANSION_per_K = ratioOf(7, 10_000);
/** A sheet that prints both ratios rounds them; more than this between them and the densities is a contradiction (our choice). */
const RATIOS_AGREE_WITHIN = ratioOf(1, 100);

type Tanks = Readonly<Record<SideName, Tank>>;

/** What is not given of temperatures and expansions, with what it may cost. */
export function temperatureNotes(ratio: SheetRatio, tanks: Tanks, place: Place, say: Say): Finding[] {
  // The wanted ratio rests on the sheet's volumes where it is by volume, and where they stand in for a density.
  const byVolume = ratio.basis === 'volume' || !tanks.A.density.known || !tanks.B.density.known;
  return (['A', 'B'] as const).flatMap((side) => {
    const tank = tanks[side];
    if (!tank.runAt_K.known) {
      const taken = byVolume ? en`the ratio by volume is taken as it stands` : en`its density is taken as stated`;
      return [
        missing('material.runTemperature', [...place, side, 'runAt'], en`${side}: the temperature it is run at is not given; ${taken}.`),
      ];
    }
    const run_K = tank.runAt_K.value;
    const holding = temperatureText(run_K, say);
    const ratioNote =
      byVolume && !ratio.holdsAt_K.known
        ? [
            missing(
              'material.referenceTemperature',
              [...place, 'ratio', 'at'],
              en`${side}: no temperature is given for the ratio by volume; it is taken as holding at ${holding}.`,
            ),
          ]
        : [];
    const contentNotes = tank.contents.flatMap((content) => [
      ...densityNote(content, holding),
      ...expansionNote(content, byVolume ? ratio.holdsAt_K : content.liquid.densityAt_K, run_K, say),
    ]);
    return [...ratioNote, ...contentNotes];
  });
}

function densityNote({ name, place, liquid }: Content, holding: string): readonly Finding[] {
  if (!liquid.density_kg_per_m3.known || liquid.densityAt_K.known) return [];
  const what = en`${capital(name)}: no temperature is given for its density; it is taken as holding at ${holding}.`;
  return [missing('material.referenceTemperature', [...place, 'density', 'at'], what)];
}

function expansionNote({ name, place, liquid }: Content, ratioHoldsAt_K: Given<Fraction>, run_K: Fraction, say: Say): readonly Finding[] {
  if (liquid.expansion_per_K.known) return [];
  const step = (from_K: Given<Fraction>) => (from_K.known ? run_K.sub(from_K.value).abs() : ZERO);
  const ofRatio = step(ratioHoldsAt_K);
  const ofDensity = step(liquid.densityAt_K);
  const step_K = ofRatio.equals(ZERO) ? ofDensity : ofRatio;
  if (step_K.equals(ZERO)) return [];
  const cost = fixed(USUAL_EXPANSION_per_K.mul(step_K).mul(whole(100)), 2, say);
  const usual = fixed(USUAL_EXPANSION_per_K, 4, say);
  const over = fixed(step_K, 1, say);
  const shifted = ofRatio.equals(ZERO) ? en`its density, and the catch expected from it,` : en`the ratio`;
  const what = en`${capital(name)}: its expansion is not given and is taken as none; a usual ${usual} per K over ${over} K would shift ${shifted} by ${cost} %.`;
  return [{ ...missing('material.expansion', [...place, 'expansion'], what), severity: 'warns' }];
}

function missing(check: string, where: Place, what: string): Finding {
  return { check, severity: 'notes', where, what, figure: null, limit: null, source: en`definition of volume expansion`, missing: true };
}

/** Where a sheet prints both ratios and both densities, they must tell one story. `implied` is the density of B over A that the ratios ask for. */
export function agreementNotes(implied: Fraction | null, { A, B }: Tanks, place: Place, say: Say): readonly Finding[] {
  if (implied === null || !A.sheetDensity_kg_per_m3.known || !B.sheetDensity_kg_per_m3.known) return [];
  const stated = B.sheetDensity_kg_per_m3.value.div(A.sheetDensity_kg_per_m3.value);
  const difference = stated.div(implied).sub(ONE);
  if (difference.abs().compare(RATIOS_AGREE_WITHIN) <= 0) return [];
  const percent = (value: Fraction) => ({ value: value.mul(whole(100)).valueOf(), unit: '%' }) as const;
  return [
    {
      check: 'material.twoRatios',
      severity: 'warns',
      where: [...place, 'otherRatio'],
      what: en`The ratios by weight and by volume ask for B to be ${fixed(implied, 4, say)} times as dense as A; the densities say ${fixed(stated, 4, say)}. One of the four numbers is wrong: ask the supplier.`,
      figure: percent(difference),
      limit: percent(RATIOS_AGREE_WITHIN),
      source: en`arithmetic: weight ratio = volume ratio x density ratio; 1 % is our choice`,
      missing: false,
    },
  ];
}

/** A third part that the ratio does not count is described for nothing. */
export function unusedNotes(material: MaterialRow, ratio: SheetRatio, place: Place): readonly Finding[] {
  if (ratio.thirdInto !== null) return [];
  return (['third', 'premix'] as const).flatMap((name) =>
    material[name] === undefined
      ? []
      : [
          {
            ...missing(
              'material.third',
              [...place, name],
              en`A third part is described, but the ratio has only two parts: it is left out.`,
            ),
            source: en`form of the shop file`,
            missing: false,
          },
        ],
  );
}
