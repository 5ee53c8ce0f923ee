import { readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { en } from '../src/en.ts';
import { type Finding, LARGEST_FILE_BYTES, type Outcome, placeText, readShopFile, type ShopFile } from '../src/index.ts';

/** npm runs scripts in the project's folder; a file named by the user is meant from where the user stands. */
export const fromHere = (file: string): string => path.resolve(process.env.INIT_CWD ?? process.cwd(), file);

/** Reads a file from disk; a disk failure speaks like any other problem. */
export function readText(file: string, mostBytes: number): Outcome<string> {
  try {
    const place = fromHere(file);
    const size = statSync(place).size;
    if (size > mostBytes) return failure(en`${file} has ${size} bytes; more than ${mostBytes} are not read.`);
    return { ok: true, value: readFileSync(place, 'utf8'), findings: [] };
  } catch (error) {
    return failure(en`${file} cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  }
}

export function openShopFile(file: string): Outcome<ShopFile> {
  const text = readText(file, LARGEST_FILE_BYTES);
  return text.ok ? readShopFile(text.value) : text;
}

function failure(what: string): Outcome<string> & { readonly ok: false } {
  return {
    ok: false,
    findings: [
      { check: 'file.disk', severity: 'blocks', where: [], what, figure: null, limit: null, source: en`the disk`, missing: false },
    ],
  };
}

export function problemLines(findings: readonly Finding[]): string {
  return findings.map((finding) => `${finding.where.length === 0 ? '' : `${placeText(finding.where)}: `}${finding.what}\n`).join('');
}
