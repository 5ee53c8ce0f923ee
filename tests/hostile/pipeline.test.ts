import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buy } from '../../core/cli/buy.ts';
import { readFlags } from '../../core/cli/flags.ts';
import { optionsText } from '../../core/cli/optionsText.ts';
import { quoteText } from '../../core/cli/quoteText.ts';
import { reach } from '../../core/cli/reach.ts';
import { sheetPage } from '../../core/cli/sheetPage.ts';
import { tryRatio } from '../../core/cli/tryRatio.ts';
import { answer } from '../../core/src/answer.ts';
import { planWindowLevels } from '../../core/src/buying/index.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { resolve } from '../../core/src/file/resolve.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { answerJson } from '../../core/src/json.ts';
import { ratioOf, whole } from '../../core/src/ratio.ts';
import { bestPerChange, findOptions, type Hooks, type Rules, tradeOff } from '../../core/src/search/index.ts';
import { stageOf, teethFrom, trainProblem } from '../core/search/racks.ts';
import { demoPlan } from '../file/demoPlan.ts';
import { say } from '../file/shop.ts';
import { planFiles } from './planFiles.ts';

// Whatever a valid file holds: every command answers, and what it says can be read.

function call(...args: readonly string[]) {
  const read = readFlags(args);
  if (read.kind !== 'call') throw new Error(read.kind === 'bad' ? read.problems.join('\n') : 'help');
  return read.call;
}

const UNREADABLE = /undefined|\bNaN\b|Infinity|\[object|[\p{Bidi_Control}\p{Cs}]|(?![\r\n])\p{Cc}/u;

describe('random plans, each through every command', () => {
  /** The first machine with the first material; every text that comes out of it. */
  function texts(file: ShopFile): readonly string[] {
    const [machine, material] = [file.machines[0]?.id ?? '', file.materials[0]?.id ?? ''];
    const about = ['x.ratiowright', '--machine', machine];
    const one = [...about, '--material', material];
    const said: string[] = [];
    const found = answer(file, { selection: { machine, material }, say });
    if (!found.ok) return found.findings.map(({ what }) => what);
    const option = found.value.options[0] ?? found.value.fitted;
    said.push(optionsText(found.value, 12, 'closest', say));
    said.push(JSON.stringify(answerJson({ ...found.value, options: found.value.options.slice(0, 1) }, true)));
    said.push(sheetPage(found.value, option, call('sheet', ...one, '--out', 'a.html', '--workings')));
    const asked = call('quote', ...one, '--window', '1:5', '--comma', '--inch');
    const made = asked.window && quoteText(file, asked.window, asked);
    if (made?.ok) said.push(made.value.text, made.value.html());
    const reaches = [
      ['--window', '1:5', '--ratios'],
      ['--window', '1/10000:10000', '--tolerance', '0.001', '--best', '--json'],
    ];
    const answers = [
      ...reaches.map((wish) => reach(file, call('reach', ...one, ...wish))),
      buy(file, call('buy', ...about, '--teeth', '12-30', '--most', '2')),
      buy(file, call('buy', ...about, '--teeth', '12-20', '--most', '1', '--window', '1:5')),
    ];
    for (const outcome of answers) said.push(...(outcome.ok ? [outcome.value.text] : outcome.findings.map(({ what }) => what)));
    const plan = resolve(file, { machine, material }, say);
    const tried = plan.ok ? tryRatio(file, plan.value, '3:1', call('options', ...one, '--try', '3:1')) : null;
    if (tried !== null) said.push(tried.ok ? tried.value.text : tried.expected);
    return said;
  }

  test('they resolve, and nothing that is said of them is a fault of ours', () => {
    let resolved = 0;
    fc.assert(
      fc.property(planFiles, (file) => {
        expect(readShopFile(JSON.stringify(file))).toMatchObject({ ok: true });
        const said = texts(file);
        resolved += Number(said.length > 5);
        for (const text of said) expect(UNREADABLE.exec(text)?.[0], text.slice(0, 400)).toBeUndefined();
      }),
      { numRuns: 25, seed: 7 },
    );
    expect(resolved).toBeGreaterThan(20);
  });
});

describe('a search that finds nothing takes few passes', () => {
  /** Passes over the cells ask each time whether to go on, and rules every thousandth option. */
  function askedToGoOn(work: (hooks: Hooks, rules: Rules) => unknown): number {
    let asked = 0;
    work({ cancelled: () => ++asked < 0 }, { admit: () => null });
    return asked;
  }
  const wide = trainProblem(ratioOf(100, 217), [stageOf('B', teethFrom(13, 140))]);

  test.each([
    ['the list', (hooks: Hooks, rules: Rules) => findOptions(wide, rules, 200, hooks)],
    ['the best for each number of parts', (hooks: Hooks, rules: Rules) => bestPerChange(wide, rules, hooks)],
    ['the trade-off', (hooks: Hooks, rules: Rules) => tradeOff(wide, rules, hooks)],
  ])('%s: 16 thousand options, all refused by a rule across the stages', (_, work) => {
    expect(askedToGoOn(work)).toBeLessThan(400);
  });
  test('where nothing can be built at all, only the list is asked for', () => {
    const blocked = { ...wide, pumps: wide.pumps.map((pump) => ({ ...pump, failed: 1 })) };
    for (const work of [findOptions(blocked, { admit: () => 0 }, 5).options, tradeOff(blocked, { admit: () => 0 })])
      expect(work).toEqual([]);
  });
});

test('a machine on which a closed stage fails a check has no plan for a window, and says so', () => {
  const plan = demoPlan({ machine: 'bench-1', material: 'e12' });
  const shut = plan.stages.map((stage) => ({
    ...stage,
    open: false,
    driven: { ...stage.driven, teeth: 300, teethTo: { known: true, value: 40 } as const },
  }));
  const levels = planWindowLevels(
    { ...plan, stages: shut },
    { low: whole(2), high: whole(3), tolerance: ratioOf(1, 50) },
    { teeth: { from: 13, to: 20 }, mostPurchases: 1 },
  );
  expect(levels.within.fewestPurchases).toBeNull();
  expect(levels.levels.map(({ offRatio }) => offRatio)).toEqual([null, null]);
});
