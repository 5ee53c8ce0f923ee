import path from 'node:path';

export const isGone = (error: unknown): boolean =>
  codeOf(error) === 'ENOENT' || (error instanceof Error && codeOf(error.cause) === 'ENOENT');

const codeOf = (error: unknown): string | null =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : null;

/** A failure of the disk as a sentence for people; other errors pass as they are. */
export async function spoken<T>(file: string, done: 'opened' | 'saved', work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    const code = codeOf(error);
    throw code === null ? error : new Error(sentence(path.basename(file), done, code), { cause: error });
  }
}

function sentence(name: string, done: 'opened' | 'saved', code: string): string {
  const kept = done === 'saved' ? ' What is on the disk was left as it was.' : '';
  switch (code) {
    case 'ENOENT':
      return done === 'saved'
        ? `${name} was not saved: its folder is no longer there.`
        : `${name} was not opened: it is no longer where it was.`;
    case 'EACCES':
    case 'EPERM':
    case 'EROFS':
      return done === 'saved'
        ? `${name} was not saved: it or its folder is read-only.${kept}`
        : `${name} was not opened: this account may not read it.`;
    case 'ENOSPC':
    case 'EDQUOT':
      return `${name} was not saved: the disk is full.${kept}`;
    default:
      return `${name} was not ${done}: the system says ${code}.${kept}`;
  }
}
