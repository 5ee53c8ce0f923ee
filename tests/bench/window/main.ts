import { parseArgs } from 'node:util';
import { startBrowser } from '../../app/browser.ts';
import { machineText } from '../machine.ts';
import { textOf, withWindow, write } from '../results.ts';
import { figure, markdownTable } from '../table.ts';
import { DRAGGED, type Dragging, dragging } from './dragging.ts';
import { heap } from './heap.ts';
import { opening } from './opening.ts';
import { scriptBytes, servePages } from './served.ts';

// The built window in a real browser: how soon it can be used, how long it ever holds the hand, and what it keeps.

const { values } = parseArgs({
  options: {
    quick: { type: 'boolean', default: false },
    json: { type: 'string', default: 'dist/bench/window.json' },
    table: { type: 'string' },
  },
});
const SEARCHES = values.quick ? 100 : 1000;

const heapText = (before_MB: number | null, after_MB: number | null): string => `${figure(before_MB)} and ${figure(after_MB)} MB`;

const { app, empty } = await servePages();
const browser = await startBrowser();
try {
  const used = await opening(browser, app);
  const plain = await opening(browser, empty);
  const dragged: Dragging[] = [];
  for (const one of DRAGGED) dragged.push(await dragging(browser, app, one));
  const kept = await heap(browser, app, SEARCHES);
  const lines: readonly (readonly [what: string, found: string])[] = [
    ['example usable, from navigation, median of 7', `${figure(used.median_ms)} ms`],
    ['empty page of the same build, median of 7', `${figure(plain.median_ms)} ms`],
    ['the two apart', `${figure(used.median_ms - plain.median_ms)} ms`],
    ['scripts of the built window, before compression', `${figure(scriptBytes() / 1000)} kB`],
    ...dragged.flatMap(({ what, steps, longestTask_ms, answered_ms, longestFrame_ms }): readonly (readonly [string, string])[] => [
      [
        `longest task while ${what} is dragged, ${steps} steps`,
        longestTask_ms === null ? 'none of 50 ms or more' : `${figure(longestTask_ms)} ms`,
      ],
      ['answer once the hand rests', answered_ms === null ? 'none within a minute' : `${figure(answered_ms)} ms`],
      ['longest time between two frames then', `${figure(longestFrame_ms)} ms`],
    ]),
    [`page's heap before and after ${kept.searches} searches`, heapText(kept.before.page_MB, kept.after.page_MB)],
    ["worker's heap before and after", heapText(kept.before.worker_MB, kept.after.worker_MB)],
  ];
  const widest = Math.max(...lines.map(([what]) => what.length));
  for (const [what, found] of lines) console.log(`${what.padEnd(widest)}  ${found}`);
  const found = { machine: machineText(), used, plain, scripts_bytes: scriptBytes(), dragged, heap: kept };
  write(values.json, `${JSON.stringify(found, null, 2)}\n`);
  if (values.table !== undefined)
    write(values.table, withWindow(textOf(values.table), `${machineText()}\n\n${markdownTable(['the built window', 'figure'], lines)}\n`));
} finally {
  await browser.close();
}
process.exit();
