import * as v from 'valibot';
import { FORMAT, VERSION } from './envelope.ts';
import { type ShopFile, shopFile } from './shopFile.ts';

/** The text of a shop file: pretty-printed JSON, the envelope first, keys in the order of the schema, every value as typed. */
export function writeShopFile(file: ShopFile, writtenBy: string): string {
  const { format: _format, version: _version, writtenBy: _writer, ...content } = inOrder(file);
  return `${JSON.stringify({ format: FORMAT, version: VERSION, writtenBy, ...content }, null, 2)}\n`;
}

/** An edited row has its newest key last; reading it puts its keys in order. What the schema refuses is written as it is, so that nothing is lost. */
function inOrder(file: ShopFile): ShopFile {
  const read = v.safeParse(shopFile, file);
  return read.success ? read.output : file;
}
