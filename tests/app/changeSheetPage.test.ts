import fc from 'fast-check';
import { PDFDocument } from 'pdf-lib';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { changeSheetPage } from '../../core/src/sheet/changeSheetPage.ts';
import { driveSvg } from '../../core/src/sheet/driveSvg.ts';
import { type Paper, SHEET_HEIGHT_mm, SHEET_WIDTH_mm } from '../../core/src/sheet/pageStyle.ts';
import { textWidth_em } from '../../core/src/sheet/textWidth.ts';
import { bench, E12_ON_BENCH_1, inch, made, metric, pair, thirdStage, U40_ON_BENCH_2 } from '../core/sheet/demoSheet.ts';
import { startBrowser } from './browser.ts';
import { lineLengths_pt } from './pdfLines.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

type Wanted = Parameters<typeof made>[0];

function html(wanted: Wanted, paper: Paper = 'A4'): string {
  const { sheet, drawing } = made(wanted);
  return changeSheetPage(sheet, driveSvg(drawing, wanted.say ?? metric), paper);
}

async function opened<T>(text: string, look: (page: Page) => Promise<T>): Promise<T> {
  const context = await browser.newContext({ locale: 'en-US' });
  try {
    const page = await context.newPage();
    await page.setContent(text);
    return await look(page);
  } finally {
    await context.close();
  }
}

/** Everything a file may hold in full: three stages with every wheel new, six lines of checklist, four cautions. */
const crowded = (own: {
  readonly checklist: readonly string[];
  readonly cautions: readonly string[];
  readonly name: (name: string) => string;
}): Wanted => ({
  selection: U40_ON_BENCH_2.selection,
  teeth: [pair(22, 32), pair(26, 17), pair(25, 16)],
  change: (file) => {
    thirdStage(file);
    bench(file, 'bench-2').checklist = [...own.checklist];
    for (const material of file.materials) material.cautions = [...own.cautions];
    rename(file, own.name);
  },
});

function rename(file: ShopFile, name: (name: string) => string): void {
  file.shop.name = name(file.shop.name);
  for (const machine of file.machines) {
    machine.name = name(machine.name);
    for (const stage of machine.stages) stage.name = name(stage.name ?? stage.id);
    for (const side of [machine.A, machine.B]) for (const pump of side.pumps) pump.name = name(pump.name ?? pump.id);
  }
  for (const material of file.materials) {
    material.name = name(material.name);
    for (const side of [material.A, material.B]) side.name = name(side.name ?? '');
  }
  for (const piece of file.racks.flatMap((rack) => rack.pieces)) {
    piece.part = name(piece.part ?? '');
    piece.place = name(piece.place ?? '');
  }
}

const CHECKLIST = [
  'Hoses and heater bands free of the guard',
  'Tank B: nitrogen blanket back on',
  'Photo of both sprockets to the line lead',
  'Old chain tagged and put with the scrap',
  'Dial noted in the log',
  'Mixer and nozzle renewed before the first shot',
];
const CAUTIONS = [
  'Isocyanate: supplied-air hood in the booth, nobody in training inside.',
  'Hardener is corrosive: eye wash tried before the tank is opened.',
  'No more than 200 g mixed in one cup.',
  'Cured dust: wet sanding only.',
];
const WORDS = 'The bench by the north door, behind the second column, which the night shift shares with the casting line '.repeat(2);
const full = (start: string): string => (start + WORDS).slice(0, 200);

const SHEETS: readonly (readonly [string, Wanted])[] = [
  ['E12 on Bench 1', E12_ON_BENCH_1],
  ['E12 on Bench 1 in inches', { ...E12_ON_BENCH_1, say: inch }],
  ['U40 on Bench 2, four parts', U40_ON_BENCH_2],
  ['a change that is not to be built', { ...E12_ON_BENCH_1, teeth: [pair(35, 38)] }],
  ['nothing to change', { selection: E12_ON_BENCH_1.selection }],
  ['three stages, six checklist lines, four cautions', crowded({ checklist: CHECKLIST, cautions: CAUTIONS, name: (name) => name })],
  ['the same with every name 200 characters long', crowded({ checklist: CHECKLIST, cautions: CAUTIONS, name: full })],
  ['names of one unbroken word', crowded({ checklist: CHECKLIST, cautions: CAUTIONS, name: () => 'W'.repeat(200) })],
  ['every line of the shop 200 characters long', crowded({ checklist: CHECKLIST.map(full), cautions: CAUTIONS.map(full), name: full })],
];

