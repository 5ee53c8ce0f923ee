import { apart, type Check, notMadeWithout, type OptionSubject } from '../check.ts';
import { en } from '../en.ts';
import type { Judgement } from '../finding.ts';
import { lacking } from '../load/missing.ts';
import { torquesOf } from '../load/torque.ts';
import { float } from '../ratio.ts';
import { amountText } from '../shown.ts';

export const motorTorque: Check<OptionSubject> = {
  id: 'option.motorTorque',
  title: en`Motor overloaded`,
  worst: 'blocks',
  source: en`rated torque of the motor as given; T = Δp·D/(2π·η) at each pump, 0.98 a stage (common practice, no source)`,
  judge: ({ plan, pumps, teeth }) => {
    const { place, ratedTorque_N_m: rated } = plan.motor;
    const { motor } = torquesOf(plan, { pumps, teeth });
    if (!rated.known || !motor.known) {
      const missing = [...(rated.known ? [] : lacking(place, ['ratedTorque'], en`the motor`)), ...(motor.known ? [] : motor.missing)];
      return notMadeWithout(missing, en`the load of the motor was not checked`);
    }
    const asked_N_m = motor.value.value;
    const rated_N_m = float(rated.value);
    return asked_N_m <= rated_N_m ? [] : [overloaded([...place, 'ratedTorque'], asked_N_m, rated_N_m)];
  },
};

function overloaded(where: Judgement['where'], asked_N_m: number, rated_N_m: number): Judgement {
  return {
    severity: 'blocks',
    where,
    what: (say) => {
      const [asked, rated] = apart(asked_N_m, rated_N_m, 0, (torque, more) => amountText(torque, 'torque', say, more));
      return en`The pumps ask ${asked} of the motor, which is rated for ${rated}. Lower the pressures, take a smaller pump, or turn the pumps more slowly for each turn of the motor.`;
    },
    figure: { value: asked_N_m, unit: 'N m' },
    limit: { value: rated_N_m, unit: 'N m' },
  };
}
