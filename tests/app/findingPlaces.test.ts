import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { answer, type Finding, type Place, placeText, readShopFile } from '../../core/src/index.ts';
import { type Change, changed, demoText, GONE, say } from '../file/shop.ts';
import { type Launched, launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';

// Whoever chooses a finding has the cursor in the box that its place names, or in one inside the group that it names.

let browser: Browser;
let app: Launched;
const folder = mkdtempSync(path.join(os.tmpdir(), 'ratiowright-places-'));
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(async () => {
  rmSync(folder, { recursive: true });
  await browser.close();
});
afterEach(() => app.close());

const MACHINE: Place = ['machines', 0];
const STAGE: Place = [...MACHINE, 'stages', 0];
const MATERIAL: Place = ['materials', 0];
const PUMPS = ['A', 'B'].map((side): Place => [...MACHINE, side, 'pumps', 0]);
const SLOTS = ['driver', 'driven'].map((end): Place => [...STAGE, end]);
const rpm = (value: string) => ({ value, unit: 'rpm' });
const gone = (at: Place, ...keys: readonly string[]): readonly Change[] => keys.map((key): Change => [[...at, key], GONE]);
const set = (at: Place, values: object): readonly Change[] => Object.entries(values).map(([key, value]): Change => [[...at, key], value]);

const EPOXY = {
  system: 'epoxy',
  resinIn: 'A',
  index: '100',
  A: { ingredients: [{ id: 'resin', by: 'EEW', value: '190' }] },
  B: { ingredients: [{ id: 'hardener', by: 'AHEW', value: '50' }] },
};
const BARE_SLOT = ['teethFrom', 'teethTo', 'bore', 'keyway', 'guard'] as const;

const CASES: readonly (readonly [name: string, changes: readonly Change[], expected: readonly string[]])[] = [
  [
    'only the near end of each range is given',
    [
      ...PUMPS.flatMap((at) => [...gone(at, 'speedTo'), ...set(at, { speedFrom: rpm('10') })]),
      ...SLOTS.flatMap((at) => [...gone(at, 'teethFrom'), ...set(at, { teethTo: 40 })]),
    ],
    ['machines.0.A.pumps.0.speedTo'],
  ],
  ['the far end of a speed narrows the dial', set(PUMPS[1] ?? [], { speedTo: rpm('50') }), ['machines.0.B.pumps.0.speedTo']],
  [
    'teeth may be bought, but one slot has no upper end',
    [...SLOTS.flatMap((at) => gone(at, 'teethTo')), ...set(MACHINE, { search: { wheels: 'rack and purchases', purchases: 1 } })],
    ['machines.0.stages.0.driver.teethTo'],
  ],
  ['purchases that are not bought', set(MACHINE, { search: { wheels: 'rack', purchases: 2 } }), ['machines.0.search.purchases']],
  [
    'as little as a plan needs',
    [
      ...gone([...MACHINE, 'motor'], 'usable', 'dialStep', 'ratedTorque'),
      ...gone(MACHINE, 'rack', 'wantedFlow', 'mixerVolume', 'serviceFactor'),
      ...['A', 'B'].flatMap((side) => gone([...MACHINE, side], 'pressure', 'mechanicalEfficiency', 'tank')),
      ...set(MACHINE, { batch: { of: 'mix', amount: { value: '40', unit: 'L' } } }),
      ...PUMPS.flatMap((at) => gone(at, 'tolerance', 'speedFrom', 'speedTo', 'gear')),
      ...gone(STAGE, 'pitches', 'centreNow', 'centre', 'takeUp'),
      ...SLOTS.flatMap((at) => gone(at, ...BARE_SLOT)),
      ...gone(MATERIAL, 'limits'),
      ...['A', 'B'].flatMap((side) => gone([...MATERIAL, side], 'expansion', 'runAt', 'viscosity', 'temperatureUncertainty')),
    ],
    ['machines.0.A.tank', 'machines.0.A.pumps.0.speedFrom', 'materials.0.limits', 'materials.0.A.runAt'],
  ],
  [
    'a third part in tank A of which nothing is known',
    [
      ...set([...MATERIAL, 'ratio'], { parts: '4:1:1', thirdInto: 'A' }),
      ...set(MATERIAL, { third: { density: { value: { value: '1.1', unit: 'g/cm3' } } } }),
      ...['A', 'B'].flatMap((side) => gone([...MATERIAL, side], 'densityUncertainty')),
      ...set([...MATERIAL, 'A'], { densityUncertainty: { value: '0.2', unit: '%' } }),
      ...set([...MATERIAL, 'B'], { densityUncertainty: { value: '0.2', unit: '%' } }),
    ],
    ['materials.0.third.densityUncertainty'],
  ],
  [
    'a mixture in tank A of which little is known',
    [
      ...set([...MATERIAL, 'ratio'], { parts: '4:1:1', thirdInto: 'A' }),
      ...set(MATERIAL, {
        premix: { density: { value: { value: '1.1', unit: 'g/cm3' } }, densityUncertainty: { value: '0.2', unit: '%' } },
      }),
    ],
    ['materials.0.premix.density.at', 'materials.0.premix.temperatureUncertainty'],
  ],
  [
    'nothing that a plan needs',
    [
      ...gone([...MACHINE, 'motor'], 'speed'),
      ...PUMPS.flatMap((at) => gone(at, 'displacement')),
      ...SLOTS.flatMap((at) => gone(at, 'teeth')),
      ...set(MATERIAL, { ratio: {} }),
    ],
    ['machines.0.motor.speed', 'machines.0.stages.0.driven.teeth', 'materials.0.ratio.parts', 'materials.0.ratio.basis'],
  ],
  [
    'a ratio written as B per 100 A is empty',
    set(MATERIAL, { ratio: { basis: 'weight', perHundredA: '0' } }),
    ['materials.0.ratio.perHundredA'],
  ],
  [
    'chemistry with an empty tank',
    [...gone(MATERIAL, 'ratio'), ...set(MATERIAL, { chemistry: { ...EPOXY, B: { ingredients: [] } } })],
    ['materials.0.chemistry.B.ingredients'],
  ],
  [
    'a second ratio beside chemistry',
    [...gone(MATERIAL, 'ratio'), ...set(MATERIAL, { chemistry: EPOXY, otherRatio: { basis: 'volume', parts: '2:1' } })],
    ['materials.0.otherRatio'],
  ],
];

/** All that stands on the Options page of the file: against the plan, or of the plan and of the option that is chosen first. */
function findingsOf(text: string): readonly Finding[] {
  const read = readShopFile(text);
  if (!read.ok) throw new Error(JSON.stringify(read.findings));
  const selection = { machine: 'bench-1', material: 'e12' };
  const found = answer(read.value, { selection, say });
  if (!found.ok) return found.findings;
  const chosen = found.value.options[0];
  return [...found.value.findings, ...(chosen?.findings ?? [])].filter(({ where }) => where.length > 0);
}

/** The place of the box that holds the cursor, with those that it holds beside it. */
const cursor = (page: Page) =>
  page.evaluate(() => [document.activeElement?.getAttribute('data-place'), document.activeElement?.getAttribute('data-also')]);

/** A box of the place itself, of a group, or of a figure that is typed together with its error. */
function holds([place, also]: readonly (string | null | undefined)[], wanted: string): boolean {
  if (also?.split(' ').includes(wanted)) return true;
  return place === wanted || place?.startsWith(`${wanted}.`) === true || /^\.(?:value|uncertainty)$/.test(wanted.replace(place ?? '', ''));
}

async function choose(page: Page, words: string): Promise<void> {
  await page.keyboard.press('Alt+3');
  // Some stand in a block that is closed, where no mouse reaches them.
  const chosen = () =>
    page.evaluate((named) => {
      const buttons = [...document.querySelectorAll<HTMLElement>('main.options button')];
      const button = buttons.find((one) => (one.querySelector('small') ?? one).textContent?.trim() === named);
      button?.click();
      return button !== undefined;
    }, words);
  await expect.poll(chosen, { message: words }).toBe(true);
}

/** Most findings of the example stand in several cases; each place is sought once. */
const reached = new Set<string>();

describe('a finding puts the cursor in its box [our choice]', () => {
  test.each(CASES)('%s', async (_name, changes, expected) => {
    const text = JSON.stringify(changed(JSON.parse(demoText()), ...changes));
    const places = new Map(findingsOf(text).map(({ where }) => [where.join('.'), placeText(where)]));
    expect([...places.keys()]).toEqual(expect.arrayContaining([...expected]));
    const file = path.join(folder, 'shop.ratiowright');
    writeFileSync(file, text);
    app = await launch(browser, { args: [file] });
    await expect.poll(() => app.page.locator('nav small').first().textContent()).toContain('shop.ratiowright');
    for (const [wanted, words] of places) {
      if (reached.has(wanted)) continue;
      reached.add(wanted);
      await choose(app.page, words);
      await expect.poll(async () => holds(await cursor(app.page), wanted), { message: wanted }).toBe(true);
    }
  });
});
