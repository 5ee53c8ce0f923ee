import { budgetOf, VERDICT_WORDS } from '../budget.ts';
import { dialText } from '../dial.ts';
import { en } from '../en.ts';
import { tankFacts } from '../facts/tankFacts.ts';
import { flowOf, type Running, type Setting } from '../flow.ts';
import { type Say, signedPercentText, signedRangeText } from '../format.ts';
import { ratedShare, torquesOf } from '../load/torque.ts';
import type { PlannedOption } from '../option.ts';
import { type Plan, SIDES } from '../plan.ts';
import { amountText } from '../shown.ts';
import { runsLow } from '../tanks.ts';
import { inFloat, input } from '../working.ts';
import type { RatioRow } from './ratioRows.ts';

/** What is set and watched once the change is made: dial, flows, speeds; one line each. */
export function runningRows(plan: Plan, option: PlannedOption, say: Say): readonly RatioRow[] {
  const { setting, ends } = flowOf(plan, option);
  const flow = setting !== null ? settingRows(plan, setting, say) : ends === null ? [] : rangeRows(ends, say);
  return [...flow, ...loadRows(plan, option, say), ...budgetRows(plan, option, say), ...tankRows(plan, option, say)];
}

/** Only what is known: what is not given is counted among the checks that were not made. */
function loadRows(plan: Plan, option: PlannedOption, say: Say): readonly RatioRow[] {
  const { motor } = torquesOf(plan, option);
  const { ratedTorque_N_m: rated } = plan.motor;
  if (!motor.known) return [];
  const share = rated.known ? ratedShare(motor.value, inFloat(input(en`rated torque`, rated.value, 'torque'))) : null;
  const against = share === null ? en`rating not given` : en`${amountText(share.value, 'share', say, -1)} of its rating`;
  return [{ what: en`Load`, figure: en`motor ${amountText(motor.value.value, 'torque', say)}`, against }];
}

function budgetRows(plan: Plan, option: PlannedOption, say: Say): readonly RatioRow[] {
  const { from, to, likely, verdict, contributions } = budgetOf(plan, option);
  if (contributions.length === 0) return [];
  return [
    {
      what: en`Worst case`,
      figure: signedRangeText(from.value, to.value, say),
      against: [
        en`likely ±${amountText(likely.value, 'share', say)} about the off-ratio`,
        ...(verdict === null ? [] : [VERDICT_WORDS[verdict]]),
      ].join('; '),
    },
  ];
}

function tankRows(plan: Plan, option: PlannedOption, say: Say): readonly RatioRow[] {
  const facts = new Map(tankFacts(plan, option, say).facts.map((one) => [one.id, one]));
  const bothSides = (...ids: readonly string[]) =>
    SIDES.flatMap((side) => {
      const figure = ids.map((id) => facts.get(id + side)?.figure).find((one) => one !== undefined);
      return figure === undefined ? [] : [`${side} ${figure}`];
    }).join(', ');
  const low = runsLow(plan, option);
  const together =
    low.known && !low.value.together
      ? en`fill ${low.value.other} to ${amountText(low.value.fill.value, 'volume', say)} and both run out together`
      : '';
  const rows: readonly RatioRow[] = [
    { what: en`To low mark`, figure: bothSides('lasts'), against: together },
    { what: en`Batch`, figure: bothSides('batchMass', 'batchVolume'), against: en`at the ratio as made` },
  ];
  return rows.filter(({ figure }) => figure !== '');
}

const bySide = (running: Running, of: 'flow' | 'pumpSpeed', say: Say): string =>
  SIDES.map((side) => `${side} ${amountText(running[of][side].value, of === 'flow' ? 'flow' : 'speed', say)}`).join(', ');

function settingRows({ wantedFlow }: Plan, setting: Setting, say: Say): readonly RatioRow[] {
  const cost = signedPercentText(setting.cost.value, say);
  const wanted = wantedFlow.known ? [en`wanted ${amountText(wantedFlow.value.value, 'flow', say)}, rounding ${cost}`] : [];
  return [
    {
      what: en`Dial`,
      figure: dialText(setting.dial.value, say),
      against: [en`flow ${amountText(setting.total.value, 'flow', say)}: ${bySide(setting, 'flow', say)}`, ...wanted].join('; '),
    },
    {
      what: en`Speeds`,
      figure: en`motor ${amountText(setting.motorSpeed.value, 'speed', say)}`,
      against: en`pump ${bySide(setting, 'pumpSpeed', say)}`,
    },
  ];
}

const rangeRows = ({ from, to }: { readonly from: Running; readonly to: Running }, say: Say): readonly RatioRow[] => [
  {
    what: en`Flow`,
    figure: en`dial ${dialText(from.dial.value, say)} to ${dialText(to.dial.value, say)}`,
    against: en`${amountText(from.total.value, 'flow', say)} to ${amountText(to.total.value, 'flow', say)}; at most ${bySide(to, 'flow', say)}`,
  },
];
