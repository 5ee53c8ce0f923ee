import { copyFileSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { serve } from '../../build/serve.mjs';
import { PLAIN_ORDER } from '../../core/src/file/materialCsv/index.ts';
import { DIMENSIONS } from '../../core/src/units.ts';
import { type Written, withTexts } from '../../renderer/src/views/about/licences.ts';
import { launch, submenu } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { type Allowed, cutOff, leftIn, plainWords } from './otherWordsScan.ts';
import { buildPseudo, PSEUDO, pseudo, textsOf } from './pseudoWords.ts';

// The whole program in a language that nobody speaks, a third longer than English: what is still English was never marked as a phrase, and
// what is cut would be cut in a real language too.

const DEMO = path.resolve(import.meta.dirname, '../examples/demo.ratiowright');
/** Where a shop file keeps what people wrote, or what was written for them on a day; all else in it are figures and identifiers. */
const WRITTEN = new Set(['name', 'note', 'part', 'place', 'written', 'limitsWritten', 'lines']);
const OWN = textsOf(DEMO, WRITTEN);
/** As they are typed and as they are printed. */
const UNITS = Object.values(DIMENSIONS).flatMap((units) => units.flatMap(({ name }) => [name, name.replace('3', '³')]));
const whole = (names: readonly string[]) =>
  new RegExp(names.map((name) => `(?<![a-z])${name.replace(/[/()^.]/g, '\\$&')}(?![a-z])`).join('|'), 'gi');

const SOURCES = [...readFileSync(path.resolve(import.meta.dirname, '../../core/SOURCES.md'), 'utf8').matchAll(/^\| `([^`]+)`/gm)].flatMap(
  ([, id]) => id ?? [],
);

const ALLOWED: readonly Allowed[] = [
  {
    what: whole(UNITS.filter((name) => /[a-z]{3}/i.test(name)).sort((a, b) => b.length - a.length)),
    why: 'units are read as they are shown',
  },
  { what: /\b(sqrt|a?sin|a?cos|tan|floor|ceil|round|abs|min|max)(?=\()/g, why: 'functions in formulas' },
  { what: /\b(NCO|KOH|EEW|AHEW|mol)\b/g, why: 'signs of chemistry' },
  { what: whole(SOURCES), why: 'the ids by which sources are cited' },
  { what: /\bRatiowright\b/g, why: 'the name of the program' },
  { what: /[\w.-]+\.(ratiowright|csv|pdf|txt|html)\b/g, why: 'names of files' },
];

const WIDE = { width: 1280, height: 800 };
const NARROW = { width: 640, height: 800 };

let folder: string;
let address: string;
let browser: Browser;
let page: Page;
/** What is wrong, and where it was seen first. */
let wrong: Map<string, string>;

beforeAll(async () => {
  // The runner loads what lies in such a folder as Node does.
  folder = path.join(mkdtempSync(path.join(os.tmpdir(), 'ratiowright-other-words-')), 'dist');
  await buildPseudo(folder);
  address = await serve(path.join(folder, 'renderer'), 0);
  browser = await startBrowser();
}, 300_000);
afterAll(async () => {
  await browser?.close();
  rmSync(path.dirname(folder), { recursive: true, force: true });
});
beforeEach(async () => {
  wrong = new Map();
  page = await (await browser.newContext({ locale: PSEUDO, viewport: WIDE })).newPage();
  await page.addInitScript(() => {
    // Files go through the plain box, and the printer is none.
    Reflect.deleteProperty(window, 'showOpenFilePicker');
    Reflect.deleteProperty(window, 'showSaveFilePicker');
    window.print = () => undefined;
  });
  await page.goto(address);
  await button('Start empty').waitFor();
});
afterEach(() => page.context().close());

const button = (name: string) => page.getByRole('button', { name: pseudo(name) });

/** Until nothing moves any more: what is searched and drawn late has come. */
const still = (of: Page) =>
  of.evaluate(
    () =>
      new Promise<void>((resolve) => {
        let timer = setTimeout(done, 250);
        const watch = new MutationObserver(() => {
          clearTimeout(timer);
          timer = setTimeout(done, 250);
        });
        watch.observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
        function done() {
          watch.disconnect();
          resolve();
        }
      }),
  );

/** A drawing follows the width of its page a moment later. */
const drawn = (of: Page) => of.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));

function note(where: string, found: readonly string[]): void {
  for (const one of found) if (!wrong.has(one)) wrong.set(one, where);
}

/** Everything that is folded away is opened, and what that brings in turn. */
async function unfold(): Promise<void> {
  for (let more = true; more; ) {
    more = await page.evaluate(() => {
      const folded = [...document.querySelectorAll<HTMLDetailsElement>('details:not([open])')];
      for (const one of folded) one.open = true;
      return folded.length > 0;
    });
    await drawn(page);
  }
}

/** Looks at the page as it stands, wide and narrow. */
async function look(name: string, more: readonly Allowed[] = [], own = OWN, of = page): Promise<void> {
  await still(of);
  note(name, await plainWords(of, own, [...ALLOWED, ...more]));
  for (const size of [WIDE, NARROW]) {
    await of.setViewportSize(size);
    await drawn(of);
    note(`${name}, ${size.width} px`, await cutOff(of, own));
    if (process.env.SHOTS) await of.screenshot({ path: `${process.env.SHOTS}/${name.replaceAll(/\W+/g, '-')}-${size.width}.png` });
  }
  await of.setViewportSize(WIDE);
}

async function demo(key: string): Promise<void> {
  await page.keyboard.press('d');
  await expect.poll(() => page.locator('[data-rank]').count()).toBeGreaterThan(0);
  await page.keyboard.press(key);
  await page.locator('main').waitFor();
  await still(page);
}

async function choose(name: 'machine' | 'material', index: number): Promise<void> {
  await page.locator(`[name="pick.${name}"]`).selectOption({ index });
  await still(page);
}

describe('the scanner', () => {
  test('finds what is hard-coded, in a text, in a title, in a shadow tree, and beside a hole', async () => {
    await page.evaluate(() => {
      const box = document.createElement('p');
      box.title = 'a hard-coded title';
      box.textContent = 'driver ťééééťĥ';
      const host = document.createElement('div');
      host.attachShadow({ mode: 'open' }).innerHTML = '<p>on the sheet</p>';
      document.body.append(box, host);
    });
    expect(await plainWords(page, OWN, ALLOWED)).toEqual([
      'p: driver ťééééťĥ [driver]',
      'p title: a hard-coded title [hard coded title]',
      'p: on the sheet [the sheet]',
    ]);
    expect(leftIn([{ at: 'p', text: 'E12 casting epoxy, 12.5 psi, inside' }], OWN, ALLOWED)).toEqual([
      'p: E12 casting epoxy, 12.5 psi, inside [inside]',
    ]);
  });

  test('finds what is cut, what ends in dots, what stands beyond its box or the window, and a page that scrolls sideways', async () => {
    expect(await cutOff(page, OWN)).toEqual([]);
    // The content policy takes styles by script alone.
    await page.evaluate(() => {
      const put = (name: string, style: string, text: string): HTMLElement => {
        const element = document.body.appendChild(document.createElement(name));
        element.style.cssText = style;
        element.append(text);
        return element;
      };
      put('div', 'width:40px; overflow:hidden; white-space:nowrap', 'ćúúť ááť ťĥéé éńđ');
      put('div', 'width:40px; overflow:hidden; white-space:nowrap; text-overflow:ellipsis', 'éńđééđ ƀý đóóťś');
      put('div', 'width:40px; overflow:hidden; white-space:nowrap; text-overflow:ellipsis', 'E12 casting epoxy').title =
        'E12 casting epoxy';
      put('button', 'width:40px; white-space:nowrap', 'ƀééýóóńđ ííťś ƀúúťťóóń');
      put('div', 'height:8px; overflow:hidden; line-height:20px', 'ĺóóŵééŕ ťĥááń ííťś ƀóóẋ');
      put('input', 'width:40px', '').setAttribute('placeholder', 'ťóóóó ĺóóńĝ ƒóóŕ ťĥéé ƀóóẋ');
      put('p', 'position:absolute; left:1200px; white-space:nowrap', 'ƒááŕ ƀééýóóńđ ťĥéé éđĝéé óóƒ ťĥéé ŵííńđóóŵ');
    });
    const found = (await cutOff(page, OWN)).map((one) => one.replace(/\d+/g, 'n'));
    expect(found).toEqual([
      'cut: div: ćúúť ááť ťĥéé éńđ',
      'cut: div: éńđééđ ƀý đóóťś',
      'ellipsis: div: éńđééđ ƀý đóóťś',
      'beyond button: button: ƀééýóóńđ ííťś ƀúúťťóóń',
      'cut below: div: ĺóóŵééŕ ťĥááń ííťś ƀóóẋ',
      'wider than its box by n: input: ťóóóó ĺóóńĝ ƒóóŕ ťĥéé ƀóóẋ',
      'beyond the window: p: ƒááŕ ƀééýóóńđ ťĥéé éđĝéé óóƒ ťĥéé ŵííńđóóŵ',
      'the page scrolls sideways: n in n',
    ]);
  });
});

test('start, the help of it and About', async () => {
  expect(await page.evaluate(() => document.documentElement.lang)).toBe(PSEUDO);
  await look('start');
  await page.keyboard.press('F1');
  await look('start with help');
  await page.keyboard.press('Escape');
  await button('About and licences').click();
  await page.locator('dialog.about').waitFor();
  const { packages, text } = withTexts(JSON.parse(readFileSync(path.join(folder, 'renderer/licences.json'), 'utf8')) as Written);
  const licences = packages.flatMap((one) => [one.text.trim(), one.name, one.licence]);
  await look(
    'about',
    [{ what: /\bMIT\b/g, why: 'the name of our licence' }],
    [text, ...licences, ...OWN].sort((a, b) => b.length - a.length),
  );
  expect([...wrong]).toEqual([]);
});

test('machine: both machines, every slot, every group open, its help box by box', async () => {
  await demo('Alt+1');
  await unfold();
  await look('machine 1');
  await choose('machine', 1);
  await unfold();
  for (const slot of await page.locator('main .tree input').all()) {
    await slot.focus();
    await look(`machine 2, slot ${await slot.getAttribute('data-place')}`);
  }
  expect([...wrong]).toEqual([]);
});

test('material: each of them, one in three parts, a list with and without faults', async () => {
  await demo('Alt+2');
  for (const index of [0, 1, 2]) {
    await choose('material', index);
    await unfold();
    await look(`material ${index + 1}`);
  }
  await choose('material', 0);
  await page.locator('[data-place="materials.0.ratio.parts"]').fill('4 : 1 : 1');
  await look('material in three parts');
  await button('Paste a list of materials').click();
  await page.locator('textarea').fill('X1 one\t100:38.9\tweight\nX2 two\t2:1\tvolume\nX3 three\tno ratio\tweight');
  await look('list', [
    { what: new RegExp(PLAIN_ORDER.join('|'), 'g'), why: 'the heads of the list are a format' },
    { what: /\b(X1 one|X2 two|X3 three|no ratio)\b/g, why: 'typed by this test' },
  ]);
  expect([...wrong]).toEqual([]);
});

test('options: each order, several chosen and compared, with workings, other ratios, teeth tried, more to buy', async () => {
  await demo('Alt+3');
  await look('options');
  const list = page.locator('.listscroll');
  expect(await list.evaluate(({ scrollWidth, clientWidth }) => scrollWidth - clientWidth)).toBe(0);
  for (const order of [1, 2]) {
    await page.locator('[name="option-order"]').nth(order).check();
    await look(`options, order ${order}`);
  }
  await page.locator('tr.fold button').first().click();
  await look('options, dominated');
  await page.locator('[name="option-order"]').nth(0).check();
  await page.keyboard.press('c');
  for (const row of [0, 3, 9]) {
    await page.locator('[data-rank]').nth(row).click();
    await still(page);
    await unfold();
    await look(`options, row ${row} taken apart`);
  }
  await page.locator('tr.blocked').first().click();
  await look('options, a blocked one');
  await page.locator('#try-teeth').fill('12 to 40');
  await look('options, teeth tried');
  await page.locator('#try-teeth').fill('twelve');
  await look('options, teeth refused', [{ what: /twelve/g, why: 'typed by this test' }]);
  await page.locator('#try-teeth').fill('');
  await page.locator('#try-ratio').fill('100 : 60');
  await expect.poll(() => page.locator('.near tbody tr').count()).toBeGreaterThan(1);
  await look('options, a ratio tried');
  await page.locator('[data-place="machines.0.search.wheels"]').selectOption('rack and purchases');
  await look('options, some to buy');
  await page.locator('[data-place="machines.0.search.wheels"]').selectOption('any');
  await look('options, any wheels');
  expect([...wrong]).toEqual([]);
});

test('options of the other machine and materials, and where nothing can be searched', async () => {
  await demo('Alt+2');
  await choose('material', 2);
  await page.keyboard.press('Alt+3');
  await look('options for the third material');
  await page.keyboard.press('Alt+1');
  await choose('machine', 1);
  await page.keyboard.press('Alt+3');
  await page.locator('[data-rank]').first().click();
  await still(page);
  await unfold();
  await look('options of the second machine');
  await page.keyboard.press('Alt+2');
  await choose('material', 1);
  await page.keyboard.press('Alt+3');
  await look('options of the second machine for the second material');
  await page.keyboard.press('Alt+1');
  await page.locator('[data-place="machines.1.motor.speed"]').fill('');
  await page.locator('[data-place="machines.1.name"]').fill('');
  await page.keyboard.press('Alt+3');
  await look('options, not complete');
  expect([...wrong]).toEqual([]);
});

test('reach: gaps, what closes one, purchases for materials and for the window, prices, the quote page and a kept one', async () => {
  await demo('Alt+4');
  await expect.poll(() => page.locator('table.gaps tbody button').count()).toBeGreaterThan(0);
  await unfold();
  await look('reach');
  await page.locator('table.gaps tbody button').first().click();
  await expect.poll(() => page.locator('table.closers').count()).toBeGreaterThan(0);
  await look('reach, a gap');
  await button('Plan purchases').click();
  await expect.poll(() => page.locator('.plans').count()).toBe(1);
  await look('reach, purchases for materials');
  await page.locator('[name="buy-for"]').nth(1).check();
  await button('Plan purchases').click();
  await expect.poll(() => page.locator('.plans').count()).toBe(1);
  await look('reach, purchases for the window');
  await page.locator('[data-place="reach.price.teeth"]').fill('13 to 40');
  await page.locator('[data-place="reach.price.price"]').fill('25');
  await page.locator('.setprice').click();
  await look('reach, a price');
  await page.evaluate(() => (document.activeElement instanceof HTMLElement ? document.activeElement.blur() : undefined));
  await page.keyboard.press('q');
  await page.locator('.quotefields').waitFor();
  await look('quote page');
  await button('Keep this quote').click();
  await look('quote page, kept');
  expect([...wrong]).toEqual([]);
});

test('sheet, with workings, and kept ones', async () => {
  await demo('Alt+5');
  await page.locator('[name="workings"]').check();
  await look('sheet');
  await page.locator('.kept button').first().click();
  await look('sheet, a kept one');
  expect([...wrong]).toEqual([]);
});

test('ratio check: written, judged, kept ones, the record', async () => {
  await demo('Alt+6');
  await unfold();
  await look('check');
  for (const run of ['turns', 'time']) {
    await page.locator('[data-place$=".runBy"]').selectOption(run);
    await look(`check, by ${run}`);
  }
  for (const weighing of ['gross', 'tared', 'net']) {
    await page.locator('[data-place$=".weighing"]').selectOption(weighing);
    await look(`check, ${weighing}`);
  }
  const cells = page.locator('tr[data-catch] input[data-column]');
  for (const [index, text] of ['246', '95', '247', '96', '246.4', '120'].entries()) await cells.nth(index).fill(text);
  await look('check, judged');
  await page.locator('tr[data-catch] td.acts button').first().click();
  await look('check, a catch left out');
  for (const kept of await page.locator('tr[data-check] button').all()) {
    await kept.click();
    await unfold();
    await look('check, a kept one');
  }
  await button('Print check record').click();
  await page.locator('.paper-holder').waitFor();
  await look('check record');
  expect([...wrong]).toEqual([]);
});

test('help: each part of it, every box of every page, and all of it on paper', async () => {
  await demo('Alt+1');
  await page.keyboard.press('F1');
  await page.locator('.help').waitFor();
  for (const part of [1, 2, 3, 0]) {
    await page.locator('.help .parts button').nth(part).click();
    await look(`help, part ${part}`);
  }
  for (const key of ['Alt+1', 'Alt+2', 'Alt+4', 'Alt+6']) {
    await page.keyboard.press(key);
    await page.locator('main').waitFor();
    await still(page);
    await unfold();
    const said = await page.evaluate(() => {
      const boxes = [...document.querySelectorAll<HTMLElement>('main input, main select, main textarea')];
      return boxes.flatMap((box) => {
        if (!box.checkVisibility()) return [];
        box.focus();
        return [{ at: 'help', text: document.querySelector('.help')?.textContent ?? '' }];
      });
    });
    expect(said.length, key).toBeGreaterThan(5);
    note(`help on ${key}`, leftIn(said, OWN, ALLOWED));
  }
  await page.evaluate(() => {
    window.print = () => document.body.setAttribute('data-paper', document.querySelector('.helppaper')?.textContent ?? '');
  });
  await button('Print all of help').click();
  await expect.poll(() => page.evaluate(() => document.body.dataset.paper?.length ?? 0)).toBeGreaterThan(1000);
  const paper = await page.evaluate(() => document.body.dataset.paper ?? '');
  note('help', leftIn([{ at: 'on paper', text: paper }], OWN, ALLOWED));
  expect([...wrong]).toEqual([]);
});

test('the first change, step by step', async () => {
  await page.keyboard.press('F1');
  await button('First change, step by step').click();
  await page.locator('.walk').waitFor();
  await look('first change');
  expect([...wrong]).toEqual([]);
});

test('a question, a notice, a file that is refused', async () => {
  await demo('Alt+1');
  await page.locator('[data-place="machines.0.name"]').fill('Bench 1');
  await page.locator('[data-place="machines.0.name"]').fill('Other bench');
  const own = ['Other bench', ...OWN];
  await button('Open a file').click();
  await page.locator('dialog[open]').waitFor();
  await look('question', [], own);
  const chosen = page.waitForEvent('filechooser');
  await page.locator('dialog[open] button').last().click();
  const damaged = path.join(folder, 'damaged.ratiowright');
  writeFileSync(damaged, readFileSync(DEMO, 'utf8').replace('"version": 1', '"version": 99'));
  await (await chosen).setFiles(damaged);
  await page.locator('.notice').waitFor();
  await look('refused', [], own);
  expect([...wrong]).toEqual([]);
});

const UNSEEN = new Set(['id', 'role', 'accelerator', 'type', 'properties', 'extensions']);

/** Words that Electron or the system shows; a separator has none. */
const wordsIn = (value: unknown): readonly string[] =>
  JSON.stringify(value, (key, one) => (UNSEEN.has(key) ? undefined : one)).match(/(?<=:|\[|,)"[^"]*"(?!:)/g) ?? [];

test('the shell: its menu, its dialogs, failures of the disk, a file that somebody else changed, and work that an earlier start left', async () => {
  const file = path.join(folder, 'bench.ratiowright');
  copyFileSync(DEMO, file);
  const own = ['Other bench', 'Their bench', path.dirname(file), ...OWN];
  const open = [path.join(folder, 'none.ratiowright'), file];
  let app = await launch(browser, { build: folder, locale: PSEUDO, open });
  const speaks = (what: string, words: readonly string[]) => {
    expect(words.length, what).toBeGreaterThan(0);
    note(
      what,
      leftIn(
        words.map((text) => ({ at: what, text })),
        own,
        ALLOWED,
      ),
    );
  };
  try {
    await app.page.getByRole('button', { name: pseudo('Start empty') }).waitFor();
    await app.page.keyboard.press('Control+o');
    await app.page.locator('.notice').waitFor();
    await look('a file that is gone', [], own, app.page);
    await app.page.keyboard.press('Control+o');
    await app.page.locator('[data-rank]').first().waitFor();
    await expect.poll(() => submenu(app.standIn.menu(), pseudo('Page')).length).toBe(6);
    speaks('menu', wordsIn(app.standIn.menu()));
    await app.page.keyboard.press('Alt+1');
    await app.page.locator('[data-place="machines.0.name"]').fill('Other bench');
    await expect.poll(() => app.window.edited).toBe(true);
    writeFileSync(file, readFileSync(file, 'utf8').replace('"Bench 2"', '"Their bench"').replace('"Bench 1"', '"Their bench"'));
    await app.page.keyboard.press('Control+s');
    await app.page.locator('dialog[open]').waitFor();
    await look('somebody else changed it', [], own, app.page);
    await app.page.keyboard.press('Escape');
    app.window.close();
    await app.page.keyboard.press('Control+Shift+s');
    await app.page.keyboard.press('Control+p');
    const logged = () => app.stage.log.filter(([first]) => /dialog|message/.test(String(first)));
    await expect.poll(() => logged().map(([first]) => first)).toEqual(['open-dialog', 'open-dialog', 'message', 'save-dialog']);
    speaks('dialogs', wordsIn(logged().map(([, options]) => options)));
    await expect.poll(() => readdirSync(path.join(app.stage.userData, 'autosave')).length).toBeGreaterThan(0);
    await app.close();
    app = await launch(browser, { build: folder, locale: PSEUDO, userData: app.stage.userData });
    await app.page.locator('dialog[open]').waitFor();
    await look('work that was left', [], own, app.page);
  } finally {
    await app.close();
  }
  expect([...wrong]).toEqual([]);
});
