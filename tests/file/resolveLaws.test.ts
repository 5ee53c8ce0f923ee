import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readShopFile } from '../../core/src/file/read.ts';
import { resolve } from '../../core/src/file/resolve.ts';
import { writeShopFile } from '../../core/src/file/write.ts';
import type { Finding, Place } from '../../core/src/finding.ts';
import { exactText } from '../../core/src/ratio.ts';
import { shopFiles } from './arbitraries.ts';
import { demo, demoPlan, E12, ONE, STAGE } from './demoPlan.ts';
import { type Change, changed, demoText, GONE, isPlace, opened, say, valueAt } from './shop.ts';

describe('laws', () => {
  /** Each finding is a sentence, and points at something in the file or at a field that is still to be filled in. */
  function expectSound(json: unknown, findings: readonly Finding[]): void {
    for (const { where, what } of findings) {
      expect(what).toMatch(/^["\dA-Z−-].*[^.]\.$/s);
      expect(isPlace(json, where), `${where.join(' ')}: ${what}`).toBe(true);
    }
  }
  test('any valid file gives a plan or reasons', () => {
    fc.assert(
      fc.property(shopFiles, (file) => {
        const json: unknown = JSON.parse(writeShopFile(file, 'test'));
        for (const machine of file.machines) {
          for (const material of file.materials) {
            expectSound(json, resolve(file, { machine: machine.id, material: material.id }, say).findings);
          }
        }
      }),
      { numRuns: 100 },
    );
  });
  test('the demo with this and that taken away gives a plan or reasons', () => {
    const bare = changed(demo, [['racks', 0, 'pieces'], []], [['machines'], [valueAt(demo, ONE)]]);
    const placesIn = (at: Place): readonly Place[] => {
      const value = valueAt(bare, at);
      if (typeof value !== 'object' || value === null || Array.isArray(value)) return [];
      return Object.keys(value).flatMap((key) => [[...at, key], ...placesIn([...at, key])]);
    };
    const opens = (json: unknown) => readShopFile(JSON.stringify(json)).ok;
    const places = [...placesIn(ONE), ...placesIn(STAGE), ...placesIn(['materials', 0])].filter((where) =>
      opens(changed(bare, [where, GONE])),
    );
    let plans = 0;
    fc.assert(
      fc.property(fc.subarray(places, { minLength: 1, maxLength: 8 }), (gone) => {
        const json = gone.reduce<unknown>(
          (rest, where) => (valueAt(rest, where) === undefined ? rest : changed(rest, [where, GONE])),
          bare,
        );
        fc.pre(opens(json));
        const outcome = resolve(opened(JSON.stringify(json)), E12, say);
        if (outcome.ok) plans += 1;
        expectSound(json, outcome.findings);
      }),
      { numRuns: 150 },
    );
    expect(plans).toBeGreaterThan(15);
  });
  test('exchanging the two sides of machine and material inverts the wanted ratio', () => {
    for (const material of ['e12', 'u40', 'l5']) {
      const at = ['materials', ['e12', 'u40', 'l5'].indexOf(material)];
      const plan = demoPlan({ machine: 'bench-1', material });
      const before = JSON.parse(demoText());
      const { A, B, ratio, chemistry } = before.materials[Number(at[1])];
      const [a = '', b = ''] = String(ratio?.parts).split(':');
      const turnedRatio: Change =
        ratio === undefined
          ? [[...at, 'chemistry'], { ...chemistry, isocyanateIn: 'A', A: chemistry.B, B: chemistry.A }]
          : [[...at, 'ratio', 'parts'], `${b} : ${a}`];
      const turned = demoPlan({ machine: 'bench-1', material }, [[...at, 'A'], B], [[...at, 'B'], A], turnedRatio);
      expect(exactText(plan.mix.wantedBPerA.mul(turned.mix.wantedBPerA))).toBe('1/1');
    }
  });
});
