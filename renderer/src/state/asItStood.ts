import { FORMAT, readShopFile, type ShopFile, VERSION } from '../../../core/src/index.ts';

/**
 * A file as a window of this version held it. What the window let stand may be what opening refuses, and is no reason to lose it.
 * Null where another version wrote it, or it is damaged.
 */
export function asItStood(text: string): ShopFile | null {
  const read = readShopFile(text);
  if (read.ok) return read.value;
  try {
    const file = JSON.parse(text) as ShopFile;
    return file.format === FORMAT && file.version === VERSION ? file : null;
  } catch {
    return null;
  }
}
