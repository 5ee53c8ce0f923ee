import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { app, type BrowserWindow, type Rectangle, screen } from 'electron';

// Where the window stood is found again at the next start, in pixels of the screens as the system counts them.

export const SMALLEST = { width: 640, height: 480 };
const USUAL = { width: 1280, height: 860 };
/** So much of the title bar must lie on a screen that the window can be dragged. */
const GRIP = { width: 120, height: 30 };

export interface WindowPlace {
  /** Without a corner the system puts the window where it likes. */
  readonly bounds: { readonly width: number; readonly height: number; readonly x?: number; readonly y?: number };
  readonly maximized: boolean;
}

const placeFile = (): string => path.join(app.getPath('userData'), 'window.json');

/** The place kept last, on a screen that is still there; else the usual size. */
export function placeKept(): WindowPlace {
  const kept = readPlace();
  if (kept === null) return { bounds: USUAL, maximized: false };
  const { bounds, maximized } = kept;
  const area = screen
    .getAllDisplays()
    .map(({ workArea }) => workArea)
    .find((workArea) => holdsGrip(workArea, bounds));
  if (area === undefined) return { bounds: USUAL, maximized };
  const within = (size: number, least: number, most: number) => Math.max(least, Math.min(size, most));
  return {
    bounds: {
      ...bounds,
      width: within(bounds.width, SMALLEST.width, area.width),
      height: within(bounds.height, SMALLEST.height, area.height),
    },
    maximized,
  };
}

function holdsGrip(area: Rectangle, { x, y, width }: Rectangle): boolean {
  const across = Math.min(x + width, area.x + area.width) - Math.max(x, area.x);
  return across >= GRIP.width && y >= area.y && y + GRIP.height <= area.y + area.height;
}

/** Written at once, as the program ends with its window; where it cannot be written, the next window opens as usual. */
export function keepPlace(window: BrowserWindow): void {
  window.on('close', () => {
    try {
      mkdirSync(path.dirname(placeFile()), { recursive: true });
      writeFileSync(placeFile(), JSON.stringify({ ...window.getNormalBounds(), maximized: window.isMaximized() }));
    } catch {
      // A convenience only.
    }
  });
}

function readPlace(): { readonly bounds: Rectangle; readonly maximized: boolean } | null {
  try {
    const kept: unknown = JSON.parse(readFileSync(placeFile(), 'utf8'));
    if (typeof kept !== 'object' || kept === null) return null;
    const whole = (name: string): number => {
      const value: unknown = Reflect.get(kept, name);
      if (typeof value !== 'number' || !Number.isSafeInteger(value)) throw new RangeError(name);
      return value;
    };
    const bounds = { x: whole('x'), y: whole('y'), width: whole('width'), height: whole('height') };
    return { bounds, maximized: Reflect.get(kept, 'maximized') === true };
  } catch {
    return null;
  }
}
