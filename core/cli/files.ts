import { readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { type Finding, LARGEST_FILE_BYTES, type Outcome, placeText, readShopFile, type ShopFile } from '../src/index.ts';

/** npm runs scripts in the project's folder; a file named by the user is meant from where the user stands. */
export const fromHere = (file: string): string => path.resolve(process.env.INIT_CWD ?? process.cwd(), file);

/** Reads a shop file from disk; a disk failure speaks like any other problem. */
export function openShopFile(file: string): Outcome<ShopFile> {
  try {
    const place = fromHere(file);
    const size = statSync(place).size;
    if (size > LARGEST_FILE_BYTES) return failure(`${file} has ${size} bytes; more than ${LARGEST_FILE_BYTES} are not read.`);
    return readShopFile(readFileSync(place, 'utf8'));
  } catch (error) {
    return failure(`${file} cannot be read: ${error instanceof Error ? error.message : String(error)}`);
  }
}

function failure(what: string): Outcome<ShopFile> {
  return {
    ok: false,
    findings: [{ check: 'file.disk', severity: 'blocks', where: [], what, figure: null, limit: null, source: 'the disk', missing: false }],
  };
}

export function problemLines(findings: readonly Finding[]): string {
  return findings.map((finding) => `${finding.where.length === 0 ? '' : `${placeText(finding.where)}: `}${finding.what}\n`).join('');
}
