import path from 'node:path';
import { PDFDocument } from 'pdf-lib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { type Paper, SHEET_HEIGHT_mm } from '../../core/src/sheet/pageStyle.ts';
import { DIMENSIONS } from '../../core/src/units.ts';
import { startBrowser } from './browser.ts';
import { PSEUDO, pseudoDictionary, textsOf } from './pseudoWords.ts';

// What is printed, in a language in which every letter of a phrase has its mark and every phrase is a third longer.

type Pages = Readonly<Record<string, (paper: Paper) => string>>;

/** Everything that is printed of the invented example, and every text of help, in the language that is spoken when they are loaded. */
async function printed(language: 'English' | 'another') {
  vi.resetModules();
  const { speak } = await import('../../core/src/en.ts');
  speak(language === 'English' ? null : pseudoDictionary());
  return { pages: await pages(), help: await help() };
}

async function pages(): Promise<Pages> {
  const { optionFacts } = await import('../../core/src/facts/index.ts');
  const { quoteBody } = await import('../../core/src/quote/quote.ts');
  const { changeSheetPage } = await import('../../core/src/sheet/changeSheetPage.ts');
  const { checkRecordBody } = await import('../../core/src/sheet/checkRecordPage.ts');
  const { driveSvg } = await import('../../core/src/sheet/driveSvg.ts');
  const { wholePage } = await import('../../core/src/sheet/wholePage.ts');
  const { workingGroups } = await import('../../core/src/sheet/workingPage.ts');
  const { quoted } = await import('../core/quote/demoQuote.ts');
  const { inFull, recorded } = await import('../core/sheet/demoRecord.ts');
  const { E12_ON_BENCH_1, inch, made, metric, pair, U40_ON_BENCH_2 } = await import('../core/sheet/demoSheet.ts');
  const sheet = (wanted: Parameters<typeof made>[0], withWorkings?: true) => (paper: Paper) => {
    const { say = metric } = wanted;
    const { plan, option, sheet: words, drawing } = made(wanted);
    const working = withWorkings === undefined ? [] : workingGroups(optionFacts(plan, option, say), say);
    return changeSheetPage(words, driveSvg(drawing, say), paper, working);
  };
  const quote = (wanted: Parameters<typeof quoted>[0]) => (paper: Paper) => {
    const made = quoted(wanted);
    return wholePage(made.page.title, quoteBody(made), paper);
  };
  const record = (wanted: Parameters<typeof recorded>[0], withWorkings?: true) => (paper: Paper) => {
    const { record: words, charts, working } = recorded(wanted);
    const svgs = charts.map(({ svg }) => svg);
    return wholePage(words.title, checkRecordBody(words, svgs, withWorkings === undefined ? [] : working), paper);
  };
  return {
    'change sheet of E12': sheet(E12_ON_BENCH_1),
    'change sheet of E12 in inches': sheet({ ...E12_ON_BENCH_1, say: inch }),
    'change sheet of U40, four parts': sheet(U40_ON_BENCH_2),
    'change sheet that is not to be built': sheet({ ...E12_ON_BENCH_1, teeth: [pair(35, 38)] }),
    'change sheet of nothing to change': sheet({ selection: E12_ON_BENCH_1.selection }),
    'change sheet with its workings': sheet(U40_ON_BENCH_2, true),
    'quote page of Bench 1': quote({}),
    'quote page of Bench 2 in inches': quote({ machine: 'bench-2', say: inch, customer: 'Pellow Boats', validUntil: '2026-12-24' }),
    'check record that passes': record({}),
    'check record that is not proven': record({ index: 2, say: inch }),
    'check record with gross, tare and volumes': record({ change: inFull }),
    'check record with its workings': record({ index: 1 }, true),
  };
}

async function help(): Promise<readonly string[]> {
  const { optionChecks, pairChecks } = await import('../../core/src/checks/index.ts');
  const { CHECK_REASONS } = await import('../../core/src/help/checkReasons.ts');
  const { limitsOf } = await import('../../core/src/help/fieldHelp.ts');
  const { FIELD_PAGES } = await import('../../core/src/help/fields/index.ts');
  const { FIRST_CHANGE } = await import('../../core/src/help/firstChange.ts');
  const { PAGE_HELP, START_HELP } = await import('../../core/src/help/pageHelp.ts');
  const { WORDS } = await import('../../core/src/help/words/index.ts');
  const { metric } = await import('../core/sheet/demoSheet.ts');
  const boxes = FIELD_PAGES.flatMap(({ title, lines }) => [
    title,
    ...lines.flatMap((line) => [line.name, line.means, line.found, limitsOf(line, metric) ?? '']),
  ]);
  return [
    ...[START_HELP, ...Object.values(PAGE_HELP)].flatMap(({ title, what }) => [title, what]),
    ...FIRST_CHANGE.map(({ what }) => what),
    ...boxes,
    ...WORDS.flatMap(({ word, means }) => [word, means]),
    ...Object.values(CHECK_REASONS),
    ...[...pairChecks, ...optionChecks].flatMap(({ title, source }) => [title, source]),
  ];
}

