import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { optionFacts } from '../../core/src/facts/index.ts';
import type { MachineRow } from '../../core/src/file/machine.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { planOption } from '../../core/src/option.ts';
import type { Plan } from '../../core/src/plan.ts';
import { fittedPumps, fittedTeeth } from '../../core/src/train.ts';
import { mm, planOf, pumpRow, say } from '../core/planFixture.ts';
import { chainOf } from '../core/printedFormula.ts';
import { bench, demoFile } from '../core/sheet/demoSheet.ts';
import { codeOf, filesUnder } from './sources.ts';

const namesUnder = (folder: string, ending: string) =>
  filesUnder(folder, ending)
    .map((place) => path.posix.basename(place, ending))
    .sort();
const files = namesUnder('core/src/facts', '.ts').filter((name) => name !== 'index');

/** Bench 1 with all that a machine may say: sizes of a gear, a measured delivery, a batch, a chain with a published rating. */
function told(file: ShopFile): void {
  const machine: MachineRow = bench(file, 'bench-1');
  const gear = { teeth: 12, module: mm('3'), faceWidth: mm('20'), gapWidth: mm('20'), gapLength: mm('3') };
  const measuredDelivery = { value: { value: '98.97', unit: '%' }, uncertainty: { value: '0.38', unit: '%' } };
  machine.A.pumps = [pumpRow('pa12', '12', { gear })];
  machine.B.pumps = [pumpRow('pb6', '6', { measuredDelivery })];
  machine.batch = { of: 'A', amount: { value: '10', unit: 'L' } };
  for (const stage of machine.stages) stage.size = '40';
}

const example = (name: string): ShopFile => {
  const read = readShopFile(readFileSync(new URL(`../examples/${name}.ratiowright`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(`${name} does not open`);
  return read.value;
};
const plansOf = (name: string, file: ShopFile): readonly (readonly [string, Plan])[] =>
  file.machines.flatMap(({ id: machine }) =>
    file.materials.map(({ id: material }) => [`${name}, ${machine}, ${material}`, planOf(file, { machine, material })] as const),
  );
const PLANS = [
  ...['demo', 'four-gear', 'three-pair'].flatMap((name) => plansOf(name, example(name))),
  ...plansOf('all told', demoFile(told)),
];
const groupsOf = (plan: Plan) => optionFacts(plan, planOption(plan, fittedPumps(plan), fittedTeeth(plan), say), say);

test('every file of figures is in the list once, under its own name, and has a test', () => {
  const [, list = ''] = /GROUPS\b[\s\S]*?= \[([^\]]*)\];/.exec(codeOf('core/src/facts/index.ts')) ?? [];
  expect((list.match(/\w+/g) ?? []).toSorted()).toEqual(files);
  expect(namesUnder('tests/core/facts', '.test.ts')).toEqual(files);
});

test('where all is told, every file of figures has something to say', () => {
  const most = Math.max(...PLANS.map(([, plan]) => groupsOf(plan).length));
  expect(most).toBe(files.length);
});

/** What is no result: words, what is missing, and what was typed or read off and stands as it is. */
const WITHOUT_WORKING = [
  'budget.lacking',
  'budget.pumpA',
  'budget.pumpB',
  'budget.verdict',
  'drift.lacking',
  'pumps.deliveryB',
  'tanks.batchVolumeA',
];

describe.each(PLANS)('figures of what is fitted: %s', (_name, plan) => {
  const groups = groupsOf(plan);
  const facts = groups.flatMap((group) => group.facts.map((fact) => ({ ...fact, path: `${group.id}.${fact.id}` })));

  test('each is found under an id of its own', () => {
    expect(groups.map(({ id }) => id)).toEqual([...new Set(groups.map(({ id }) => id))]);
    const paths = facts.map((fact) => fact.path);
    expect(paths.filter((one, index) => paths.indexOf(one) !== index)).toEqual([]);
    for (const one of paths) expect(one).toMatch(/^[a-z][A-Za-z]*(\.[a-z][A-Za-z0-9-]*)?\.[a-z][A-Za-z0-9]*$/);
  });
  test('each has its name and its figure', () => {
    for (const { title } of groups) expect(title).toMatch(/^[A-Z].{2,}/);
    for (const { path: one, what, figure } of facts) {
      expect(what.trim().length, one).toBeGreaterThan(3);
      expect(figure.trim(), one).not.toBe('');
      expect(`${what} ${figure}`, one).not.toMatch(/undefined|NaN|Infinity|\[object/);
    }
  });
  test('a source stands at every step of how it came about', () => {
    for (const { path: one, working } of facts)
      for (const { formula } of working === null ? [] : chainOf(working)) expect(formula.source.trim().length, one).toBeGreaterThan(6);
  });
});

test('every figure that was worked out shows how', () => {
  const unworked = PLANS.flatMap(([, plan]) =>
    groupsOf(plan).flatMap(({ id, facts }) => facts.filter(({ working }) => working === null).map((fact) => `${id}.${fact.id}`)),
  );
  expect([...new Set(unworked)].sort()).toEqual(WITHOUT_WORKING);
});
