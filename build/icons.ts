import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser } from 'playwright-core';

// The icons of the installers, rendered from our own drawings in build/icons.

const RESOURCES = 'build/resources';
const drawing = (name: string): string => readFileSync(path.join(import.meta.dirname, 'icons', `${name}.svg`), 'utf8');

interface Icon {
  readonly large: string;
  /** Drawn with fewer teeth, up to this size in pixels. */
  readonly small: { readonly name: string; readonly upTo: number } | null;
}
const APP: Icon = { large: 'app', small: { name: 'small', upTo: 32 } };
const FILE: Icon = { large: 'file', small: null };

const LINUX = [16, 24, 32, 48, 64, 128, 256, 512];
const WINDOWS = [16, 24, 32, 48, 64, 128, 256];
/** Apple's name for each size that holds a PNG; those of 16 and 32 points at one pixel a point hold none. @source Icon Services, from memory */
const APPLE: readonly (readonly [type: string, size: number])[] = [
  ['ic11', 32],
  ['ic12', 64],
  ['ic07', 128],
  ['ic13', 256],
  ['ic08', 256],
  ['ic14', 512],
  ['ic09', 512],
  ['ic10', 1024],
];

/** Which drawing shows an icon in a size. */
export const drawingFor = (icon: Icon, size: number): string =>
  icon.small !== null && size <= icon.small.upTo ? icon.small.name : icon.large;

/** Every file of the icons, by its place in the project. */
export async function iconFiles(browser: Browser): Promise<ReadonlyMap<string, Buffer>> {
  const files = new Map<string, Buffer>();
  const png = (icon: Icon, size: number) => render(browser, drawing(drawingFor(icon, size)), size);
  for (const size of LINUX) files.set(`${RESOURCES}/icons/${size}x${size}.png`, await png(APP, size));
  for (const [name, icon] of [
    ['icon', APP],
    ['file', FILE],
  ] as const) {
    files.set(`${RESOURCES}/${name}.ico`, ico(await Promise.all(WINDOWS.map(async (size) => [size, await png(icon, size)] as const))));
    files.set(
      `${RESOURCES}/${name}.icns`,
      icns(await Promise.all(APPLE.map(async ([type, size]) => [type, await png(icon, size)] as const))),
    );
  }
  return files;
}

/** A drawing as PNG of so many pixels a side, on nothing. */
export async function render(browser: Browser, svg: string, size: number): Promise<Buffer> {
  const page = await browser.newPage({ viewport: { width: size, height: size }, deviceScaleFactor: 1 });
  try {
    await page.setContent(`<style>html,body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`);
    return await page.screenshot({ omitBackground: true });
  } finally {
    await page.close();
  }
}

/** A Windows icon of PNG pictures: a head of 6 bytes, 16 for each picture, then the pictures. @source the ICO format, from memory */
export function ico(pictures: readonly (readonly [size: number, png: Buffer])[]): Buffer {
  const head = Buffer.alloc(6 + 16 * pictures.length);
  head.writeUInt16LE(1, 2);
  head.writeUInt16LE(pictures.length, 4);
  let at = head.length;
  for (const [index, [size, png]] of pictures.entries()) {
    const entry = 6 + 16 * index;
    // A side of 256 is written as 0.
    head.writeUInt8(size % 256, entry);
    head.writeUInt8(size % 256, entry + 1);
    head.writeUInt16LE(1, entry + 4);
    head.writeUInt16LE(32, entry + 6);
    head.writeUInt32LE(png.length, entry + 8);
    head.writeUInt32LE(at, entry + 12);
    at += png.length;
  }
  return Buffer.concat([head, ...pictures.map(([, png]) => png)]);
}

/** An Apple icon: type and length before the whole and before each picture. @source the ICNS format, from memory */
export function icns(pictures: readonly (readonly [type: string, png: Buffer])[]): Buffer {
  const block = (type: string, content: Buffer): Buffer => {
    const head = Buffer.alloc(8);
    head.write(type, 'latin1');
    head.writeUInt32BE(8 + content.length, 4);
    return Buffer.concat([head, content]);
  };
  return block('icns', Buffer.concat(pictures.map(([type, png]) => block(type, png))));
}
