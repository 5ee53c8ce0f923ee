import { apart, type Check, notMade, type OptionSubject } from '../check.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { inUnit } from '../format.ts';
import { type Pump, SIDES, type Side } from '../plan.ts';
import type { Fraction } from '../ratio.ts';
import { amountText } from '../shown.ts';

export const pumpPressure: Check<OptionSubject> = {
  id: 'option.pumpPressure',
  title: en`Pump pressure`,
  worst: 'blocks',
  source: en`pressure limits of the pumps, as given`,
  judge: ({ plan, pumps }) => SIDES.flatMap((side) => ofSide(plan.sides[side], pumps[side])),
};

function ofSide({ name, place, pressure_Pa }: Side, { place: atPump, pressureLimit_Pa }: Pump): readonly Judgement[] {
  if (!pressureLimit_Pa.known)
    return [notMade([...atPump, 'pressureLimit'], en`Pump ${name}: its pressure limit is not given, and so not checked.`)];
  if (!pressure_Pa.known) return [notMade([...place, 'pressure'], en`Pump ${name}: its pressure is not given, and so not checked.`)];
  const [pressure, limit] = [pressure_Pa.value, pressureLimit_Pa.value];
  if (pressure.compare(limit) <= 0) return [];
  return [
    {
      severity: 'blocks',
      where: [...place, 'pressure'],
      what: (say) => {
        const [found, allowed] = apart(pressure, limit, 0, (value, places) => amountText(value, 'pressure', say, places));
        return en`Pump ${name} works against ${found}; it stands ${allowed}. Lower the pressure, or take a pump that stands it.`;
      },
      figure: { value: inBar(pressure), unit: 'bar' },
      limit: { value: inBar(limit), unit: 'bar' },
    },
  ];
}

const inBar = (pressure_Pa: Fraction): number => Number(inUnit(pressure_Pa, 'pressure', 'bar'));
