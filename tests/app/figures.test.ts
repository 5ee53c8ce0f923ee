// Every figure of the chosen option: the same as the headless command gives, and each opens to how it came about.
import path from 'node:path';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, test } from 'vitest';
import { examples, ratiowright } from '../cli/run.ts';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { launchDemo, openOffered, pick, settled } from './journey.ts';

let browser: Browser;
let app: Launched;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());
afterEach(() => app.close());

interface WorkingJson {
  readonly formula: string;
  readonly source: string;
  readonly valueSI: number;
  readonly put: Readonly<Record<string, { readonly what: string; readonly unit: string; readonly valueSI: number }>>;
}
/** With `value` and `unit`, or with `text` where the figure is a word. */
type FigureJson = Readonly<{ what: string; value?: number; unit?: string; text?: string; note?: string; working?: WorkingJson }>;
type Figures = Readonly<Record<string, Readonly<Record<string, FigureJson>>>>;

function headless(file: string, machine: string, material: string): Figures {
  const { out } = ratiowright('options', file, '--machine', machine, '--material', material, '--json', '--workings', '--rows', '1');
  return (JSON.parse(out) as { readonly options: readonly { readonly figures: Figures }[] }).options[0]?.figures ?? {};
}

const plain = (text: string | null | undefined): string => (text ?? '').replaceAll('\u00a0', ' ').replaceAll('³', '3');
const placesIn = (figure: string): number => (/\.(\d+)/.exec(figure)?.[1] ?? '').length;
const unitIn = (figure: string): string => figure.replace(/^[−+±]?[\d.]+( × 10\S+)? ?/, '');
/** The number of a figure on screen, as `6.2 × 10⁻⁴ 1/K`, `index 105.00` or `0.075 % B-lean`. */
function numberIn(figure: string): number {
  const power = (marks: string) => `e${[...marks].map((mark) => '-0123456789'['⁻⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(mark)]).join('')}`;
  const written = figure.replace('−', '-').replace(/ × 10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)/, (_, marks: string) => power(marks));
  return Number.parseFloat(/-?\d.*/.exec(written)?.[0] ?? '') * (figure.endsWith('B-lean') ? -1 : 1);
}

test.each([
  ['demo.ratiowright', 'bench-1', 'e12', 0, 0],
  ['demo.ratiowright', 'bench-2', 'u40', 1, 1],
  ['three-pair.ratiowright', 'train', 'target', 0, 0],
])('%s, %s, %s: the figures shown are those of the headless command, in its order', async (file, machine, material, m, n) => {
  app = await launch(browser, { open: [path.join(examples, file)] });
  const { page } = app;
  await openOffered(page, file);
  await pick(page, 'Alt+1', 'Machine', m);
  await pick(page, 'Alt+2', 'Material', n);
  await page.keyboard.press('Alt+3');
  await settled(page);
  const groups = await page.locator('[data-group]').evaluateAll((all) =>
    all.map((group) => {
      const text = (fact: Element, part: string) => (fact.querySelector(':scope > summary') ?? fact).querySelector(part)?.textContent;
      const facts = [...group.querySelectorAll(':scope > .fact')];
      return [
        group.getAttribute('data-group') ?? '',
        facts.map((fact) => ['.what', 'b', 'small'].map((part) => text(fact, part))),
      ] as const;
    }),
  );
  const expected = Object.entries(headless(file, machine, material));
  expect(groups.map(([id]) => id)).toEqual(expected.map(([id]) => id));
  expected.forEach(([, figures], index) => {
    const shown = (groups[index]?.[1] ?? []).map((texts) => texts.map(plain));
    expect(shown.map(([what, , note]) => [what, note])).toEqual(Object.values(figures).map(({ what, note }) => [what, note].map(plain)));
    Object.values(figures).forEach(({ what, value, unit, text }, at) => {
      const figure = shown[at]?.[1] ?? '';
      expect(figure, what).toContain(text ?? unit);
      if (value === undefined) return;
      expect(Math.abs(numberIn(figure) - value), `${what}: ${figure}`).toBeLessThanOrEqual(0.50001 / 10 ** placesIn(figure));
    });
  });
});

async function demo(): Promise<Page> {
  app = await launchDemo(browser);
  return app.page;
}