// Paper sizes as Chromium prints them; a millimetre is 72/25.4 points [PDF reference: 72 points to the inch].
const SIZES_pt: Readonly<Record<Paper, readonly [number, number]>> = { A4: [594.96, 841.92], Letter: [612, 792] };

describe.each(SHEETS)('%s', (_, wanted) => {
  test.each(['A4', 'Letter'] as const)('is one page of %s', async (paper) => {
    const pdf = await opened(html(wanted, paper), (page) => page.pdf({ preferCSSPageSize: true }));
    const pages = (await PDFDocument.load(pdf)).getPages();
    expect(pages).toHaveLength(1);
    const size = pages[0]?.getSize();
    expect(Math.abs((size?.width ?? 0) - SIZES_pt[paper][0])).toBeLessThan(1);
    expect(Math.abs((size?.height ?? 0) - SIZES_pt[paper][1])).toBeLessThan(1);
    // The bar that proves the scale: 100 mm within half a millimetre.
    const bar = (await lineLengths_pt(pdf)).filter((length) => Math.abs((length * 25.4) / 72 - 100) <= 0.5);
    expect(bar).toHaveLength(1);
  });

  test('nothing lies outside the block that both papers have, nothing overlaps', async () => {
    const boxes = await opened(html(wanted), async (page) => {
      await page.emulateMedia({ media: 'print' });
      return page.evaluate(() => {
        const box = (element: Element) => element.getBoundingClientRect();
        const sheet = document.querySelector('.sheet');
        if (sheet === null) throw new Error('no sheet');
        const wide = [...sheet.querySelectorAll('*')].filter(
          (element) =>
            element.closest('svg') === null && (box(element).right > box(sheet).right + 1 || box(element).left < box(sheet).left - 1),
        );
        const blocks = [...sheet.children].map((block) => ({ top: box(block).top, bottom: box(block).bottom }));
        return { width: box(sheet).width, height: box(sheet).height, wide: wide.map((element) => element.outerHTML.slice(0, 80)), blocks };
      });
    });
    expect((boxes.width * 25.4) / 96).toBeCloseTo(SHEET_WIDTH_mm, 1);
    expect((boxes.height * 25.4) / 96).toBeLessThanOrEqual(SHEET_HEIGHT_mm + 0.1);
    expect(boxes.wide).toEqual([]);
    const gaps = boxes.blocks.slice(1).map((block, index) => block.top - (boxes.blocks[index]?.bottom ?? 0));
    expect(Math.min(...gaps)).toBeGreaterThanOrEqual(0);
  });
});

