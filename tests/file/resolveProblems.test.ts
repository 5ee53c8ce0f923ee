import { describe, expect, test } from 'vitest';
import { resolve } from '../../core/src/file/resolve.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import type { Place } from '../../core/src/finding.ts';
import { demoPlan, demoRefused, E12, ONE, STAGE, short } from './demoPlan.ts';
import { changed, demoText, GONE, lines, opened, say } from './shop.ts';

describe('what stands against a plan, all of it together', () => {
  test('what no plan can do without', () => {
    expect(
      demoRefused(
        E12,
        [[...ONE, 'motor', 'speed'], GONE],
        [[...STAGE, 'driven', 'teeth'], GONE],
        [[...ONE, 'A', 'pumps', 0, 'displacement'], GONE],
        [['materials', 0, 'B', 'density'], GONE],
      ),
    ).toEqual([
      "materials 0 B density: The density of B is missing: a ratio by weight needs all densities, or the sheet's ratio by volume as well.",
      'machines 0 motor speed: The speed of the motor shaft at 100 % is missing: the name plate or the drive says it.',
      'machines 0 stages 0 driven teeth: The teeth fitted on s1 driven are missing: stamped on the hub, or counted.',
      'machines 0 A pumps 0 displacement: The displacement of pump A is missing: its plate or its data sheet says it.',
    ]);
  });
  test('ranges that run backwards, with both ends as typed', () => {
    const teeth: Place = [...STAGE, 'driver'];
    expect(
      demoRefused(
        E12,
        [[...ONE, 'motor', 'usable'], { from: { value: '0.9', unit: '' }, to: { value: '20', unit: '%' } }],
        [[...STAGE, 'centre', 'to'], { value: '9', unit: 'in' }],
        [[...teeth, 'teethFrom'], 41],
        [[...ONE, 'B', 'pumps', 0, 'speedFrom'], { value: '3', unit: 'rev/s' }],
        [[...ONE, 'search'], { wheels: 'any', teeth: { from: 40, to: 13 } }],
      ),
    ).toEqual([
      'machines 0 motor usable: The usable range of the motor runs from 0.9 to 20 %: the first must not be larger.',
      'machines 0 stages 0 centre: The centre distance runs from 250 mm to 9 in: the first must not be larger.',
      'machines 0 stages 0 driver teethFrom: The teeth run from 41 to 40: the first must not be larger.',
      'machines 0 B pumps 0 speedFrom: The pump speed runs from 3 rev/s to 120 rpm: the first must not be larger.',
      'machines 0 search teeth: The teeth run from 40 to 13: the first must not be larger.',
    ]);
    expect(demoRefused({ ...E12, teeth: { from: 40, to: 13 } })).toEqual([
      'machines 0: The teeth run from 40 to 13: the first must not be larger.',
    ]);
  });
  test('both ends of a range may be the same', () => {
    expect(demoPlan(E12, [[...STAGE, 'centre', 'to'], { value: '25', unit: 'cm' }]).stages[0]?.centre).toMatchObject({
      value: { least_m: 0.25, most_m: 0.25 },
    });
  });
  test('limits that are not given are noted: nothing is called inside', () => {
    const plan = demoPlan(E12, [['materials', 0, 'limits'], GONE]);
    expect(plan.mix.limits).toBe(null);
    expect(short(plan.findings)).toEqual([
      'material.limits notes: The limits of the material are not given: no option is called inside or outside. The data sheet states them.',
    ]);
  });
  test('a file that was made wrong after it was read is refused like one that is opened', () => {
    const file = opened(demoText());
    const edit = (where: Place, value: unknown): ShopFile => Object.assign({ ...file }, changed(file, [where, value]));
    const said = (where: Place, value: unknown) => lines(resolve(edit(where, value), E12, say).findings);
    expect(said([...ONE, 'motor', 'speed', 'value'], 'fast')).toEqual([
      'machines 0 motor speed: "fast" is not a number. Expected something like 38.9, 38,9, 1 1/2 or 7e-4.',
    ]);
    expect(said(['materials', 0, 'A', 'density', 'value', 'value'], '0')).toEqual([
      'materials 0 A density value: 0 g/cm3 is out of range: it must be above 0 g/cm3.',
    ]);
    expect(said(['racks', 0, 'pieces', 0, 'size'], '9Z')[0]).toContain('racks 0 pieces 0 size: "9Z" is not a chain number known here');
    expect(said([...ONE, 'B', 'fitted'], 'pb9')).toEqual(['machines 0 B fitted: The fitted pump "pb9" is not among the pumps of side B.']);
    expect(said([...ONE, 'shafts', 1, 'turnedBy'], GONE)).toHaveLength(2);
    expect(said([...ONE, 'rack'], 'cellar')).toEqual(['machines 0 rack: There is no rack with the id "cellar".']);
    // While the shafts do not hang together, nothing is said of what a search would open on them.
    const adrift = edit([...ONE, 'shafts', 1, 'turnedBy', 'shaft'], 'axle');
    const buying = Object.assign({ ...adrift }, changed(adrift, [[...STAGE, 'driver', 'teethTo'], GONE]));
    expect(lines(resolve(buying, { ...E12, purchases: 1 }, say).findings)).toEqual([
      'machines 0 shafts 1 turnedBy shaft: There is no shaft with the id "axle".',
    ]);
    // What another machine lacks does not stand in the way.
    expect(said(['machines', 1, 'motor'], null)).toEqual([]);
  });
});
