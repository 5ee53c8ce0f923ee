import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { iconFiles } from '../../build/icons.ts';
import { startBrowser } from './browser.ts';

// The formats in brackets are read here by their own description, not by the code that wrote them.

const ROOT = path.resolve(import.meta.dirname, '../..');
let browser: Browser;
let fresh: ReadonlyMap<string, Buffer>;
beforeAll(async () => {
  browser = await startBrowser();
  fresh = await iconFiles(browser);
});
afterAll(() => browser.close());

const kept = (place: string): Buffer => readFileSync(path.join(ROOT, place));

/** How far two PNG of one size are apart, in mean steps of 0 to 255; their pixels stay in the browser. */
async function apart(page: Page, was: Buffer, is: Buffer): Promise<number> {
  return page.evaluate(
    async (both) => {
      const [first, second] = await Promise.all(
        both.map(async (base64) => {
          const image = new Image();
          image.src = `data:image/png;base64,${base64}`;
          await image.decode();
          const canvas = Object.assign(document.createElement('canvas'), { width: image.naturalWidth, height: image.naturalHeight });
          const context = canvas.getContext('2d');
          if (context === null) throw new Error('no canvas');
          context.drawImage(image, 0, 0);
          return context.getImageData(0, 0, canvas.width, canvas.height).data;
        }),
      );
      if (first === undefined || second === undefined || first.length !== second.length) return Number.POSITIVE_INFINITY;
      return first.reduce((sum, byte, index) => sum + Math.abs(byte - (second[index] ?? 0)), 0) / first.length;
    },
    [was, is].map((png) => png.toString('base64')),
  );
}

/** [PNG: eight bytes, then the head with width at 16 and height at 20; RFC 2083, from memory] */
function sizeOf(png: Buffer): readonly [number, number] {
  expect(png.subarray(0, 8).toString('latin1')).toBe('\x89PNG\r\n\x1a\n');
  return [png.readUInt32BE(16), png.readUInt32BE(20)];
}

/** [ICO: 6 bytes of head with the count at 4, then 16 bytes each: side at 0 and 1, 0 meaning 256, length at 8, place at 12; from memory] */
function picturesOfIco(file: Buffer): readonly (readonly [number, Buffer])[] {
  expect([file.readUInt16LE(0), file.readUInt16LE(2)]).toEqual([0, 1]);
  return Array.from({ length: file.readUInt16LE(4) }, (_one, index) => {
    const entry = file.subarray(6 + 16 * index);
    const [from, length] = [entry.readUInt32LE(12), entry.readUInt32LE(8)];
    expect(entry[0]).toBe(entry[1]);
    return [entry[0] || 256, file.subarray(from, from + length)] as const;
  });
}

const APPLE_SIDES: Readonly<Record<string, number>> = {
  ic07: 128,
  ic08: 256,
  ic09: 512,
  ic10: 1024,
  ic11: 32,
  ic12: 64,
  ic13: 256,
  ic14: 512,
};
/** [ICNS: "icns" and the length of all, then type, length and content of each; from memory] */
function picturesOfIcns(file: Buffer): readonly (readonly [number, Buffer])[] {
  expect([file.toString('latin1', 0, 4), file.readUInt32BE(4)]).toEqual(['icns', file.length]);
  const pictures: (readonly [number, Buffer])[] = [];
  for (let at = 8; at < file.length; at += file.readUInt32BE(at + 4))
    pictures.push([APPLE_SIDES[file.toString('latin1', at, at + 4)] ?? 0, file.subarray(at + 8, at + file.readUInt32BE(at + 4))]);
  return pictures;
}

const picturesOf = (place: string, content: Buffer): readonly (readonly [number, Buffer])[] => {
  if (place.endsWith('.ico')) return picturesOfIco(content);
  if (place.endsWith('.icns')) return picturesOfIcns(content);
  return [[Number(/(\d+)x\d+\.png$/.exec(place)?.[1]), content]];
};

test('the icons that are kept are those the script writes, and no others', () => {
  const places = readdirSync(path.join(ROOT, 'build/resources'), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(ROOT, path.join(entry.parentPath, entry.name)).replaceAll('\\', '/'));
  expect(places.sort()).toEqual([...fresh.keys()].sort());
});

test('each holds pictures of the sizes it says, that are what the drawings show today', async () => {
  const page = await browser.newPage();
  for (const [place, content] of fresh) {
    const [was, is] = [picturesOf(place, kept(place)), picturesOf(place, content)];
    expect(was.length, place).toBe(place.endsWith('.ico') ? 7 : place.endsWith('.icns') ? 8 : 1);
    for (const [index, [size, png]] of was.entries()) {
      expect(sizeOf(png), place).toEqual([size, size]);
      // A browser of another version may set the edges of a shape a little otherwise.
      expect(await apart(page, png, is[index]?.[1] ?? Buffer.alloc(0)), `${place} ${size}`).toBeLessThan(2);
    }
  }
  await page.close();
});

test('the smallest icon still shows both wheels apart from its ground: light and amber, each in a quarter of its own', async () => {
  const page = await browser.newPage();
  const bytes = await page.evaluate(async (base64) => {
    const image = new Image();
    image.src = `data:image/png;base64,${base64}`;
    await image.decode();
    const context = Object.assign(document.createElement('canvas'), { width: 16, height: 16 }).getContext('2d');
    context?.drawImage(image, 0, 0);
    return [...(context?.getImageData(0, 0, 16, 16).data ?? [])];
  }, kept('build/resources/icons/16x16.png').toString('base64'));
  await page.close();
  const count = (from: readonly [number, number], wanted: (red: number, green: number, blue: number) => boolean) =>
    Array.from({ length: 64 }, (_one, index) => {
      const at = 4 * (16 * (from[1] + Math.floor(index / 8)) + from[0] + (index % 8));
      return wanted(bytes[at] ?? 0, bytes[at + 1] ?? 0, bytes[at + 2] ?? 0);
    }).filter(Boolean).length;
  const light = (red: number, _green: number, blue: number) => red > 150 && blue > 150;
  const amber = (red: number, _green: number, blue: number) => red > 150 && blue < 110;
  expect(count([0, 8], light)).toBeGreaterThan(15);
  expect(count([8, 0], amber)).toBeGreaterThan(8);
  expect(count([8, 0], light) + count([0, 8], amber)).toBeLessThan(8);
  expect(count([0, 0], (red) => red < 80)).toBeGreaterThan(25);
});
