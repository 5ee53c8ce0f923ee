import { mkdtempSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { ratiowright } from './run.ts';

const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-materials-'));
const listed = (name: string, ...rows: readonly string[]): string => {
  const place = path.join(folder, name);
  writeFileSync(place, rows.join('\r\n'));
  return place;
};
/** E12 and L5 of the invented example, as somebody else would list them. */
const LIST = listed(
  'list.csv',
  'Material;Mix ratio;Basis;Limits;Density A g/cm3;Density B g/cm3;Density at;Run A;Run B;Expansion A 1/K;Expansion B 1/K;id',
  'E12;100:38,9;weight;±2 % of B per A;1,16;0,97;25 °C;42 °C;25 °C;0,00062;0,0008;e12',
  'L5;5:1;volume;±1,5 % of B per A;;;;;;;;',
);
const bench = ['demo.ratiowright', '--machine', 'bench-1'] as const;

interface BestJson {
  readonly format: string;
  readonly distinctRatios?: number;
  readonly bestOptions: readonly {
    readonly material: { readonly id: string };
    readonly best: { readonly ratioAPerBByVolume: { readonly exact: string }; readonly inside: boolean } | null;
  }[];
}
const bestsOf = ({ bestOptions }: BestJson) =>
  bestOptions.map(({ material, best }) => [material.id, best?.ratioAPerBByVolume.exact, best?.inside]);

test('reach --best: every material of the file with its best option [the invented example]', () => {
  const ran = ratiowright('reach', ...bench, '--best');
  // L5 is out of reach of Bench 1 without buying.
  expect([ran.exit, ran.err]).toEqual([1, '']);
  expect(ran.out).toMatch(/^E12 casting epoxy .* 50 : 23 .* 0\.075 % B-lean +inside +23 to 25 /m);
  expect(ran.out).toMatch(/^U40 elastomer .* 20 : 7 .* 0\.139 % B-lean +inside +21 to 30 /m);
  expect(ran.out).toMatch(/^L5 laminating resin .* 14 : 3 .* 7\.143 % B-rich +outside +15 to 35 /m);
  expect(ratiowright('reach', 'demo.ratiowright', '--machine', 'bench-2', '--best').exit).toBe(0);
});
test('beside a window, and as JSON', () => {
  const both = ratiowright('reach', ...bench, '--window', '1:5', '--best');
  expect(both.out).toMatch(/^in the window +191 ratios$/m);
  expect(both.out).toContain('Materials, each with its best option');
  const alone = JSON.parse(ratiowright('reach', ...bench, '--best', '--json').out) as BestJson;
  expect([alone.format, alone.distinctRatios]).toEqual(['ratiowright best options', undefined]);
  expect(bestsOf(alone)).toEqual([
    ['e12', '50/23', true],
    ['u40', '20/7', true],
    ['l5', '14/3', false],
  ]);
  const within = JSON.parse(ratiowright('reach', ...bench, '--window', '1:5', '--best', '--json').out) as BestJson;
  expect([within.format, within.distinctRatios, bestsOf(within).length]).toEqual(['ratiowright reach', 191, 3]);
});
test('as CSV, with the decimal sign that is asked for', () => {
  const ran = ratiowright('reach', ...bench, '--csv', '--comma');
  expect(ran.out.split('\r\n').map((line) => line.split(';').slice(6, 11))).toEqual([
    ['best option exact', 'A per B by volume made', 'off-ratio %', 'sense', 'inside'],
    ['50A : 23B', '2,173913', '-0,0747', 'B-lean', 'inside'],
    ['20A : 7B', '2,857143', '-0,1393', 'B-lean', 'inside'],
    ['14A : 3B', '4,666667', '7,1429', 'B-rich', 'outside'],
    [],
  ]);
});
test('--materials-csv stands in for the materials of the file: reach, buy and quote', () => {
  const best = JSON.parse(ratiowright('reach', ...bench, '--best', '--json', '--materials-csv', LIST).out) as BestJson;
  expect(bestsOf(best)).toEqual([
    ['e12', '50/23', true],
    ['material-1', '14/3', false],
  ]);
  const buy = ratiowright('buy', ...bench, '--teeth', '13-40', '--materials-csv', LIST);
  expect([buy.exit, buy.err]).toEqual([0, '']);
  expect(buy.out).toContain('Fewest wheels, whatever they cost: 1');
  expect(buy.out).toMatch(/08B 14 T, bore 25\.00 mm: alone it adds L5; without it L5 would be lost/);
  const quote = ratiowright('quote', ...bench, '--window', '1:5', '--materials-csv', LIST);
  expect([quote.exit, quote.err]).toEqual([0, '']);
  expect(quote.out).toMatch(/^E12\b.*23 to 25/m);
  expect(quote.out).not.toContain('U40');
});
test('forty materials: a row each, and wheels to buy for all of them together', () => {
  const rows = Array.from({ length: 40 }, (_, index) => `Invented ${index + 1};100:${22 + 2 * index};volume;±1 % of B per A`);
  const file = listed('forty.csv', 'Material;Mix ratio;Basis;Limits', ...rows);
  const csv = ratiowright('reach', ...bench, '--csv', '--materials-csv', file);
  const inside = csv.out.split('\r\n').filter((line) => line.startsWith('Invented') && line.includes(',inside,')).length;
  expect([csv.err, csv.out.trimEnd().split('\r\n').length]).toEqual(['', 41]);
  // What is inside without buying is what the table says.
  expect(ratiowright('buy', ...bench, '--teeth', '13-40', '--materials-csv', file).out).toMatch(new RegExp(`^0 +${inside} of 40 `, 'm'));
});
test('a list with faults is refused, all of them told with line and column', () => {
  const file = listed('faults.csv', 'name,ratio,basis', 'X,100,mass', 'Y,5:1,volume', ',4:1:1,volume');
  const ran = ratiowright('reach', ...bench, '--best', '--materials-csv', file);
  expect([ran.exit, ran.out]).toEqual([2, '']);
  expect(
    ran.err
      .trimEnd()
      .split('\n')
      .map((line) => line.replace(file, '').replace(/:.*/, '')),
  ).toEqual([', line 2, ratio', ', line 2, basis', ', line 4, name', ', line 4, ratio']);
  for (const [name, said] of [
    ['none.csv', 'cannot be read'],
    [path.basename(listed('empty.csv', '')), 'holds no material'],
  ] as const)
    expect(ratiowright('buy', ...bench, '--materials-csv', path.join(folder, name))).toMatchObject({
      exit: 2,
      err: expect.stringContaining(said),
    });
});
test('what a list takes for granted and what a material lacks is said; one that is not complete is not inside', () => {
  const file = listed('short.csv', 'W\t100:40\tweight\t±1', 'V\t15:7\tvolume\t±1');
  const ran = ratiowright('reach', ...bench, '--best', '--materials-csv', file);
  expect(ran.exit).toBe(1);
  expect(ran.err).toContain('line 1: The density of A is missing');
  expect(ran.err).toContain('Limits of 2 materials say no definition: taken as % of B per A.');
  expect(ran.out).toMatch(/^W +not complete$/m);
  expect(ran.out).toMatch(/^V .* inside /m);
});
test('a machine that is not there, or flags that do not go together, refuse as ever', () => {
  expect(ratiowright('reach', 'demo.ratiowright', '--machine', 'bench-9', '--best')).toMatchObject({ exit: 2, out: '' });
  expect(ratiowright('reach', ...bench).err).toContain('reach needs --window LO:HI, as 1:5, or --best.');
  const ran = ratiowright('reach', ...bench, '--csv', '--json', '--window', '1:5');
  expect([ran.exit, ran.err.split('\n').length]).toEqual([2, 3]);
  expect(ratiowright('options', ...bench, '--material', 'e12', '--materials-csv', LIST).err).toContain('does not belong to options');
});
