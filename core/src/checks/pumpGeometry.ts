import { type Check, notMade, type OptionSubject } from '../check.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { type Pump, SIDES, type SideName } from '../plan.ts';
import { aboveTypedShare, displacementOf, sizeMissing } from '../pumpGear.ts';
import { amountText } from '../shown.ts';
import type { Worked } from '../working.ts';

/** The textbook forms themselves differ by some 6 %. */
const MOST_APART_percent = 10;

const WORDS = {
  module_m: ['module', en`the module`],
  faceWidth_m: ['faceWidth', en`the face width`],
  outsideDiameter_m: ['outsideDiameter', en`the outside diameter`],
  insideDiameter_m: ['insideDiameter', en`the inside diameter`],
  centreDistance_m: ['centreDistance', en`the centre distance`],
} as const;

/** A displacement in the wrong unit, or of another pump, puts the whole ratio wrong; the gears betray it. */
export const pumpGeometry: Check<OptionSubject> = {
  id: 'option.pumpGeometry',
  title: en`Displacement against gears`,
  worst: 'warns',
  source: en`our choice: 10 %, since the textbook formulas for a gear pump differ by some 6 % among themselves`,
  judge: ({ pumps }) =>
    SIDES.flatMap((side) => {
      const byGears = displacementOf(pumps[side], side);
      return byGears.known ? apartFromTyped(side, pumps[side], byGears.value) : notChecked(side, pumps[side]);
    }),
};

function apartFromTyped(side: SideName, pump: Pump, byGears: Worked<number>): readonly Judgement[] {
  const apart_percent = 100 * aboveTypedShare(byGears, pump);
  if (Math.abs(apart_percent) <= MOST_APART_percent) return [];
  return [
    {
      severity: 'warns',
      where: [...pump.place, 'displacement'],
      what: (say) => {
        const typed = amountText(pump.displacement_m3_per_rev, 'displacement', say);
        const share = amountText(Math.abs(apart_percent) / 100, 'share', say, -1);
        const apart = apart_percent > 0 ? en`${share} more` : en`${share} less`;
        return en`Pump ${side}: ${typed} is typed; its gears make ${amountText(byGears.value, 'displacement', say)}, ${apart}. Look at the nameplate, the unit and the gear sizes.`;
      },
      figure: { value: apart_percent, unit: '%' },
      limit: { value: Math.sign(apart_percent) * MOST_APART_percent, unit: '%' },
    },
  ];
}

function notChecked(side: SideName, { gear }: Pump): readonly Judgement[] {
  const size = gear.known ? sizeMissing(gear.value) : null;
  if (!gear.known || size === null) return [];
  const [field, words] = WORDS[size];
  return [
    notMade([...gear.value.place, field], en`Pump ${side}: ${words} of its gears is not given, so its displacement was not checked.`),
  ];
}
