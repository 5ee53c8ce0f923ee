import { DIAL, dialText } from '../dial.ts';
import { en } from '../en.ts';
import { flowOf, type Running, type Setting } from '../flow.ts';
import { type Say, signedPercentText } from '../format.ts';
import { type Build, type Plan, SIDES } from '../plan.ts';
import { amountText } from '../shown.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

/** Dial, speeds and flows: at the setting for the flow wanted, and over what the dial may be set to. */
export function flowFacts(plan: Plan, build: Build, say: Say): FactGroup {
  const { ends, setting } = flowOf(plan, build);
  return {
    id: 'flow',
    title: en`Flow and speed`,
    facts: [
      ...(setting === null ? [] : settingFacts(setting, say)),
      ...(ends === null ? [] : [rangeFact('from', ends.from, say), rangeFact('to', ends.to, say)]),
    ],
  };
}

function settingFacts(setting: Setting, say: Say): readonly Fact[] {
  const { dial, cost } = setting;
  return [
    // The name of a setting that is not the nearest step says why not.
    fact('dial', dial, say, { what: DIAL, figure: dialText(dial.value, say), note: dial.what === DIAL ? '' : dial.what }),
    fact('total', setting.total, say),
    fact('cost', cost, say, { figure: signedPercentText(cost.value, say) }),
    ...SIDES.map((side) => fact(`flow${side}`, setting.flow[side], say)),
    fact('motorSpeed', setting.motorSpeed, say),
    ...SIDES.map((side) => fact(`speed${side}`, setting.pumpSpeed[side], say)),
  ];
}

function rangeFact(id: 'from' | 'to', running: Running, say: Say): Fact {
  const flows = SIDES.map((side) => `${side} ${amountText(running.flow[side].value, 'flow', say)}`).join(', ');
  const dial = dialText(running.dial.value, say);
  const what = id === 'from' ? en`flow at the least the dial may show, ${dial}` : en`flow at the most the dial may show, ${dial}`;
  return fact(id, running.total, say, { what, note: flows });
}
