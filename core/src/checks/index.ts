import type { Check, OptionSubject, PairSubject } from '../check.ts';
import { blankBore } from './blankBore.ts';
import { bore } from './bore.ts';
import { budget } from './budget.ts';
import { centre } from './centre.ts';
import { clearance } from './clearance.ts';
import { commonFactor } from './commonFactor.ts';
import { delivery } from './delivery.ts';
import { fewTeeth } from './fewTeeth.ts';
import { guard } from './guard.ts';
import { loopPull } from './loopPull.ts';
import { lubrication } from './lubrication.ts';
import { motorTorque } from './motorTorque.ts';
import { pitchCount } from './pitchCount.ts';
import { powerRating } from './powerRating.ts';
import { pulses } from './pulses.ts';
import { pumpGeometry } from './pumpGeometry.ts';
import { pumpPressure } from './pumpPressure.ts';
import { pumpSpeed } from './pumpSpeed.ts';
import { quantity } from './quantity.ts';
import { slip } from './slip.ts';
import { slotTeeth } from './slotTeeth.ts';
import { tankFill } from './tankFill.ts';
import { travel } from './travel.ts';
import { wantedFlow } from './wantedFlow.ts';
import { wrap } from './wrap.ts';

/** Judged once for every pair of wheels of a stage. */
export const pairChecks: readonly Check<PairSubject>[] = [
  slotTeeth,
  bore,
  pitchCount,
  centre,
  travel,
  wrap,
  clearance,
  guard,
  fewTeeth,
  commonFactor,
];

/** Judged when an option is laid out, because they look across the stages. */
export const optionChecks: readonly Check<OptionSubject>[] = [
  quantity,
  blankBore,
  pumpSpeed,
  pumpPressure,
  motorTorque,
  loopPull,
  powerRating,
  lubrication,
  wantedFlow,
  budget,
  delivery,
  pumpGeometry,
  slip,
  pulses,
  tankFill,
];
