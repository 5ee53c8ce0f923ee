// Golden sentences: what every check says of options that are laid out on purpose where the limits are, and of machines of which
// little is given. They catch changes; that each limit is right is tested in the file of its check.
import { describe, expect, test } from 'vitest';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import type { Finding } from '../../core/src/finding.ts';
import { planOption } from '../../core/src/option.ts';
import type { Teeth } from '../../core/src/plan.ts';
import { changeSheet } from '../../core/src/sheet/changeSheet.ts';
import { driveDrawing } from '../../core/src/sheet/driveDrawing.ts';
import { driveSvg } from '../../core/src/sheet/driveSvg.ts';
import { sheetLines } from '../../core/src/sheet/sheetLines.ts';
import { stageFacts } from '../../core/src/stageFacts.ts';
import { fittedPumps, fittedTeeth } from '../../core/src/train.ts';
import { inLine, planOf, shopOf, stageRow } from './planFixture.ts';
import { bench, demoPlan, inch, metric, pair } from './sheet/demoSheet.ts';

const line = ({ severity, check, where, what, figure, limit, source, missing }: Finding): string => {
  const held = [figure, limit].map((one) => (one === null ? '-' : `${Number(one.value.toPrecision(9))} ${one.unit}`)).join(' / ');
  return `${severity}${missing ? ' (missing)' : ''} ${check} @ ${where.join('.')}\n  ${what.replaceAll('\u00a0', '~')}\n  ${held} [${source}]`;
};
const golden = (name: string): string => `../golden/findings-${name}.txt`;

/** Everything that a bench of the example is told about these teeth. */
function said(machine: string, material: string, all: readonly (readonly Teeth[])[], say = metric, change?: (file: ShopFile) => void) {
  const plan = demoPlan({ selection: { machine, material }, say, ...(change && { change }) });
  const texts = all.map((teeth) => {
    const { findings } = planOption(plan, fittedPumps(plan), teeth, say);
    return [`# ${teeth.map(({ driver, driven }) => `${driver} to ${driven}`).join('; ')}`, ...findings.map(line)].join('\n');
  });
  return `${texts.join('\n\n')}\n`;
}

const WIDE = [pair(23, 25), pair(35, 38), pair(11, 12), pair(60, 13), pair(13, 60), pair(5, 5), pair(40, 41)];

describe('the invented example', () => {
  test('one stage: from five teeth to more than the guard lets through', async () => {
    const text = said(
      'bench-1',
      'e12',
      WIDE.map((one) => [one]),
    );
    await expect(text).toMatchFileSnapshot(golden('bench-1-e12'));
  });
  test('two stages, in inches with a decimal comma', async () => {
    const text = said(
      'bench-2',
      'u40',
      WIDE.map((one) => [one, pair(26, 17)]),
      inch,
    );
    await expect(text).toMatchFileSnapshot(golden('bench-2-u40-inch'));
  });
  test('hard driven: much pressure, a weak motor, fast pumps, a thick chain of oil, worn pumps', async () => {
    const hard = (file: ShopFile): void => {
      const machine = bench(file, 'bench-1');
      machine.motor = { ...machine.motor, speed: { value: '1400', unit: 'rpm' }, ratedTorque: { value: '1', unit: 'N m' } };
      for (const side of [machine.A, machine.B]) {
        side.pressure = { value: '150', unit: 'bar' };
        for (const pump of side.pumps) {
          pump.pressureLimit = { value: '100', unit: 'bar' };
          pump.speedTo = { value: '500', unit: 'rpm' };
          pump.measuredDelivery = { value: { value: '80', unit: '%' }, uncertainty: { value: '1', unit: '%' } };
        }
      }
    };
    await expect(said('bench-1', 'e12', [[pair(23, 25)], [pair(13, 40)]], metric, hard)).toMatchFileSnapshot(golden('hard-driven'));
  });
});

test('a machine of which only teeth and displacements are given: everything that is not checked', async () => {
  const plan = planOf(shopOf(inLine([stageRow(20, 30), stageRow(17, 19)])));
  const { findings } = planOption(plan, fittedPumps(plan), fittedTeeth(plan), metric);
  await expect(`${findings.map(line).join('\n')}\n`).toMatchFileSnapshot(golden('little-given'));
});

test('a change sheet, and what the pages say of the stages, where nothing but teeth is given', async () => {
  const plan = planOf(shopOf(inLine([stageRow(20, 30), stageRow(17, 19)])));
  const fitted = planOption(plan, fittedPumps(plan), fittedTeeth(plan), metric);
  const option = planOption(plan, fittedPumps(plan), [pair(21, 30), pair(17, 19)], metric);
  const sheet = changeSheet(plan, option, fitted, { number: '0001', date: '24 Nov 2026', file: 'test.ratiowright', say: metric });
  const facts = option.stages.map((stage, index) => stageFacts(plan, stage, fitted.stages[index] ?? stage, metric));
  const drawn = driveSvg(driveDrawing(plan, option, fitted), metric).replaceAll('><', '>\n<');
  const all = [...sheetLines(sheet), JSON.stringify(facts, null, 1), drawn].join('\n').replaceAll('\u00a0', '~');
  await expect(`${all}\n`).toMatchFileSnapshot('../golden/change-sheet-little-given.txt');
});
