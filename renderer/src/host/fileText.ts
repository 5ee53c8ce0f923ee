import { en } from '../../../core/src/en.ts';
import { EXTENSION, LARGEST_FILE_BYTES } from '../../../core/src/file/envelope.ts';

/** The text of a file; refuses what is too large before reading it, and what is no text. */
export async function textOf(file: File): Promise<string> {
  if (file.size > LARGEST_FILE_BYTES)
    throw new Error(en`${file.name} has ${file.size} bytes; more than ${LARGEST_FILE_BYTES} are not read.`);
  const bytes = await file.arrayBuffer();
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    throw new Error(en`${file.name} is not a text file.`);
  }
}

/** By which two versions of a file are told apart; of one too large to be read, its size and time. */
export async function digestOf(file: Blob & { readonly lastModified?: number }): Promise<string> {
  if (file.size > LARGEST_FILE_BYTES) return `${file.size} ${file.lastModified ?? ''}`;
  const digest = await crypto.subtle.digest('SHA-256', await file.arrayBuffer());
  return [...new Uint8Array(digest)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}

/** Names of the failures of a browser's files [File System Standard of the WHATWG, from memory]. */
const REASONS: Readonly<Record<string, string>> = {
  NotAllowedError: en`the browser may not write to it`,
  QuotaExceededError: en`the disk is full`,
  NoModificationAllowedError: en`it is read-only, or another program holds it`,
  InvalidStateError: en`it changed while it was being written`,
  NotFoundError: en`its folder or drive is no longer there`,
  NotReadableError: en`its disk or the connection to it failed`,
};

export function failureOf(name: string, cause: unknown): Error {
  const reason = cause instanceof DOMException ? (REASONS[cause.name] ?? en`the browser says ${cause.name}`) : String(cause);
  return new Error(en`${name} was not saved: ${reason}. What is on the disk was left as it was.`, { cause });
}

export async function unlessCancelled<T>(picked: Promise<T>): Promise<T | null> {
  try {
    return await picked;
  } catch (error) {
    if (error instanceof DOMException && error.name === 'AbortError') return null;
    throw error;
  }
}

export function upload(): Promise<File | null> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    input.type = 'file';
    input.accept = EXTENSION;
    input.addEventListener('change', () => resolve(input.files?.[0] ?? null));
    input.addEventListener('cancel', () => resolve(null));
    input.click();
  });
}
