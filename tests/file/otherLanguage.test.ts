import { readFileSync } from 'node:fs';
import { expect, test, vi } from 'vitest';
import { dictionary } from '../../build/words.ts';
import { pseudo } from '../app/pseudoWords.ts';

// What is written to be read back, and what reads it, is the same whatever language is spoken.

const DEMO = readFileSync(new URL('../examples/demo.ratiowright', import.meta.url), 'utf8');
const SAY = { decimal: '.', system: 'metric' } as const;
const mm = (value: string) => ({ value, unit: 'mm' });

/** Everything that the program writes and reads back, by a program that speaks these phrases. */
async function writtenWith(phrases: Readonly<Record<string, string>> | null) {
  vi.resetModules();
  const { speak } = await import('../../core/src/en.ts');
  speak(phrases && { language: 'en-XA', phrases, formOf: () => 0 });
  const { readShopFile } = await import('../../core/src/file/read.ts');
  const { writeShopFile } = await import('../../core/src/file/write.ts');
  const { accepts } = await import('../../core/src/file/accepts.ts');
  const { schemaLeaves } = await import('../../core/src/file/schemaLeaves.ts');
  const { readRackCsv, writeRackCsv } = await import('../../core/src/file/rackCsv.ts');
  const { readCatchCsv, writeCatchCsv } = await import('../../core/src/file/catchCsv.ts');
  const { readMaterials, writeMaterials, LIMIT_DEFINITIONS } = await import('../../core/src/file/materialCsv/index.ts');
  const { rangeText, readWindowEntry, countRangeText, readCountRange } = await import('../../core/src/range.ts');
  const { readShotEntry, shotText } = await import('../../core/src/twoFigures.ts');
  const { readRackLine, writeRackLine } = await import('../../core/src/rackLine.ts');
  const { driveKind } = await import('../../core/src/drives/index.ts');
  const { DIMENSIONS } = await import('../../core/src/units.ts');
  const { placeText } = await import('../../core/src/finding.ts');
  const read = readShopFile(DEMO);
  if (!read.ok) throw new Error('the demo does not open');
  const { materials, racks, ratioChecks } = read.value;
  const pieces = racks[0]?.pieces ?? [];
  const catches = ratioChecks[0]?.catches ?? [];
  const [rack, caught, list] = [writeRackCsv(pieces, '.'), writeCatchCsv(catches, '.'), writeMaterials(materials, '.').text];
  const chain = driveKind('chain');
  const line = writeRackLine(pieces, chain);
  const range = rangeText('length', { from: mm('250'), to: mm('263') }, 'mm');
  const shot = shotText({ amount: { value: '400', unit: 'g' }, time: { value: '6', unit: 's' } });
  return {
    spoken: placeText(['racks', 0, 'pieces', 1, 'quantity']),
    kept: {
      file: writeShopFile(read.value, 'a test'),
      rack: [rack, readRackCsv(rack)],
      catches: [caught, readCatchCsv(caught)],
      materials: [
        list,
        readMaterials(list, { say: SAY, limitsMean: LIMIT_DEFINITIONS[0], taken: [] }).materials.map(({ material }) => material),
      ],
      line: [line, readRackLine(line, chain)],
      boxes: [
        [range, readWindowEntry({ dimension: 'length', unit: 'mm', example: '1 to 2' }, range, SAY)],
        [countRangeText({ from: 13, to: 40 }), readCountRange(countRangeText({ from: 13, to: 40 }), 5, 400)],
        [shot, readShotEntry(shot, SAY)],
      ],
      units: Object.values(DIMENSIONS).flatMap((units) => units.map(({ name }) => name)),
      fields: schemaLeaves().map((leaf) => {
        const { what, units, limits } = accepts(leaf);
        return { place: leaf.steps.join('.'), what, units, limits: limits.length };
      }),
    },
  };
}

test('files, tables, what stands in boxes, units, and what each field takes', async () => {
  const english = await writtenWith(null);
  const phrases = Object.values(dictionary(`${import.meta.dirname}/../..`)).flatMap((ofFile) => Object.keys(ofFile));
  const other = await writtenWith(Object.fromEntries(phrases.map((phrase) => [phrase, pseudo(phrase)])));
  expect(english.spoken).toBe('rack 1, piece 2, quantity');
  expect(other.spoken).toBe(`${pseudo('rack')} 1, ${pseudo('piece')} 2, ${pseudo('quantity')}`);
  expect(other.kept).toEqual(english.kept);
  expect(english.kept.catches[0]).toMatch(/^\uFEFFcatch,A net g,B net g/);
  expect(english.kept.fields.filter(({ what, units }) => what === 'quantity' && units.length > 0).length).toBeGreaterThan(40);
});
