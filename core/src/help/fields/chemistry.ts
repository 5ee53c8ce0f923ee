import { type FigureKey, MEASURE_NAMES, type MeasureName, measureOf } from '../../chemistry/measures.ts';
import { en } from '../../en.ts';
import type { FieldPage } from '../fieldLine.ts';

const row = (key: string): string => `materials.*.chemistry.A|B.ingredients.*.${key}`;

/** Measures whose figure does not tell which it is. */
const SAID: Readonly<Partial<Record<MeasureName, string>>> = {
  'amine molar mass': en`amine molar mass`,
  'anhydride molar mass': en`anhydride molar mass`,
  'NCO equivalent weight': en`NCO equivalent weight`,
  'OH equivalent weight': en`OH equivalent weight`,
};

/** Each measure that has the figure, with its own limits. */
const limitsOf = (key: FigureKey) => (): string =>
  MEASURE_NAMES.flatMap((name) =>
    measureOf(name)
      .figures.filter((figure) => figure.key === key)
      .map(({ label, least, most, unit }) =>
        en`${SAID[name] === undefined ? label : `${SAID[name]}: ${label}`} ${least} to ${most} ${unit}`.trim(),
      ),
  ).join('; ');

/** The mix ratio from what reacts, on the Material page. */
export const chemistry: FieldPage = {
  title: en`Ratio from chemistry`,
  lines: [
    {
      place: 'materials.*.chemistry.system',
      name: en`The material is`,
      means: en`Which two kinds of parts react: epoxy with hardener, or isocyanate with polyol.`,
      found: en`Data sheet or safety data sheet.`,
    },
    {
      place: 'materials.*.chemistry.resinIn',
      name: en`The resin is in`,
      means: en`The tank with the epoxy resin; it differs between shops, so it is asked.`,
      found: en`Label of the drum, and where its hose leads.`,
    },
    {
      place: 'materials.*.chemistry.isocyanateIn',
      name: en`The isocyanate is in`,
      means: en`The tank with the isocyanate; it differs between countries, so it is asked.`,
      found: en`Label of the drum, and where its hose leads.`,
    },
    {
      place: 'materials.*.chemistry.index',
      name: en`Index, or % of stoichiometry`,
      means: en`How many groups of the one part come to a hundred of the other; 100 is one to one.`,
      found: en`Data sheet, or the formulator.`,
    },
    { place: row('name'), name: en`Ingredient`, means: en`What is weighed into the tank.`, found: en`The recipe of the tank.` },
    {
      place: row('parts'),
      name: en`Parts by weight`,
      means: en`How much of it is weighed in, against the others of this tank.`,
      found: en`The recipe. It may stay empty where one ingredient is alone.`,
    },
    {
      place: row('by'),
      name: en`Described by its`,
      means: en`The figure by which its sheet says how much of it reacts; a filler has none.`,
      found: en`Data sheet or certificate of the batch.`,
    },
    {
      place: row('value'),
      name: en`Figure of what reacts`,
      means: en`The figure itself, in the unit that stands at the box.`,
      found: en`Certificate of the batch, else the middle of the range in the data sheet.`,
      limits: limitsOf('value'),
    },
    {
      place: row('hydrogens'),
      name: en`Active hydrogens`,
      means: en`Hydrogens of one molecule that react.`,
      found: en`Structure in the data sheet: two for each −NH₂, one for each −NH−.`,
      limits: limitsOf('hydrogens'),
    },
    {
      place: row('factor'),
      name: en`Groups counted, as a factor`,
      means: en`What share of the anhydride groups is counted against one epoxide.`,
      found: en`Data sheet, or the formulator.`,
      limits: limitsOf('factor'),
    },
  ],
};