/** What a working says, of those it holds only the line that opens them. */
const read = (working: Locator) =>
  working.evaluate((box) => {
    const own = (part: string) => [...box.querySelectorAll(`:scope > ${part}`)].map((element) => element.textContent);
    const lines = [...box.querySelectorAll(':scope > ul > li')].map((line) => (line.querySelector('summary') ?? line).textContent);
    return { formulas: own('p.formula'), lines, result: own('p:not([class]) > b').join(), source: own('p.faint').join() };
  });
const SMALL: Readonly<Record<string, string>> = { L: 'cc', kg: 'g' };

test('by mouse every figure opens to its formula, the numbers put in with units, the result and the source', async () => {
  const page = await demo();
  const groups = Object.entries(headless('demo.ratiowright', 'bench-1', 'e12'));
  expect(groups).toHaveLength(await page.locator('[data-group]').count());
  for (const [id, figures] of groups) {
    await page.locator(`[data-group="${id}"] > summary`).click();
    for (const [key, { working }] of Object.entries(figures)) {
      const fact = page.locator(`[data-group="${id}"] > [data-fact="${key}"]`);
      expect(await fact.count()).toBe(working === undefined ? 0 : 1);
      if (working === undefined) continue;
      await fact.locator('> summary').click();
      expect(await fact.locator('> .working').isVisible(), key).toBe(true);
      const seen = await read(fact.locator('> .working'));
      expect([plain(seen.formulas[0]), seen.source], key).toEqual([working.formula.replaceAll('³', '3'), `Source: ${working.source}`]);
      const six = (shown: string | undefined, value: number) =>
        expect(Math.abs(numberIn(shown ?? '') - value), `${key}: ${shown}`).toBeLessThanOrEqual(5.0001e-6 * Math.abs(value));
      six(plain(seen.formulas[1]).split(' = ').at(-1), working.valueSI);
      six(/\((.+)\)$/.exec(plain(seen.result))?.[1] ?? plain(seen.result), working.valueSI);
      expect(seen.lines).toHaveLength(Object.keys(working.put).length);
      Object.entries(working.put).forEach(([letter, put], at) => {
        const line = plain(seen.lines[at]);
        const [, figure = '', si = figure] = /^\S+ = (.+?)(?: \((.+?)\))?, /.exec(line) ?? [];
        expect([line.startsWith(`${letter} = `), line.endsWith(`, ${plain(put.what)}`)], line).toEqual([true, true]);
        expect([put.unit, SMALL[put.unit]], line).toContain(unitIn(figure));
        six(si, put.valueSI);
      });
    }
  }
  const shown = ['flowA', 's1.driverPitchDiameter'].map((key) => page.locator(`[data-fact="${key}"] > summary b`).textContent());
  // 12 cc/rev at 57.15 rpm [definition of displacement]; 12.7 mm / sin(180°/23) [ISO 606, from memory].
  expect((await Promise.all(shown)).map(plain)).toEqual(['685.8 cc/min', '93.27 mm']);
});

test('by keyboard W opens every group, Tab and Enter a figure and what it rests on; in a box W is a letter', async () => {
  const page = await demo();
  const open = () => page.locator('[data-group]').evaluateAll((all) => all.filter((group) => group.hasAttribute('open')).length);
  await page.keyboard.press('t');
  await page.keyboard.type('w');
  expect([await page.locator('#try-teeth').inputValue(), await open()]).toEqual(['w', 0]);
  await page.locator('#try-teeth').fill('');
  await page.locator('.optiontable [data-rank="1"]').focus();
  await page.keyboard.press('w');
  expect(await open()).toBe(await page.locator('[data-group]').count());
  for (const key of ['Tab', 'Enter', 'Tab', 'Enter']) await page.keyboard.press(key);
  // 100 : 38.9 by weight at 0.97 and 1.1479 g/cm³ is 0.460344 B per A by volume [arithmetic: weight ratio = volume ratio × density ratio].
  const wanted = await read(page.locator('[data-fact="wanted"] > .working'));
  expect([wanted.formulas, wanted.result]).toEqual([['R = 1 / r', 'R = 1 / 0.460344 = 2.17229'], '2.17229']);
  const nested = page.locator('[data-fact="wanted"] > .working > ul .working').first();
  expect([await nested.isVisible(), (await read(nested)).formulas]).toEqual([true, ['r = w / d', 'r = 0.389 / 0.845021 = 0.460344']]);
  await page.keyboard.press('w');
  expect([await open(), await nested.isVisible()]).toEqual([0, false]);
});
