import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readShopFile } from '../../core/src/file/read.ts';
import { writeShopFile } from '../../core/src/file/write.ts';
import type { Place } from '../../core/src/finding.ts';
import { shopFiles } from './arbitraries.ts';
import { expectPlainEnglish } from './refusedFile.ts';
import { changed, isPlace } from './shop.ts';

describe('laws', () => {
  test('a valid file opens as it is, without a word', () => {
    fc.assert(
      fc.property(shopFiles, (file) => {
        expect(readShopFile(JSON.stringify(file))).toEqual({ ok: true, value: file, findings: [] });
      }),
    );
  });
  const anything = fc.constantFrom<unknown>(null, true, -1, 0.5, 1e9, '', 'x', '0', '1 : 2', [], {}, [null], { id: 'x' }, { value: 1 });
  test('whatever is put wherever, it is never a crash, what is said is plain, and it points at something in the file', () => {
    fc.assert(
      fc.property(shopFiles, fc.nat(), anything, fc.nat(), anything, (file, one, value, other, more) => {
        const json: unknown = JSON.parse(writeShopFile(file, 'test'));
        const places = placesIn(json, []);
        const pick = (at: number) => places[at % places.length] ?? [];
        const first = changed(json, [pick(one), value]);
        const rest = placesIn(first, []);
        const wrong = changed(first, [rest[other % rest.length] ?? [], more]);
        const read = readShopFile(JSON.stringify(wrong));
        expectPlainEnglish(read.findings.map((finding) => finding.what));
        for (const { where } of read.findings)
          expect(isPlaceOrMissing(wrong, where), `${where.join(' ')} is no place in the file`).toBe(true);
      }),
      { numRuns: 150 },
    );
  });

  /** Every place in plain JSON but the whole. */
  function placesIn(json: unknown, at: Place): readonly Place[] {
    if (typeof json !== 'object' || json === null) return [];
    const keys = Array.isArray(json) ? [...json.keys()] : Object.keys(json);
    return keys.flatMap((key) => [[...at, key], ...placesIn(Reflect.get(json, key), [...at, key])]);
  }
  /** A field that a fault left out has no value, but the row it belongs to is there. */
  const isPlaceOrMissing = (json: unknown, where: Place) => where.length === 0 || isPlace(json, where);
});
