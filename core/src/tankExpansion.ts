import { en } from './en.ts';
import type { Place } from './finding.ts';
import type { Mix, SideName, TankLiquid } from './plan.ts';
import { type Fraction, ONE } from './ratio.ts';
import { sumOf } from './sums.ts';
import { formula, type Input, input, work } from './working.ts';

/** Something a figure would need, as a sentence names it, and the field of the file that would hold it. */
export interface Lacking {
  readonly what: string;
  readonly place: Place;
}

/** What is in a tank grows by this share of its volume as run for each kelvin; where it cannot be said, what it would take. */
export type TankExpansion =
  | { readonly known: true; readonly value: Input<Fraction> }
  | { readonly known: false; readonly lacking: readonly Lacking[] };

const expansionAsRun = formula({
  letter: 'γ',
  written: 'β / (1 + β · (T - Tᵣ))',
  dimension: 'expansion',
  source: en`definition of volume expansion, referred to the volume as run`,
  of: ({ β, T, Tᵣ }: Record<'β' | 'T' | 'Tᵣ', Fraction>) => β.div(ONE.add(β.mul(T.sub(Tᵣ)))),
});

const shareOfTank = formula({
  letter: 'γ',
  written: 'v · γ',
  dimension: 'expansion',
  source: en`volumes of liquids in one tank add up`,
  of: ({ v, γ }: Record<'v' | 'γ', Fraction>) => v.mul(γ),
});

/**
 * Relative growth of what is in a tank for each kelvin above the temperature it is run at. Volumes run on straight lines, so one figure
 * holds at any step: 1 + γ t.
 *
 * @returns per kelvin; not known where an expansion, or a density that the shares of a premixed tank need, is not given
 * @source definition of volume expansion; volumes of a premixed tank add up
 * @example tankExpansion(E12 of the demo, 'A')  // 0.00062 / (1 + 0.00062 · 17) = 0.00061353 per K
 */
export function tankExpansion({ liquids }: Mix, side: SideName): TankExpansion {
  const terms: Input<Fraction>[] = [];
  const lacking: Lacking[] = [];
  for (const one of liquids[side]) {
    const { name, place, liquid, expansion, volumeShare } = one;
    if (!expansion.known) lacking.push({ what: en`the expansion of ${name}`, place: [...place, 'expansion'] });
    // Of a tank premixed by volume the shares as run are told by masses.
    if (!volumeShare.known && !liquid.density_kg_per_m3.known)
      lacking.push({ what: en`the density of ${name}`, place: [...place, 'density'] });
    const γ = ofLiquid(one);
    if (γ === null || !volumeShare.known) continue;
    const v = input(en`share of ${name} in the volume of its tank`, volumeShare.value, 'share');
    terms.push(liquids[side].length === 1 ? γ : work(shareOfTank, en`growth from ${name}`, { v, γ }));
  }
  const [only] = terms;
  if (lacking.length > 0 || only === undefined) return { known: false, lacking };
  if (terms.length === 1) return { known: true, value: only };
  const source = en`volumes of liquids in one tank add up`;
  return { known: true, value: sumOf({ what: en`expansion of ${side}`, letter: 'γ', of: 'γ', dimension: 'expansion', source, terms }) };
}

/** Where a temperature is not given, the expansion counts as given for the temperature it is run at. */
function ofLiquid({ name, expansion, liquid: { runAt_K, densityAt_K } }: TankLiquid): Input<Fraction> | null {
  if (!expansion.known) return null;
  if (!runAt_K.known || !densityAt_K.known) return expansion.value;
  return work(expansionAsRun, en`expansion of ${name} as run`, {
    β: expansion.value,
    T: input(en`temperature ${name} is run at`, runAt_K.value, 'temperature'),
    Tᵣ: input(en`temperature of the density of ${name}`, densityAt_K.value, 'temperature'),
  });
}
