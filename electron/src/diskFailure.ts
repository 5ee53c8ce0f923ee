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
const READ_ONLY: Reasons = { saved: en`it or its folder is read-only`, opened: en`this account may not read it` };
const FULL: Reasons = both(en`the disk is full`);
const AWAY: Reasons = both(en`its drive or share is no longer there`);

/** Codes of the operating systems [POSIX errno; those of Node on Windows; from memory]. */
const REASONS: Readonly<Record<string, Reasons>> = {
  ENOENT: { saved: en`its folder or drive is no longer there`, opened: en`it is no longer where it was` },
  ENOTDIR: { saved: en`its folder or drive is no longer there`, opened: en`it is no longer where it was` },
  EACCES: READ_ONLY,
  EPERM: READ_ONLY,
  EROFS: { saved: en`its disk is read-only`, opened: en`this account may not read it` },
  ENOSPC: FULL,
  EDQUOT: { saved: en`the disk space of this account is used up`, opened: en`the disk space of this account is used up` },
  EFBIG: both(en`it is larger than its disk takes`),
  EIO: both(en`its disk or the connection to it failed`),
  ENODEV: AWAY,
  ENXIO: AWAY,
  ESTALE: AWAY,
  ENOTCONN: AWAY,
  EHOSTDOWN: AWAY,
  EHOSTUNREACH: AWAY,
  ENETDOWN: AWAY,
  ENETUNREACH: AWAY,
  ETIMEDOUT: both(en`its share does not answer`),
  EBUSY: both(en`another program holds it`),
  ETXTBSY: both(en`another program holds it`),
  EISDIR: both(en`a folder has its name`),
  ELOOP: both(en`its links lead in a circle`),
  ENAMETOOLONG: both(en`its name or its path is longer than the disk takes`),
  EINVAL: both(en`the disk does not take its name`),
  EILSEQ: both(en`the disk does not take its name`),
  EMFILE: both(en`too many files are open`),
  ENFILE: both(en`too many files are open`),
};

function sentence(name: string, done: Done, code: string): string {
  const why = REASONS[code]?.[done] ?? en`the system says ${code}`;
  const kept = done === 'saved' ? en` What is on the disk was left as it was.` : '';
  return en`${name} was not ${done}: ${why}.${kept}`;
}
