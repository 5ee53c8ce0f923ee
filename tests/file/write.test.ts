import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readShopFile } from '../../core/src/file/read.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { writeShopFile } from '../../core/src/file/write.ts';
import { shopFiles } from './arbitraries.ts';
import { demoText, opened } from './shop.ts';

describe('laws', () => {
  test('what is written reads back as it was, without a word', () => {
    fc.assert(
      fc.property(shopFiles, (file) => {
        expect(readShopFile(writeShopFile(file, 'test'))).toEqual({ ok: true, value: { ...file, writtenBy: 'test' }, findings: [] });
      }),
    );
  });
  test('the text does not depend on the order in which the keys were set', () => {
    fc.assert(
      fc.property(shopFiles, (file) => {
        expect(writeShopFile(backwards(file), 'test')).toBe(writeShopFile(file, 'test'));
      }),
    );
  });
  test('writing what was read changes nothing but the writer', () => {
    fc.assert(
      fc.property(shopFiles, (file) => {
        const text = writeShopFile(file, 'first');
        expect(writeShopFile(opened(text), 'first')).toBe(text);
        expect(writeShopFile(opened(text), 'second')).toBe(text.replace('"writtenBy": "first"', '"writtenBy": "second"'));
      }),
    );
  });

  /** The same values, every object with its keys the other way round. */
  function backwards(file: ShopFile): ShopFile {
    const turned: unknown = JSON.parse(JSON.stringify(file), (_key, value: unknown) =>
      typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.fromEntries(Object.entries(value).reverse()) : value,
    );
    const read = readShopFile(JSON.stringify(turned));
    if (!read.ok) throw new Error('the keys alone made a file wrong');
    // Reading puts keys in order, so they are turned once more.
    return Object.assign({ ...file }, turned);
  }
});

describe('the text', () => {
  test('the demo is written just as it stands', () => {
    expect(writeShopFile(opened(demoText()), 'Ratiowright 0.1.0')).toBe(demoText());
  });
  test('envelope first, two spaces, a line break at the end', () => {
    const text = writeShopFile(opened(demoText()), 'Somebody 9.9');
    expect(text.split('\n').slice(0, 5)).toEqual([
      '{',
      '  "format": "ratiowright shop file",',
      '  "version": 1,',
      '  "writtenBy": "Somebody 9.9",',
      '  "shop": {',
    ]);
    expect(text.endsWith('}\n')).toBe(true);
  });
  test('keys in the order of the schema, wherever an edit put them', () => {
    const file = opened(demoText());
    const [first, ...rest] = file.machines;
    if (first === undefined) throw new Error('no machine');
    const { name, ...nameless } = first;
    const edited = { ...file, machines: [{ ...nameless, name }, ...rest] };
    expect(Object.keys(edited.machines[0] ?? {}).at(-1)).toBe('name');
    expect(writeShopFile(edited, 'Ratiowright 0.1.0')).toBe(demoText());
  });
  test.each(['12.70', '12,70', ' 1 1/2', '007', '1e-3', '−2.5', '0.(3)', "1'234.5"])('"%s" stays as typed', (value) => {
    const file = opened(demoText());
    const [first, ...rest] = file.materials;
    if (first === undefined) throw new Error('no material');
    const limits = { definition: '% of B per A', low: value, high: value } as const;
    const text = writeShopFile({ ...file, materials: [{ ...first, limits }, ...rest] }, 'test');
    expect(text).toContain(`"low": "${value}"`);
    expect(opened(text).materials[0]?.limits?.low).toBe(value);
  });
  test('what the schema would refuse is written all the same: no work is lost', () => {
    const file = opened(demoText());
    const shop = { name: 'n'.repeat(300) };
    const text = writeShopFile({ ...file, shop }, 'test');
    expect(JSON.parse(text).shop).toEqual(shop);
    expect(readShopFile(text).ok).toBe(false);
  });
});
