import { expect, test } from 'vitest';
import { ratiowright } from './run.ts';

interface NearJson {
  readonly tried: { readonly written: string; readonly basis: string; readonly ratioAPerBByVolume: { readonly number: number } };
  readonly ratios: readonly {
    readonly ratioAPerBByVolume: { readonly exact: string };
    readonly offRatio: { readonly exact: string };
    readonly sense: string;
    readonly inside: boolean | null;
    readonly partsChanged: number;
    readonly stages: readonly { readonly driverTeeth: number; readonly drivenTeeth: number }[];
  }[];
}
const demo = ['options', 'demo.ratiowright', '--machine', 'bench-1', '--material', 'e12'] as const;
const jsonOf = (...args: string[]): NearJson => JSON.parse(ratiowright(...demo, '--json', ...args).out) as NearJson;

test('the ratios near another one, each once with its first option; exit 0 where one is inside', () => {
  const ran = ratiowright(...demo, '--try', '100 : 39.37');
  expect([ran.exit, ran.err]).toEqual([0, '']);
  expect(ran.out).toContain('Tried 100 : 39.37 by weight: A to B by volume 2.1464 : 1; the material wants 100 : 38.9 by weight');
  expect(ran.out).toMatch(/^1 +15 : 7 +2\.1429 +39\.434 +0\.163 % B-rich +inside +1 +28 to 30/m);
  expect(ran.out.match(/^\d+ /gm)).toHaveLength(8);
});
test('the material’s own ratio gives the first of its options in JSON, and rows are as many as asked', () => {
  const found = jsonOf('--try', '100:38.9', '--rows', '3');
  expect(found.ratios).toHaveLength(3);
  expect(found.tried).toMatchObject({ written: '100:38.9 by weight', basis: 'weight' });
  expect(found.ratios[0]).toMatchObject({
    ratioAPerBByVolume: { exact: '50/23' },
    sense: 'B-lean',
    inside: true,
    partsChanged: 2,
    stages: [{ driverTeeth: 23, drivenTeeth: 25 }],
  });
});
test('exit 1 where none is inside, 2 with what was expected where the text is no ratio', () => {
  expect(ratiowright(...demo, '--try', '100 : 1', '--rows', '1').exit).toBe(1);
  const ran = ratiowright(...demo, '--try', '38.9');
  expect([ran.exit, ran.out]).toEqual([2, '']);
  expect(ran.err).toContain('--try: "38.9" has only one part. Expected A to B');
});
test('what belongs to the list of options is refused beside it', () => {
  const ran = ratiowright(...demo, '--try', '100:40', '--order', 'least-work', '--count', '--json', '--workings');
  expect(ran.exit).toBe(2);
  for (const flag of ['--order', '--count', '--workings']) expect(ran.err).toContain(`${flag} belongs to the list of options`);
});
