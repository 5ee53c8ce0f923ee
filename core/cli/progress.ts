import type { Hooks } from '../src/search/index.ts';

/** Where a terminal shows how far a long search is. */
interface Terminal {
  readonly isTTY?: boolean;
  write(text: string): unknown;
}

/**
 * Works while a terminal shows, in one line, how far it is; the line is gone before the answer. Where the stream is no terminal
 * nothing is written.
 *
 * @param word  what is done, as `planning`
 * @source our choice
 */
export function withProgress<T>(stream: Terminal, word: string, work: (hooks: Hooks) => T): T {
  if (stream.isTTY !== true) return work({});
  let shown = '';
  const show = (line: string): void => {
    if (line === shown) return;
    stream.write(`\r${line.padEnd(shown.length)}`);
    shown = line;
  };
  try {
    return work({ progress: (done) => show(`${word}, ${Math.floor(100 * done)} %`) });
  } finally {
    if (shown !== '') stream.write(`\r${' '.repeat(shown.length)}\r`);
  }
}