/** Where the example keeps what somebody wrote; everything else of it is the program's own. */
const WRITTEN = new Set(['name', 'note', 'part', 'place', 'checklist', 'cautions', 'by', 'leftOut', 'written', 'limitsWritten']);
const OWN = [
  ...textsOf(path.resolve(import.meta.dirname, '../examples/demo.ratiowright'), WRITTEN),
  'the cup of B tipped over',
  'A. Example',
  'Pellow Boats',
  'demo.ratiowright',
  '24 Nov 2026',
  // as core/SOURCES.md calls them
  'asme-b29.1',
  'gear-pump-kinematics',
];
const UNITS = Object.values(DIMENSIONS).flatMap((units) => units.flatMap(({ name }) => name.split(/[^a-z]+/i)));
/** What stands in formulas. */
const FUNCTIONS = ['sqrt', 'sin', 'cos', 'tan', 'asin', 'acos', 'floor', 'ceil', 'abs', 'min', 'max'];
/** Groups and figures as chemists write them, with what tables count them in. */
const FORMULAS = ['AHEW', 'EEW', 'KOH', 'NCO', 'OH', 'eq', 'mg', 'mol'];
const ALIKE = new Set([...UNITS, ...FUNCTIONS, ...FORMULAS]);

/** Plain letters that stand together and are nobody's own words. */
function plainWords(texts: readonly string[]): readonly string[] {
  const rest = OWN.reduce((left, own) => left.replaceAll(own, ' '), texts.join('\n'));
  return [...new Set(rest.match(/[A-Za-z]{2,}/g) ?? [])].filter((word) => !ALIKE.has(word));
}

/** What a page says, and how its texts lie: which run over each other, which leave the page or their drawing, which are cut. */
async function look(page: Page) {
  await page.emulateMedia({ media: 'print' });
  return page.evaluate(() => {
    const sheet = document.querySelector('.sheet');
    const front = document.querySelector('.page');
    if (sheet === null || front === null) throw new Error('no sheet');
    const said: string[] = [...document.querySelectorAll('[aria-label]')].map((one) => one.getAttribute('aria-label') ?? '');
    const lines: { words: string; element: Element; left: number; right: number; top: number; bottom: number }[] = [];
    const texts = document.createTreeWalker(sheet, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
      const words = node.textContent?.trim() ?? '';
      const element = node.parentElement;
      if (words === '' || element === null) continue;
      said.push(words);
      if (element.closest('.work') !== null) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const { left, right, top, bottom } of range.getClientRects()) {
        // what stands above and below the letters may touch
        const air = (bottom - top) / 4;
        lines.push({ words, element, left: left + 1, right: right - 1, top: top + air, bottom: bottom - air });
      }
    }
    const over = lines.flatMap((one, index) =>
      lines
        .slice(index + 1)
        .filter((other) => one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom)
        .map((other) => `${one.words} | ${other.words}`),
    );
    const outside = lines.filter(({ element, left, right }) => {
      const box = (element.closest('svg') ?? sheet).getBoundingClientRect();
      return left < box.left - 2 || right > box.right + 2;
    });
    const cut = [...sheet.querySelectorAll('.one, .two')].filter((element) => element.scrollHeight > element.clientHeight + 1);
    return {
      said,
      lang: document.documentElement.lang,
      height_mm: (front.getBoundingClientRect().height * 25.4) / 96,
      hasWorkings: document.querySelector('.work') !== null,
      over,
      outside: outside.map(({ words }) => words),
      cut: cut.map((element) => element.textContent),
    };
  });
}

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

describe.each(['English', 'another'] as const)('in %s language', async (language) => {
  const { pages: all, help: texts } = await printed(language);

  test.each(Object.entries(all))('%s: one page of either paper, nothing over another, cut or beyond the edge', async (_, html) => {
    const page = await browser.newPage({ locale: 'en-US' });
    for (const paper of ['A4', 'Letter'] as const) {
      await page.setContent(html(paper));
      const pdf = await page.pdf({ preferCSSPageSize: true });
      const { lang, over, outside, cut, height_mm, hasWorkings, said } = await look(page);
      expect.soft({ over, outside, cut }, paper).toEqual({ over: [], outside: [], cut: [] });
      expect.soft(height_mm, paper).toBeLessThanOrEqual(SHEET_HEIGHT_mm + 0.1);
      if (!hasWorkings) expect.soft((await PDFDocument.load(pdf)).getPageCount(), paper).toBe(1);
      expect.soft(lang).toBe(language === 'English' ? 'en' : PSEUDO);
      if (language === 'another') expect.soft(plainWords(said), paper).toEqual([]);
    }
    await page.close();
  });

  test('help says nothing in plain English but in English', () => {
    const plain = plainWords(texts);
    if (language === 'English') expect(plain.length).toBeGreaterThan(500);
    else expect(plain).toEqual([]);
  });
});
