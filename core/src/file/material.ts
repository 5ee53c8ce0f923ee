import * as v from 'valibot';
import { en } from '../en.ts';
import { chemistry } from './chemistryRow.ts';
import { id, line, list, numberText, oneOf, quantity, ratioText, row, uncertainty } from './fields.ts';

const maybe = v.exactOptional;
const temperature = quantity('temperature', { least: ['-60', '°C'], most: ['400', '°C'] });
const expansion = quantity('expansion', { least: ['-0.01', '1/K'], most: ['0.01', '1/K'] });

/** Density at a stated temperature; a second one at another temperature gives the expansion. */
const density = row({
  value: quantity('density', { above: ['0', 'g/cm3'], most: ['25', 'g/cm3'] }),
  at: maybe(temperature),
});

const part = row({
  name: maybe(line),
  density: maybe(density),
  secondDensity: maybe(density),
  expansion: maybe(expansion),
  runAt: maybe(temperature),
  viscosity: maybe(quantity('viscosity', { above: ['0', 'mPa s'] })),
  densityUncertainty: maybe(uncertainty),
  temperatureUncertainty: maybe(quantity('temperatureDifference', { least: ['0', 'K'], most: ['100', 'K'] })),
});

const BASIS_MISSING = en`the basis is "weight" or "volume"; it is never guessed`;
const basis = oneOf(['weight', 'volume'], BASIS_MISSING);

/** Either `A:B` (with `parts`), or the parts of B for 100 parts of A (with `perHundredA`). A plan needs the basis too; it has no default. */
const ratio = v.pipe(
  row({
    basis: maybe(basis),
    parts: maybe(ratioText),
    perHundredA: maybe(numberText),
    thirdInto: maybe(oneOf(['A', 'B'], en`the third part is premixed into the tank of "A" or of "B"`)),
    at: maybe(temperature),
  }),
  v.check(
    (r) => r.parts === undefined || r.perHundredA === undefined,
    en`the ratio is given once: either "parts" (A : B) or "perHundredA" (B per 100 A)`,
  ),
);

/** What a data sheet allows, in its own way of saying it; low and high apart, since the target need not lie in the middle. */
const limits = row({
  definition: oneOf(
    ['% of B per A', '% of A per B', 'points of B in the total', 'parts of B', 'index points'],
    en`limits are "% of B per A", "% of A per B", "points of B in the total", "parts of B" or, from chemistry, "index points"; the definition is never guessed`,
  ),
  low: numberText,
  high: numberText,
});

const plainMaterial = row({
  id,
  name: line,
  note: maybe(line),
  ratio: maybe(ratio),
  /** Instead of a ratio: what reacts in each tank. */
  chemistry: maybe(chemistry),
  /** The sheet's ratio on the other basis, where it prints both: it stands in for a density that is not given. */
  otherRatio: maybe(row({ basis, parts: ratioText })),
  limits: maybe(limits),
  A: part,
  B: part,
  third: maybe(part),
  /** The mixture in the tank that takes the third part, where its density is known as such. */
  premix: maybe(part),
  cautions: maybe(v.pipe(list(line), v.maxLength(4, en`the sheet has room for 4 lines of your own`))),
});

export const material = v.pipe(
  plainMaterial,
  v.forward(
    v.check(
      (m) => m.ratio === undefined || m.chemistry === undefined,
      en`the mix ratio is given once: either as the sheet prints it, "ratio", or from what reacts, "chemistry"`,
    ),
    ['chemistry'],
  ),
);

export type MaterialRow = v.InferOutput<typeof material>;
export type PartRow = MaterialRow['A'];
export type LimitsRow = NonNullable<MaterialRow['limits']>;
