import { apart, type Check, notMade, type OptionSubject } from '../check.ts';
import { en } from '../en.ts';
import type { Judgement, Place } from '../finding.ts';
import { fixed } from '../format.ts';
import { type Plan, SIDES } from '../plan.ts';
import { pulsesPerMixer } from '../pulses.ts';
import { float, whole } from '../ratio.ts';

const LEAST_PULSES = whole(5);

const mixerPlace = ({ sides }: Plan): Place => [...sides.A.place.slice(0, -1), 'mixerVolume'];

/** A gear pump delivers in pulses; a mixer evens out only what it holds. */
export const pulses: Check<OptionSubject> = {
  id: 'option.pulses',
  title: en`Few pulses in mixer`,
  worst: 'warns',
  source: en`our choice: 5 pulses of either side in a mixer volume, each tooth counted once a turn`,
  judge: (subject) => {
    const { plan, pumps } = subject;
    if (!plan.mixerVolume_m3.known)
      return [notMade(mixerPlace(plan), en`The volume of the mixer is not given, so the pulses in it were not checked.`)];
    return SIDES.flatMap((side): readonly Judgement[] => {
      const found = pulsesPerMixer(plan, subject, side);
      if (!found.known)
        return [notMade([...pumps[side].place, 'gear'], en`Pump ${side}: its teeth are not given, so its pulses were not checked.`)];
      const { value } = found.value;
      if (value.compare(LEAST_PULSES) >= 0) return [];
      return [
        {
          severity: 'warns',
          where: mixerPlace(plan),
          what: (say) => {
            const [comes, enough] = apart(value, LEAST_PULSES, 1, (count, places) => fixed(count, places, say));
            return en`${side} comes in ${comes} pulses while the mixer fills once; under ${enough} leave streaks. Take a larger mixer, or a smaller or finer-toothed pump ${side} that turns faster.`;
          },
          figure: { value: float(value), unit: 'pulses' },
          limit: { value: float(LEAST_PULSES), unit: 'pulses' },
        },
      ];
    });
  },
};
