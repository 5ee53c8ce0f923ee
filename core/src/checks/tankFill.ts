import { type BatchSide, batchOf } from '../batch.ts';
import { apart, type Check, notMade, type OptionSubject } from '../check.ts';
import { en } from '../en.ts';
import type { Judgement, Place } from '../finding.ts';
import { inUnit } from '../format.ts';
import { type Plan, SIDES, type Side, type SideName } from '../plan.ts';
import { type Fraction, ZERO } from '../ratio.ts';
import { amountText, atLeastText } from '../shown.ts';
import { aboveLowMark } from '../tanks.ts';

/** Without a batch there is nothing that the tanks could be too small for. */
export const tankFill: Check<OptionSubject> = {
  id: 'option.tankFill',
  title: en`Tank too low`,
  worst: 'warns',
  source: en`arithmetic: the batch against what stands above the low mark`,
  judge: (subject) => {
    const { plan } = subject;
    const batch = batchOf(plan, subject);
    return batch.known ? SIDES.flatMap((side) => ofSide(plan, plan.sides[side], batch.value[side])) : [];
  },
};

function ofSide(plan: Plan, side: Side, { volume }: BatchSide): readonly Judgement[] {
  const { name } = side;
  const above = aboveLowMark(side);
  if (!above.known)
    return [notMade(levelMissing(side), en`Tank ${name}: fill and low mark are not both given, so the batch was not checked.`)];
  if (!volume.known)
    return [notMade(densityMissing(plan, name), en`Tank ${name}: a density is not given, so the batch was not checked by volume.`)];
  const [wanted, there] = [volume.value.value, above.value.value];
  if (wanted.compare(there) <= 0) return [];
  return [
    {
      severity: 'warns',
      where: [...side.place, 'tank', 'fill'],
      what: (say) => {
        const litres = (value: Fraction, places = 0) => amountText(value, 'volume', say, places);
        const [takes, stands] = apart(wanted, there, 0, litres);
        const enough = wanted.add(side.lowMark_m3.known ? side.lowMark_m3.value : ZERO);
        return en`The batch takes ${takes} of ${name}; ${stands} stand above the low mark. Fill tank ${name} to ${atLeastText(enough, 'volume', say)}, or make less.`;
      },
      figure: { value: inLitres(wanted), unit: 'L' },
      limit: { value: inLitres(there), unit: 'L' },
    },
  ];
}

function densityMissing({ mix }: Plan, side: SideName): Place {
  const without = SIDES.find((one) => !mix.density_kg_per_m3[one].known) ?? side;
  return [...mix.place, without, 'density'];
}

function levelMissing({ place, fill_m3, lowMark_m3 }: Side): Place {
  if (!fill_m3.known && !lowMark_m3.known) return [...place, 'tank'];
  return [...place, 'tank', fill_m3.known ? 'lowMark' : 'fill'];
}

const inLitres = (volume_m3: Fraction): number => Number(inUnit(volume_m3, 'volume', 'L'));
