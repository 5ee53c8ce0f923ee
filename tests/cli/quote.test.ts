import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { quoteLines } from '../../core/src/sheet/quoteLines.ts';
import { quoted } from '../core/quote/demoQuote.ts';
import { demoWith } from '../file/shop.ts';
import { ratiowright } from './run.ts';

const demo = ['quote', 'demo.ratiowright', '--machine', 'bench-1', '--number', '0031', '--date', '2026-11-24'] as const;

test('the quote page as text is the page that the window prints', () => {
  const ran = ratiowright(...demo, '--window', '1:5');
  expect([ran.exit, ran.err]).toEqual([0, '']);
  const lines = quoteLines(quoted({}).page).join('\n').replaceAll('\u00A0', ' ').replaceAll('\u2011', '-');
  expect(ran.out).toBe(`${lines}\n`);
});
test('as a page to print, and as JSON', () => {
  const out = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-quote-')), 'quote.html');
  const ran = ratiowright(...demo, '--window', '1:5', '--out', out, '--paper', 'Letter', '--json');
  const page = JSON.parse(ran.out) as { readonly format: string; readonly materials: { readonly rows: readonly unknown[] } };
  expect([ran.exit, page.format, page.materials.rows.length]).toEqual([0, 'ratiowright quote', 3]);
  const html = readFileSync(out, 'utf8');
  expect(html).toContain('<title>What Bench 1 can mix</title>');
  expect(html).toContain('size:letter');
});
test('customer, note and days of validity stand on the page', () => {
  const ran = ratiowright(...demo, '--window', '1:5', '--customer', 'Pellow Boats', '--note', 'Second line.', '--valid-days', '30');
  expect(ran.exit).toBe(0);
  for (const line of ['customer: Pellow Boats', 'Second line.']) expect(ran.out.split('\n')).toContain(line);
  // 30 days after 24 November [Gregorian calendar].
  expect(ran.out).toContain('\nValid until 2026-12-24, unless');
});
test('what does not fit the page, and a day that is none, exit 2 with their limits', () => {
  const window = ['quote', 'demo.ratiowright', '--machine', 'bench-1', '--window', '1:5'] as const;
  const ran = ratiowright(...window, '--date', '2026-02-30', '--valid-days', '0', '--customer', 'n'.repeat(61), '--note', 'n'.repeat(201));
  expect([ran.exit, ran.out]).toEqual([2, '']);
  expect(ran.err.trim().split('\n').sort()).toEqual([
    '--customer takes at most 60 characters, not 61.',
    '--date takes a date as 2026-11-24, not "2026-02-30".',
    '--note takes at most 200 characters, not 201.',
    '--valid-days takes a whole number from 1 to 3650, not "0".',
  ]);
});
test('without a window, or with a page that cannot be written, it says so and exits 2', () => {
  expect(ratiowright(...demo)).toMatchObject({ exit: 2, out: '', err: 'quote needs --window LO:HI, as 1:5.\n' });
  const ran = ratiowright(...demo, '--window', '1:5', '--out', path.join(os.tmpdir(), 'no such folder', 'quote.html'));
  expect(ran.exit).toBe(2);
  expect(ran.err).toContain('cannot be written');
});

test('a material that is not complete is named, and ratios by weight are counted for the first that is', () => {
  const list = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-quote-')), 'list.csv');
  const head = 'name,ratio,basis,limits,density A g/cm3,density B g/cm3';
  writeFileSync(list, [head, 'Gamma,100:30,weight,,,', 'Alpha,2:1,weight,,1.2,1.0'].join('\n'));
  const ran = ratiowright(...demo, '--window', '1:5', '--materials-csv', list);
  expect(ran.exit).toBe(0);
  expect(ran.out).toContain('\nNot complete in the shop file, and so not on this page: Gamma.\n');
  expect(ran.out).toMatch(/^The same by weight .* for Alpha$/m);
});
test('a pump that is not the one fitted stands beside the teeth (invented example)', () => {
  const file = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-quote-')), 'pumps.ratiowright');
  // 12 over 3 cc/rev times 30 over 24 teeth is 5 : 1
  const spare = { id: 'pb3', name: 'PB3', displacement: { value: '3', unit: 'cc/rev' } };
  writeFileSync(file, demoWith([['machines', 0, 'B', 'pumps', 1], spare], [['machines', 0, 'search'], { wheels: 'rack', anyPump: true }]));
  const call = [file, '--machine', 'bench-1'] as const;
  for (const ran of [ratiowright('quote', ...call, '--window', '1:5'), ratiowright('reach', ...call, '--best')])
    expect(ran.out).toMatch(/^L5 laminating resin .* 5 : 1 .*24 to 30; pump B PB3/m);
});
