import { en } from '../en.ts';
import { flowOf, type Setting } from '../flow.ts';
import { type Say, signed } from '../format.ts';
import { type Build, type Plan, SIDES, type SideName } from '../plan.ts';
import { pulsesPerMixer, pulsesPerSecond, rippleOf } from '../pulses.ts';
import { aboveTypedShare, displacementOf } from '../pumpGear.ts';
import { amountText } from '../shown.ts';
import { slipShare, slipText } from '../slip.ts';
import { input } from '../working.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

/** What is known of the pumps themselves: displacement by their gears, pulses and ripple, slip or the delivery that was measured. */
export function pumpFacts(plan: Plan, build: Build, say: Say): FactGroup {
  const { setting } = flowOf(plan, build);
  const facts = SIDES.flatMap((side) => [
    ...gearFacts(build, side, say),
    ...pulseFacts(plan, build, setting, side, say),
    ...lossFacts(plan, build, side, say),
  ]);
  return { id: 'pumps', title: en`Pumps`, facts };
}

function gearFacts({ pumps }: Build, side: SideName, say: Say): readonly Fact[] {
  const byGears = displacementOf(pumps[side], side);
  if (!byGears.known) return [];
  const typed = amountText(pumps[side].displacement_m3_per_rev, 'displacement', say);
  const apart = `${signed(100 * aboveTypedShare(byGears.value, pumps[side]), 1, say)}\u00A0%`;
  return [fact(`displacement${side}`, byGears.value, say, { note: en`typed ${typed}; by the gears ${apart}` })];
}

function pulseFacts(plan: Plan, build: Build, setting: Setting | null, side: SideName, say: Say): readonly Fact[] {
  const pump = build.pumps[side];
  const inMixer = pulsesPerMixer(plan, build, side);
  const perSecond = setting === null ? null : pulsesPerSecond(pump, side, setting.pumpSpeed[side]);
  const ripple = rippleOf(pump, side);
  return [
    ...(inMixer.known
      ? [fact(`mixerPulses${side}`, inMixer.value, say, { figure: amountText(inMixer.value.value, 'number', say, -3) })]
      : []),
    ...(perSecond?.known ? [fact(`pulses${side}`, perSecond.value, say)] : []),
    ...(ripple.known ? [fact(`ripple${side}`, ripple.value, say, { figure: amountText(ripple.value.value, 'share', say, -1) })] : []),
  ];
}

function lossFacts(plan: Plan, build: Build, side: SideName, say: Say): readonly Fact[] {
  const { delivery, asMeasured } = build.pumps[side];
  if (delivery.known) {
    const { share: delivered, uncertainty } = delivery.value;
    const give = uncertainty.known ? `, ±${amountText(uncertainty.value, 'share', say)}` : '';
    const note = asMeasured ? en`as measured${give}; counted in the ratio` : en`as measured${give}; not counted in the ratio`;
    return [fact(`delivery${side}`, input(en`delivery of pump ${side}`, delivered, 'share'), say, { note })];
  }
  const slip = slipShare(plan, build, side);
  if (!slip.known) return [];
  const { least, atGap, most } = slip.value;
  return [
    fact(`slip${side}`, most, say, {
      what: en`slip of pump ${side}, estimated`,
      figure: en`${slipText(least.value, say)} to ${slipText(most.value, say)}`,
      note: en`${slipText(atGap.value, say)} at the usual gap; in proportion to pressure over viscosity`,
    }),
  ];
}
