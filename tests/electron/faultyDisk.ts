import type { FileHandle } from 'node:fs/promises';
import path from 'node:path';

// The real disk, with a record of what was asked of it and with failures put in: what a crash or a full disk leaves cannot be waited for.

type Real = typeof import('node:fs/promises');

/** What was asked so far, and what is to fail: the call of a number, counted from 0, or every call of a kind. */
export const disk = {
  steps: [] as string[],
  failAt: -1,
  failing: new Map<string, string>(),
  code: 'EIO',
  /** How many times a kind fails before it goes well; without an entry for ever. */
  times: new Map<string, number>(),
  reset(): void {
    disk.steps.length = 0;
    disk.failAt = -1;
    disk.failing.clear();
    disk.times.clear();
  },
};

/** Throws where this call is one that fails. */
function step(kind: string, file: string): void {
  const number = disk.steps.length;
  disk.steps.push(`${kind} ${path.extname(file) === '.part' ? 'beside' : path.basename(file)}`);
  const left = disk.times.get(kind) ?? Number.POSITIVE_INFINITY;
  disk.times.set(kind, left - 1);
  const code = number === disk.failAt ? disk.code : left > 0 ? disk.failing.get(kind) : undefined;
  if (code !== undefined) throw Object.assign(new Error(code), { code });
}

/** `node:fs/promises` with every call that the writer makes going through `step` first. */
export function faulty(real: Real): Real {
  const watched = (handle: FileHandle, file: string): FileHandle =>
    Object.assign(Object.create(handle), {
      async chmod(mode: number) {
        step('chmod', file);
        await handle.chmod(mode);
      },
      async writeFile(content: string) {
        try {
          step('write', file);
        } catch (error) {
          // What fits is written before the disk is full.
          await handle.writeFile(content.slice(0, 1));
          throw error;
        }
        await handle.writeFile(content);
      },
      async sync() {
        step('sync', file);
        await handle.sync();
      },
      async close() {
        // A close that fails has closed all the same.
        await handle.close();
        step('close', file);
      },
    });
  const first =
    <A extends readonly unknown[], R>(kind: string, call: (...args: A) => Promise<R>) =>
    async (...args: A): Promise<R> => {
      step(kind, String(args[0]));
      return call(...args);
    };
  return {
    ...real,
    stat: first('stat', real.stat) as Real['stat'],
    access: first('access', real.access),
    realpath: first('realpath', real.realpath) as Real['realpath'],
    readdir: first('readdir', real.readdir) as Real['readdir'],
    rename: first('rename', real.rename),
    rm: first('rm', real.rm),
    async copyFile(from, to) {
      try {
        step('copy', String(from));
      } catch (error) {
        await real.writeFile(to, 'ha');
        throw error;
      }
      await real.copyFile(from, to);
    },
    async open(file, flags) {
      step('open', String(file));
      return watched(await real.open(file, flags), String(file));
    },
  };
}
