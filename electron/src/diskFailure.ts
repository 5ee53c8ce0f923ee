import { en } from '../../core/src/en.ts';
import { shownName } from './names.ts';

export const isGone = (error: unknown): boolean =>
  codeOf(error) === 'ENOENT' || (error instanceof Error && codeOf(error.cause) === 'ENOENT');

export const codeOf = (error: unknown): string | null =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : null;

type Done = 'opened' | 'saved';

/** A failure of the disk as a sentence for people; other errors pass as they are. */
export async function spoken<T>(file: string, done: Done, work: () => Promise<T>): Promise<T> {
  try {
    return await work();
  } catch (error) {
    const code = codeOf(error);
    throw code === null ? error : new Error(sentence(shownName(file), done, code), { cause: error });
  }
}

/** Why it could not be saved and why it could not be opened. */
type Reasons = Readonly<Record<Done, string>>;

const both = (why: string): Reasons => ({ saved: why, opened: why });

/** By the codes of the operating systems [POSIX errno; those of Node on Windows; from memory]; null for one that is not known. */
function reasonsOf(code: string): Reasons | null {
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return { saved: en`its folder or drive is no longer there`, opened: en`it is no longer where it was` };
    case 'EACCES':
    case 'EPERM':
      return { saved: en`it or its folder is read-only`, opened: en`this account may not read it` };
    case 'EROFS':
      return { saved: en`its disk is read-only`, opened: en`this account may not read it` };
    case 'ENOSPC':
      return both(en`the disk is full`);
    case 'EDQUOT':
      return both(en`the disk space of this account is used up`);
    case 'EFBIG':
      return both(en`it is larger than its disk takes`);
    case 'EIO':
      return both(en`its disk or the connection to it failed`);
    case 'ENODEV':
    case 'ENXIO':
    case 'ESTALE':
    case 'ENOTCONN':
    case 'EHOSTDOWN':
    case 'EHOSTUNREACH':
    case 'ENETDOWN':
    case 'ENETUNREACH':
      return both(en`its drive or share is no longer there`);
    case 'ETIMEDOUT':
      return both(en`its share does not answer`);
    case 'EBUSY':
    case 'ETXTBSY':
      return both(en`another program holds it`);
    case 'EISDIR':
      return both(en`a folder has its name`);
    case 'ELOOP':
      return both(en`its links lead in a circle`);
    case 'ENAMETOOLONG':
      return both(en`its name or its path is longer than the disk takes`);
    case 'EINVAL':
    case 'EILSEQ':
      return both(en`the disk does not take its name`);
    case 'EMFILE':
    case 'ENFILE':
      return both(en`too many files are open`);
    default:
      return null;
  }
}

function sentence(name: string, done: Done, code: string): string {
  const why = reasonsOf(code)?.[done] ?? en`the system says ${code}`;
  return done === 'saved'
    ? en`${name} was not saved: ${why}. What is on the disk was left as it was.`
    : en`${name} was not opened: ${why}.`;
}
