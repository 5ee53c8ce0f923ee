import { percentOf } from '../dial.ts';
import { flowOf, type Running, type Setting } from '../flow.ts';
import { fixed, type Say, signed } from '../format.ts';
import type { PlannedOption } from '../option.ts';
import { type Plan, SIDES } from '../plan.ts';
import { amountText } from '../shown.ts';
import type { RatioRow } from './ratioRows.ts';

/** What is set and watched once the change is made: dial, flows, speeds; one line each. */
export function runningRows(plan: Plan, option: PlannedOption, say: Say): readonly RatioRow[] {
  const { setting, ends } = flowOf(plan, option);
  if (setting !== null) return settingRows(setting, say);
  return ends === null ? [] : rangeRows(ends, say);
}

const percent = (share: Running['dial'], say: Say): string => {
  const value = percentOf(share.value);
  return `${fixed(value, value.d === 1n ? 0 : 1, say)}\u00A0%`;
};

const bySide = (running: Running, of: 'flow' | 'pumpSpeed', say: Say): string =>
  SIDES.map((side) => `${side} ${amountText(running[of][side].value, of === 'flow' ? 'flow' : 'speed', say)}`).join(', ');

function settingRows(setting: Setting, say: Say): readonly RatioRow[] {
  const wanted = setting.wanted.put.find(([letter]) => letter === 'Q')?.[1];
  const cost = `${signed(percentOf(setting.cost.value), 2, say)}\u00A0%`;
  return [
    {
      what: 'Dial',
      figure: percent(setting.dial, say),
      against: `flow ${amountText(setting.total.value, 'flow', say)}: ${bySide(setting, 'flow', say)}${wanted === undefined ? '' : `; wanted ${amountText(wanted.value, 'flow', say)}, rounding ${cost}`}`,
    },
    {
      what: 'Speeds',
      figure: `motor ${amountText(setting.motorSpeed.value, 'speed', say)}`,
      against: `pump ${bySide(setting, 'pumpSpeed', say)}`,
    },
  ];
}

const rangeRows = ({ from, to }: { readonly from: Running; readonly to: Running }, say: Say): readonly RatioRow[] => [
  {
    what: 'Flow',
    figure: `dial ${percent(from.dial, say)} to ${percent(to.dial, say)}`,
    against: `${amountText(from.total.value, 'flow', say)} to ${amountText(to.total.value, 'flow', say)}; at most ${bySide(to, 'flow', say)}`,
  },
];
