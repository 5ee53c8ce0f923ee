import { FORMAT, VERSION } from './envelope.ts';
import type { ShopFile } from './shopFile.ts';

/** The text of a shop file: pretty-printed JSON, the envelope first, keys in the order of the schema. */
export function writeShopFile(file: ShopFile, writtenBy: string): string {
  const { format: _format, version: _version, writtenBy: _writer, ...content } = file;
  return `${JSON.stringify({ format: FORMAT, version: VERSION, writtenBy, ...content }, null, 2)}\n`;
}
