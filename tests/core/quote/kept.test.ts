import { describe, expect, test } from 'vitest';
import type { QuoteRecord } from '../../../core/src/file/quoteRecord.ts';
import { readShopFile } from '../../../core/src/file/read.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { writeShopFile } from '../../../core/src/file/write.ts';
import { type AskedQuote, readyQuote } from '../../../core/src/quote/kept.ts';
import { quoteBody } from '../../../core/src/quote/quote.ts';
import { demoFile, metric } from '../sheet/demoSheet.ts';
import { demoReach, quotedMaterials } from './demoQuote.ts';

const ASKED: AskedQuote = {
  date: '2026-11-24',
  validDays: 30,
  customer: 'Pellow Boats',
  note: 'For the second line.',
  file: 'demo.ratiowright',
  say: metric,
  incomplete: [],
  add: ['With 1 wheel added, all are inside.'],
};
const { plan, reach } = demoReach();
const materials = quotedMaterials(demoFile());
const ready = (kept: readonly QuoteRecord[] = [], asked: Partial<AskedQuote> = {}) =>
  readyQuote(plan, reach, materials, { ...ASKED, ...asked }, kept);

/** As it stands in a file that was saved and opened again. */
function reopened(...quotePages: QuoteRecord[]): readonly QuoteRecord[] {
  const read = readShopFile(writeShopFile({ ...demoFile(), quotePages }, 'test'));
  if (!read.ok) throw new Error(read.findings.map(({ where, what }) => `${where.join(' ')}: ${what}`).join('\n'));
  expect(read.findings).toEqual([]);
  return read.value.quotePages ?? [];
}

describe('a quote that is kept', () => {
  const { record } = ready();
  test('holds what it is of, exact', () => {
    expect(record).toMatchObject({
      id: 'quote-0001',
      number: '0001',
      date: '2026-11-24',
      machine: 'bench-1',
      window: { low: '1', high: '5' },
      tolerance: { value: '2', unit: '%' },
      customer: 'Pellow Boats',
      // 30 days after 24 November [Gregorian calendar].
      validUntil: '2026-12-24',
    });
    const { customer: _none, validUntil: _always, ...bare } = record;
    expect(Object.keys(ready([], { customer: '', validDays: null }).record)).toEqual(Object.keys(bare));
  });
  test('is the same page after saving and opening, to the last letter', () => {
    const [again] = reopened(record);
    expect(again).toEqual(record);
    expect(again && quoteBody(again)).toEqual(quoteBody(record));
  });
  test('stays as it was when the machine changes', () => {
    const file: ShopFile = { ...demoFile(), quotePages: [record] };
    for (const machine of file.machines) machine.name = 'Another bench';
    const read = readShopFile(writeShopFile(file, 'test'));
    expect(read.ok && read.value.quotePages?.[0]?.page.title).toBe('What Bench 1 can mix');
  });
});

describe('the drawing of a kept page, which goes into the page as it stands', () => {
  const { record } = ready();
  const WRONG = 'A path has moves, lines and numbers only, as M0 100L5 40Z.';
  const refusal = (rule: Partial<QuoteRecord['rule']>): readonly string[] => {
    const read = readShopFile(writeShopFile({ ...demoFile(), quotePages: [{ ...record, rule: { ...record.rule, ...rule } }] }, 'test'));
    return read.ok ? [] : read.findings.map(({ where, what }) => `${where.at(-1)}: ${what}`);
  };
  test.each(['hill', 'strokes'] as const)('%s holds nothing but a path', (key) => {
    for (const path of ['', 'M0 100L5 40Z', 'M-1.5 0H7V3Z']) expect(refusal({ [key]: path })).toEqual([]);
    for (const path of ['M0 0"/><script>', 'M0 0<', 'M0 0&#34;', 'm0 0', 'M0,0', 'M0 0\n', 'url(x)'])
      expect(refusal({ [key]: path }), path).toEqual([`${key}: ${WRONG}`]);
  });
});

describe('numbers', () => {
  const { record } = ready();
  test('the same page on the same day is one quote, also after saving', () => {
    expect(ready([record])).toEqual({ record, isKept: true });
    expect(ready(reopened(record)).isKept).toBe(true);
  });
  test.each<[string, Partial<AskedQuote>]>([
    ['another day', { date: '2026-11-25' }],
    ['another customer', { customer: 'Pellow Moulds' }],
    ['another note', { note: '' }],
    ['another validity', { validDays: null }],
    ['another answer to what to add', { incomplete: [], add: [] }],
    ['inches', { say: { decimal: '.', system: 'inch' } }],
  ])('%s makes the next number', (_, asked) => {
    const next = ready([record], asked);
    expect([next.isKept, next.record.number, next.record.id]).toEqual([false, '0002', 'quote-0002']);
    expect(next.record.page.number).toBe('Quote page 0002');
  });
  test('another tolerance too, even where every figure is the same', () => {
    const finer = { ...reach, wish: { ...reach.wish, tolerance: reach.wish.tolerance.mul('0.999') } };
    expect(readyQuote(plan, finer, materials, ASKED, [record]).isKept).toBe(false);
  });
});

test('whatever the names, what is kept opens again', () => {
  const file = demoFile((crowd) => {
    const [first] = crowd.materials;
    if (first === undefined) throw new Error('no material');
    delete first.A.temperatureUncertainty;
    delete first.B.densityUncertainty;
    for (let index = 0; index < 60; index += 1)
      crowd.materials.push({ ...structuredClone(first), id: `m${index}`, name: `${index} ${'<name>'.repeat(40)}`.slice(0, 200) });
    crowd.shop.name = '"&'.repeat(100);
  });
  const { record } = readyQuote(plan, reach, quotedMaterials(file), { ...ASKED, customer: '<'.repeat(200), file: '<'.repeat(200) }, []);
  const [again] = reopened(record);
  expect(again).toEqual(record);
  expect(again && quoteBody(again).html).not.toContain('<name>');
});

describe('a drawing that is no drawing is refused with its place', () => {
  const { record } = ready();
  const said = (rule: Partial<QuoteRecord['rule']>) => {
    const read = readShopFile(writeShopFile({ ...demoFile(), quotePages: [{ ...record, rule: { ...record.rule, ...rule } }] }, 'test'));
    return read.ok ? [] : read.findings.map(({ where, what }) => `${where.join(' ')}: ${what}`);
  };
  test.each<[string, Partial<QuoteRecord['rule']>, string]>([
    [
      'markup in a path',
      { strokes: 'M0 0"/><script>' },
      'quotePages 0 rule strokes: A path has moves, lines and numbers only, as M0 100L5 40Z.',
    ],
    [
      'a gap beyond the page',
      { gaps: [{ from: 0, to: 101 }] },
      'quotePages 0 rule gaps 0 to: A place on the rule is a number from 0 to 100, in per cent of its width.',
    ],
    ['half a lane', { lanes: 1.5 }, 'quotePages 0 rule lanes: 1.5 is not a whole number.'],
  ])('%s', (_, rule, finding) => {
    expect(said(rule)).toEqual([finding]);
  });
});
