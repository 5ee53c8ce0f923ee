// Golden workings of machines and materials of which everything is given, in each of the ways in which it can be given. They catch
// changes of a figure, of what was put in, or of its words; what is true of them is tested in the files of their subjects.
import { describe, expect, test } from 'vitest';
import { optionFacts } from '../../core/src/facts/index.ts';
import type { MachineRow } from '../../core/src/file/machine.ts';
import type { MaterialRow } from '../../core/src/file/material.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { type WorkingGroup, workingGroups } from '../../core/src/sheet/workingPage.ts';
import { bench, demoFile, E12_ON_BENCH_1, made, metric } from './sheet/demoSheet.ts';

const golden = (name: string): string => `../golden/workings-${name}.txt`;
const mm = (value: string) => ({ value, unit: 'mm' });
const of = (value: string, unit: string) => ({ value, unit });
const lines = (groups: readonly WorkingGroup[]): string =>
  `${groups
    .flatMap(({ title, workings }) => [
      `# ${title}`,
      ...workings.flatMap(({ number, what, result, lines: written, put, source }) => [
        `${number} ${what}: ${result}`,
        ...[...written, ...put, source].map((line) => `  ${line}`),
      ]),
    ])
    .join('\n')
    .replaceAll('\u00a0', '~')}\n`;

/** Bench 1 with all there is to say of its pumps; how much is wanted of it as a test says. */
function machine(wanted: Pick<MachineRow, 'wantedShot' | 'batch'>, more: Partial<MachineRow> = {}) {
  return (file: ShopFile): void => {
    const one = bench(file, 'bench-1');
    delete one.wantedFlow;
    Object.assign(one, wanted, more);
    for (const side of [one.A, one.B])
      for (const pump of side.pumps) {
        pump.pressureLimit = of('100', 'bar');
        pump.gear = {
          teeth: 12,
          module: mm('2'),
          faceWidth: mm('20'),
          gapWidth: mm('18'),
          gapLength: mm('30'),
          outsideDiameter: mm('28'),
          insideDiameter: mm('19'),
          centreDistance: mm('24'),
        };
        pump.newDelivery = of('98', '%');
        pump.leastDelivery = of('90', '%');
      }
  };
}
const measured = (file: ShopFile): void => {
  const one = bench(file, 'bench-1');
  one.search = { ...one.search, asMeasured: true };
  for (const side of [one.A, one.B])
    for (const pump of side.pumps) pump.measuredDelivery = { value: of('97', '%'), uncertainty: of('0.4', '%') };
};
/** The groups that the change concerns; the others stand in the golden workings of the example as it is. */
const workingsOf = (change: (file: ShopFile) => void, ...titles: readonly string[]) => {
  const { plan, option } = made({ ...E12_ON_BENCH_1, change });
  const groups = workingGroups(optionFacts(plan, option, metric), metric);
  return lines(groups.filter(({ title }) => titles.includes(title)));
};
const MACHINE = ['Flow and speed', 'Pumps', 'Tanks and batch'];
const MIX = ['Mix ratio', 'Off-ratio budget'];
/** A material in place of the first, on the same parts. */
const material = (row: (first: MaterialRow) => Partial<MaterialRow>) => (file: ShopFile) => {
  const [first] = file.materials;
  if (first === undefined) throw new Error('no material');
  const { ratio: _, ...rest } = first;
  file.materials[0] = { ...rest, ...row(first) };
};

describe('how much is wanted', () => {
  test('a shot by mass, and a batch of so much A by mass', async () => {
    const change = machine({ wantedShot: { amount: of('400', 'g'), time: of('30', 's') }, batch: { of: 'A', amount: of('20', 'kg') } });
    await expect(workingsOf(change, ...MACHINE)).toMatchFileSnapshot(golden('shot-by-mass'));
  });
  test('a shot by volume, and a batch of the mix by volume; deliveries as measured', async () => {
    const change = machine({ wantedShot: { amount: of('1', 'L'), time: of('1', 'min') }, batch: { of: 'mix', amount: of('10', 'L') } });
    const both = (file: ShopFile) => {
      change(file);
      measured(file);
    };
    await expect(workingsOf(both, ...MACHINE)).toMatchFileSnapshot(golden('shot-by-volume-as-measured'));
  });
});

describe('how the mix is given', () => {
  const third = { name: 'Filler', density: { value: of('1.8', 'g/cm3'), at: of('25', '°C') }, expansion: of('0.0002', '1/K') };
  test.each<[string, (first: MaterialRow) => Partial<MaterialRow>]>([
    ['by-volume-at', () => ({ ratio: { basis: 'volume', parts: '100 : 46', at: of('23', '°C') } })],
    ['third-into-a', () => ({ ratio: { basis: 'weight', parts: '100 : 38.9 : 20', thirdInto: 'A' }, third })],
    ['third-into-b-by-volume', () => ({ ratio: { basis: 'volume', parts: '100 : 46 : 10', thirdInto: 'B' }, third })],
    [
      'second-density',
      ({ A }) => {
        const { expansion: _, ...rest } = A;
        const secondDensity = { value: of('1.14', 'g/cm3'), at: of('55', '°C') };
        return { ratio: { basis: 'weight', perHundredA: '38.9' }, A: { ...rest, secondDensity } };
      },
    ],
    [
      'other-ratio',
      ({ A, B }) => {
        const { density: _, ...restA } = A;
        const { density: __, ...restB } = B;
        return {
          ratio: { basis: 'weight', parts: '100 : 38.9' },
          otherRatio: { basis: 'volume', parts: '100 : 46.5' },
          A: restA,
          B: restB,
        };
      },
    ],
    [
      'points-in-total',
      () => ({
        ratio: { basis: 'weight', parts: '100 : 38.9' },
        limits: { definition: 'points of B in the total', low: '-0.5', high: '0.5' },
      }),
    ],
    [
      'parts-of-b',
      () => ({ ratio: { basis: 'weight', parts: '100 : 38.9' }, limits: { definition: 'parts of B', low: '38', high: '40' } }),
    ],
    ['of-a-per-b', () => ({ ratio: { basis: 'volume', parts: '2.2 : 1' }, limits: { definition: '% of A per B', low: '-2', high: '2' } })],
    [
      'epoxy',
      () => ({
        chemistry: {
          system: 'epoxy',
          resinIn: 'A',
          index: '100',
          A: {
            ingredients: [
              { id: 'r', name: 'Resin', parts: '90', by: 'EEW', value: '190' },
              { id: 'd', name: 'Diluent', parts: '10', by: 'inert' },
            ],
          },
          B: { ingredients: [{ id: 'h', name: 'Hardener', parts: '100', by: 'AHEW', value: '60' }] },
        },
        limits: { definition: 'index points', low: '97', high: '103' },
      }),
    ],
  ])('%s', async (name, row) => {
    await expect(workingsOf(material(row), ...MIX)).toMatchFileSnapshot(golden(`mix-${name}`));
  });
  test('the invented example itself opens with all of these', () => {
    expect(demoFile(material(() => ({ ratio: { basis: 'weight', parts: '100 : 40' } }))).materials[0]?.ratio?.parts).toBe('100 : 40');
  });
});
