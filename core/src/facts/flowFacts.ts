import { percentOf } from '../dial.ts';
import { flowOf, type Running, type Setting } from '../flow.ts';
import { fixed, type Say, signed } from '../format.ts';
import { type Build, type Plan, SIDES } from '../plan.ts';
import { amountText } from '../shown.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

/** Dial, speeds and flows: at the setting for the flow wanted, and over what the dial may be set to. */
export function flowFacts(plan: Plan, build: Build, say: Say): FactGroup {
  const { ends, setting } = flowOf(plan, build);
  return {
    id: 'flow',
    title: 'Flow and speed',
    facts: [
      ...(setting === null ? [] : settingFacts(setting, say)),
      ...(ends === null ? [] : [...rangeFacts('from', 'least', ends.from, say), ...rangeFacts('to', 'most', ends.to, say)]),
    ],
  };
}

function settingFacts(setting: Setting, say: Say): readonly Fact[] {
  const rounding = `rounding costs ${signed(percentOf(setting.cost.value), 2, say)}\u00A0%`;
  return [
    fact('dial', setting.dial, say, {
      what: 'dial',
      figure: `${fixed(percentOf(setting.dial.value), 1, say)}\u00A0%`,
      note: setting.dial.what,
    }),
    fact('total', setting.total, say),
    fact('cost', setting.cost, say, { figure: rounding.replace('rounding costs ', '') }),
    ...SIDES.map((side) => fact(`flow${side}`, setting.flow[side], say)),
    fact('motorSpeed', setting.motorSpeed, say),
    ...SIDES.map((side) => fact(`speed${side}`, setting.pumpSpeed[side], say)),
  ];
}

function rangeFacts(id: string, word: string, running: Running, say: Say): readonly Fact[] {
  const flows = SIDES.map((side) => `${side} ${amountText(running.flow[side].value, 'flow', say)}`).join(', ');
  return [
    fact(id, running.total, say, {
      what: `flow at the ${word} the dial may show, ${fixed(percentOf(running.dial.value), 1, say)}\u00A0%`,
      note: flows,
    }),
  ];
}
