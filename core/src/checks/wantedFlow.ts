import { apart, type Check, notMade, type OptionSubject } from '../check.ts';
import { dialText } from '../dial.ts';
import { en } from '../en.ts';
import type { Judgement, Place } from '../finding.ts';
import { flowOf, type Setting } from '../flow.ts';
import { inUnit } from '../format.ts';
import type { Plan } from '../plan.ts';
import type { Fraction } from '../ratio.ts';
import { amountText } from '../shown.ts';
import { type Input, isWorked } from '../working.ts';

/** The ratio does not hang on the flow, so a flow out of reach never blocks. */
export const wantedFlow: Check<OptionSubject> = {
  id: 'option.wantedFlow',
  title: en`Flow out of reach`,
  worst: 'warns',
  source: en`flow at both ends of what the dial may be set to`,
  judge: (subject) => {
    const { plan } = subject;
    if (!plan.wantedFlow.known)
      return [
        notMade(
          [...plan.motor.place.slice(0, -1), 'wantedFlow'],
          en`The flow wanted is not given (a shot by mass needs both densities), so no dial setting is worked out.`,
        ),
      ];
    const { ends, setting } = flowOf(plan, subject);
    if (ends === null || setting === null) return [];
    const wanted = plan.wantedFlow.value;
    const [least, most] = [ends.from.total.value, ends.to.total.value];
    if (wanted.value.compare(least) < 0) return [outOfReach(plan, wanted, least, en`the least`, setting)];
    return wanted.value.compare(most) > 0 ? [outOfReach(plan, wanted, most, en`the most`, setting)] : [];
  },
};

function outOfReach({ motor }: Plan, wanted: Input<Fraction>, end: Fraction, word: string, { dial, total }: Setting): Judgement {
  return {
    severity: 'warns',
    where: wantedPlace(motor.place, wanted),
    what: (say) => {
      const [asked, reached] = apart(wanted.value, end, 0, (value, places) => amountText(value, 'flow', say, places));
      return en`${asked} is wanted, ${reached} is ${word} to be had. The ratio can be built, the flow not reached: take ${amountText(total.value, 'flow', say)} at ${dialText(dial.value, say)}, or other pumps.`;
    },
    figure: { value: inCc(wanted.value), unit: 'cc/min' },
    limit: { value: inCc(end), unit: 'cc/min' },
  };
}

/** What was worked out was given as a shot. */
const wantedPlace = (atMotor: Place, wanted: Input): Place => [...atMotor.slice(0, -1), isWorked(wanted) ? 'wantedShot' : 'wantedFlow'];

const inCc = (flow_m3_per_s: Fraction): number => Number(inUnit(flow_m3_per_s, 'flow', 'cc/min'));
