// The screen and the headless command speak of the same thing: same options, same figures, same findings, for every example.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readShopFile } from '../../core/src/index.ts';
import { examples, ratiowright } from '../cli/run.ts';
import { launch } from '../harness/launch.ts';
import { startBrowser } from './browser.ts';
import { openOffered, pick, settled } from './journey.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(() => browser.close());

interface OptionJson {
  readonly ratioAPerBByVolume: { readonly exact: string };
  readonly partsChanged: number;
  readonly minutes: number;
  readonly findings: readonly { readonly check: string; readonly severity: string; readonly what: string }[];
}

const CASES = readdirSync(examples).flatMap((name) => {
  const read = readShopFile(readFileSync(path.join(examples, name), 'utf8'));
  if (!read.ok) throw new Error(name);
  return read.value.machines.flatMap((machine, m) =>
    read.value.materials.map((material, n) => ({ name, machine: machine.id, material: material.id, m, n })),
  );
});

test.each(CASES)('$name, $machine, $material', async ({ name, machine, material, m, n }) => {
  const headless = JSON.parse(ratiowright('options', name, '--machine', machine, '--material', material, '--json').out) as {
    readonly options: readonly OptionJson[];
    readonly fitted: OptionJson;
  };
  const app = await launch(browser, { open: [path.join(examples, name)] });
  try {
    const { page } = app;
    await openOffered(page, name);
    await pick(page, 'Alt+1', 'Machine', m);
    await pick(page, 'Alt+2', 'Material', n);
    await page.keyboard.press('Alt+3');
    await settled(page);
    const more = page.getByRole('button', { name: /^Show all/i });
    if ((await more.count()) > 0) await more.first().click();
    const rows = page.locator('[data-rank]');
    await expect.poll(() => rows.count()).toBe(headless.options.length);
    const onScreen = await rows.evaluateAll((all) => all.map((row) => [row.getAttribute('data-rank'), row.getAttribute('data-ratio')]));
    expect(onScreen).toEqual(headless.options.map((option, index) => [String(index + 1), option.ratioAPerBByVolume.exact]));

    const figures = await rows.evaluateAll((all) =>
      all.map((row) => [...row.querySelectorAll('td.num')].map((cell) => cell.textContent ?? '')),
    );
    headless.options.forEach((option, index) => {
      expect(figures[index], `row ${index + 1}`).toEqual(expect.arrayContaining([String(option.partsChanged), String(option.minutes)]));
    });

    const findings = await page
      .locator('[data-check]')
      .evaluateAll((all) => all.map((one) => [one.getAttribute('data-check'), one.getAttribute('data-severity')].join(' ')));
    const first = headless.options[0]?.findings.map(({ check, severity }) => `${check} ${severity}`) ?? [];
    for (const finding of first) expect(findings).toContain(finding);
    const side = (await page.locator('section.side').textContent())?.replaceAll('\u00A0', ' ') ?? '';
    for (const { what } of headless.options[0]?.findings ?? []) expect(side).toContain(what.replaceAll('\u00A0', ' '));
  } finally {
    await app.close();
  }
});
