import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const command = fileURLToPath(new URL('../../dist/cli/ratiowright.js', import.meta.url));

export interface Ran {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the built headless command as a user does, from the folder of the examples. */
export function ratiowright(...args: readonly string[]): Ran {
  const { INIT_CWD: _npm, ...env } = process.env;
  const ran = spawnSync(process.execPath, [command, ...args], { cwd: examples, env, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });
  return { exit: ran.status, out: ran.stdout, err: ran.stderr };
}

export const examples = fileURLToPath(new URL('../examples/', import.meta.url));
