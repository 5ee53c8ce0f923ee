import { visible } from '../src/visible.ts';

const MARK = '\uFEFF';

/** Text for people, or a table: of control characters only our own line ends and the mark of a table reach the terminal, whatever a file or a flag holds. */
export function print(text: string, to: 'stdout' | 'stderr' = 'stdout'): void {
  const mark = text.startsWith(MARK) ? MARK : '';
  const lines = text.slice(mark.length).split(/(\r?\n)/);
  process[to].write(mark + lines.map((piece, index) => (index % 2 === 0 ? visible(piece) : piece)).join(''));
}

/** JSON text for scripts: what would steer a terminal stands as its code within the strings, which say the same. */
export function printJson(text: string): void {
  const steering = /[\u007F-\u009F\p{Zl}\p{Zp}\p{Bidi_Control}\uFEFF]/gu;
  process.stdout.write(text.replace(steering, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`));
}
