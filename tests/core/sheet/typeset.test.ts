import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cautionColumns, LINE, stepColumns, textHeight_em } from '../../../core/src/sheet/columns.ts';
import { escaped } from '../../../core/src/sheet/html.ts';
import { withShortNames } from '../../../core/src/sheet/paperText.ts';
import { spread } from '../../../core/src/sheet/spread.ts';
import { textWidth_em } from '../../../core/src/sheet/textWidth.ts';
import { clip } from '../../../core/src/visible.ts';
import { demoPlan, E12_ON_BENCH_1 } from './demoSheet.ts';

describe('labels side by side', () => {
  const labels = fc.array(
    fc.record({ at: fc.double({ min: 0, max: 392, noNaN: true }), width: fc.double({ min: 1, max: 60, noNaN: true }) }),
    { maxLength: 6 },
  );

  test('none overlap, their order stays, and all lie between the ends', () => {
    fc.assert(
      fc.property(labels, (unsorted) => {
        const row = [...unsorted].sort((a, b) => a.at - b.at);
        const middles = spread(row, 0, 392);
        let from = -1e-9;
        row.forEach(({ width }, index) => {
          const middle = middles[index] ?? Number.NaN;
          expect(middle - width / 2).toBeGreaterThanOrEqual(from - 1e-9);
          from = middle + width / 2;
        });
        expect(from).toBeLessThanOrEqual(392 + 1e-9);
      }),
    );
  });

  test('labels with room stay where they belong; the example of the docstring', () => {
    expect(
      spread(
        [
          { at: 50, width: 20 },
          { at: 200, width: 30 },
        ],
        0,
        392,
      ),
    ).toEqual([50, 200]);
    expect(
      spread(
        [
          { at: 10, width: 20 },
          { at: 12, width: 20 },
        ],
        0,
        100,
      ),
    ).toEqual([10, 30]);
  });
});

describe('text on its line', () => {
  test('the example of the docstring', () => expect(textWidth_em('23 T')).toBeCloseTo(2.38, 10));

  test('a line that fits is one, a word more breaks it, a word wider than the line is broken anywhere [arithmetic]', () => {
    const lines = (text: string, width_em: number) => textHeight_em([text], width_em, 1, 1) / LINE;
    const ten = textWidth_em('aaaaa aaaa');
    expect(lines('aaaaa aaaa', ten + 1e-9)).toBe(1);
    expect(lines('aaaaa aaaa', ten - 0.01)).toBe(2);
    expect(lines('a'.repeat(30), textWidth_em('a'.repeat(10)) + 1e-9)).toBe(3);
    expect(lines(`a ${'a'.repeat(30)}`, textWidth_em('a'.repeat(10)) + 1e-9)).toBe(4);
  });

  const texts = fc.array(fc.string({ maxLength: 200 }), { maxLength: 15 });

  test.each([
    ['steps', stepColumns],
    ['cautions', cautionColumns],
  ] as const)('two columns of %s hold every text once, in order', (_, columns) => {
    fc.assert(
      fc.property(texts, (list) => {
        const { first, second } = columns(list, 3);
        expect([...first, ...second]).toEqual(list);
      }),
    );
  });

  test('the height given is that of the higher column, and no other place to part the list is lower [every place tried]', () => {
    fc.assert(
      fc.property(texts, (list) => {
        const height_em = (some: readonly string[]) => textHeight_em(some, 84, 0.9, 3);
        const { first, second, height_em: given } = cautionColumns(list, 3);
        expect(given).toBeCloseTo(Math.max(height_em(first), height_em(second)), 9);
        for (let at = 0; at <= list.length; at++) {
          expect(Math.max(height_em(list.slice(0, at)), height_em(list.slice(at)))).toBeGreaterThanOrEqual(given - 1e-9);
        }
      }),
    );
  });

  test('of equal steps the first column takes the odd one', () => {
    const { first, second } = stepColumns(['one', 'two', 'three'], 3);
    expect([first, second]).toEqual([['one', 'two'], ['three']]);
  });
});

describe('names', () => {
  test('a name is cut to its length with an ellipsis, never within a character', () => {
    expect(clip('Bench 1', 7)).toBe('Bench 1');
    expect(clip('Bench 10', 7)).toBe('Bench…');
    expect(clip('🜂🜃🜄🜁', 3)).toBe('🜂🜃…');
  });

  test('an empty name of a stage leaves sentences alone', () => {
    const plan = demoPlan(E12_ON_BENCH_1);
    const [stage] = plan.stages;
    if (stage === undefined) throw new Error('bench 1 has a stage');
    expect(withShortNames({ ...plan, stages: [{ ...stage, name: '' }] }, 'ab')).toBe('ab');
  });
});

describe('escaping', () => {
  test('the example of the docstring', () => expect(escaped('<b> & "c"')).toBe('&lt;b&gt; &amp; &quot;c&quot;'));

  test('nothing that opens markup is left, and the text can be read back [HTML standard, named character references]', () => {
    const read: Readonly<Record<string, string>> = { '&lt;': '<', '&gt;': '>', '&quot;': '"', '&#39;': "'", '&amp;': '&' };
    fc.assert(
      fc.property(fc.string({ unit: fc.constantFrom('<', '>', '&', '"', "'", ';', 'l', 't', '#', 'ä') }), (text) => {
        expect(escaped(text)).not.toMatch(/[<>"']/);
        expect(escaped(text).replace(/&(?:lt|gt|quot|#39|amp);/g, (name) => read[name] ?? name)).toBe(text);
      }),
    );
  });
});