describe('the page', () => {
  test('asks for nothing from anywhere, and its policy forbids it', async () => {
    const context = await browser.newContext({ locale: 'en-US' });
    const page = await context.newPage();
    const asked: string[] = [];
    const said: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    page.on('console', (message) => said.push(message.text()));
    await page.setContent(html(U40_ON_BENCH_2));
    await page.pdf({ preferCSSPageSize: true });
    expect(asked).toEqual([]);
    expect(said).toEqual([]);
    // The policy holds: what is not in the page cannot be fetched into it.
    await page.evaluate(() => {
      const image = document.createElement('img');
      image.src = 'data:image/gif;base64,R0lGODlhAQABAAAAACw=';
      document.body.append(image);
    });
    await expect.poll(() => said.join()).toContain('Content Security Policy');
    await context.close();
  });

  test('the bar is 100 mm in the layout, at 96 px to the inch [CSS: 1 in = 96 px]', async () => {
    const width_px = await opened(html(E12_ON_BENCH_1), (page) =>
      page.locator('#bar').evaluate((bar) => bar.getBoundingClientRect().width),
    );
    expect(Math.abs((width_px * 25.4) / 96 - 100)).toBeLessThanOrEqual(0.5);
  });

  test('black on white: every text, also on a screen that is set to dark', async () => {
    const colours = await opened(html({ ...E12_ON_BENCH_1, teeth: [pair(35, 38)] }), async (page) => {
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
      return page.evaluate(() => {
        const all = [...document.querySelectorAll('html, body, body *')];
        const inSvg = (element: Element) => element.closest('svg') !== null;
        return {
          texts: [...new Set(all.filter((element) => !inSvg(element)).map((element) => getComputedStyle(element).color))],
          grounds: [...new Set(all.map((element) => getComputedStyle(element).backgroundColor))].sort(),
          drawn: [...new Set(all.filter((element) => element.tagName === 'text').map((element) => getComputedStyle(element).fill))],
        };
      });
    });
    expect(colours).toEqual({
      texts: ['rgb(0, 0, 0)'],
      grounds: ['rgb(255, 255, 255)', 'rgba(0, 0, 0, 0)'].sort(),
      drawn: ['rgb(0, 0, 0)'],
    });
  });

  test('cautions stand above everything that is to be done, and the mark above them where it is not to be built', async () => {
    const order = await opened(html({ ...E12_ON_BENCH_1, teeth: [pair(35, 38)] }), (page) => page.locator('main').textContent());
    const at = [
      'NOT TO BE BUILT',
      'Before the guard comes off',
      'Take off',
      'Ratio after the change',
      'Steps',
      'Ratio check',
      'Released for use',
    ].map((words) => order?.indexOf(words) ?? -1);
    expect(at.every((place) => place >= 0)).toBe(true);
    expect(at).toEqual([...at].sort((a, b) => a - b));
    expect(order).toContain('invented example');
  });

  test('a box to tick before every step, three rows to write on', async () => {
    const { sheet } = made(U40_ON_BENCH_2);
    const counts = await opened(html(U40_ON_BENCH_2), async (page) => [
      await page.locator('.steps li .box').count(),
      await page.locator('tr.blank').count(),
    ]);
    expect(counts).toEqual([sheet.steps.lines.length, 3]);
  });

  test('the widths by which texts are set are not narrower than those of the font here', async () => {
    const sentences = made(U40_ON_BENCH_2).sheet.steps.lines;
    const widths = await opened(html(U40_ON_BENCH_2), (page) =>
      page.evaluate((words) => {
        const pen = document.createElement('canvas').getContext('2d');
        if (pen === null) throw new Error('no canvas');
        pen.font = `100px ${getComputedStyle(document.body).fontFamily}`;
        return words.map((word) => pen.measureText(word).width / 100);
      }, sentences),
    );
    for (const [index, sentence] of sentences.entries()) {
      expect(textWidth_em(sentence), sentence).toBeGreaterThanOrEqual(widths[index] ?? Number.POSITIVE_INFINITY);
    }
  });
});

describe('the user’s own words', () => {
  const plainTags = () =>
    opened(html(crowded({ checklist: CHECKLIST, cautions: CAUTIONS, name: () => 'plain' })), (page) =>
      page.evaluate(() => [...document.querySelectorAll('*')].map((element) => element.tagName).sort()),
    );

  const marked = fc.string({
    unit: fc.constantFrom(
      '<script>',
      '</script>',
      '<img src=x onerror=alert(1)>',
      '</title>',
      '</style>',
      '<!--',
      '-->',
      '&lt;',
      '&',
      '"',
      "'",
      '>',
      '<',
      ' b',
      'ä',
    ),
    minLength: 1,
    maxLength: 6,
  });

  test('never become markup: the same elements stand there whatever the words, and the words read as they were typed', async () => {
    const wanted = await plainTags();
    await fc.assert(
      fc.asyncProperty(marked, async (words) => {
        const own = words.slice(0, 200);
        const nasty = { ...crowded({ checklist: Array(6).fill(own), cautions: Array(4).fill(own), name: () => own }), number: own };
        const found = await opened(html(nasty), (page) =>
          page.evaluate(() => ({
            tags: [...document.querySelectorAll('*')].map((element) => element.tagName).sort(),
            step: document.querySelector('.steps ol:last-child li:last-child')?.textContent,
            machine: document.querySelector('.top .big')?.textContent,
          })),
        );
        expect(found.tags).toEqual(wanted);
        expect(found.step).toBe(own);
        expect(found.machine).toBe(own);
      }),
      { numRuns: 20 },
    );
  });
});
