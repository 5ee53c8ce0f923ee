import { en } from '../en.ts';
/** Where a text stops being JSON, for people who look into the file. Lines and columns are counted from 1. */
export interface Damage {
  readonly line: number;
  readonly column: number;
  /** What should stand there instead. */
  readonly expected: string;
}

/** What may come next. */
type Wanted = 'value' | 'valueOrEnd' | 'name' | 'nameOrEnd' | 'colon' | 'commaOrEnd' | 'nothing';

const WORDS: Readonly<Record<Wanted, string>> = {
  value: en`a value`,
  valueOrEnd: en`a value or "]"`,
  name: en`a name in quotation marks`,
  nameOrEnd: en`a name in quotation marks or "}"`,
  colon: en`a colon`,
  commaOrEnd: en`a comma or a closing bracket`,
  nothing: en`the end of the file`,
};

/** How far a text has been followed: the brackets that are open there, and what may come next. */
interface Reach {
  readonly text: string;
  at: number;
  wanted: Wanted;
  readonly open: ('{' | '[')[];
}

const SPACE = /[ \t\n\r]*/y;
const PLAIN = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.+-])/y;

/**
 * The first place at which a text that is not JSON goes wrong. The engines' own messages differ, and some name no place.
 *
 * @param text  what could not be parsed
 * @source ECMA-404
 * @example damageIn('{"teeth": 21,}')  // line 1, column 14, a name in quotation marks
 */
export function damageIn(text: string): Damage {
  const reach: Reach = { text, at: 0, wanted: 'value', open: [] };
  do reach.at = endOf(SPACE, reach);
  while (advance(reach));
  const before = text.slice(0, reach.at);
  return { line: before.split('\n').length, column: reach.at - before.lastIndexOf('\n'), expected: WORDS[reach.wanted] };
}

/** Goes on by one token, if the next one is wanted. */
function advance(reach: Reach): boolean {
  const { text, at, wanted, open } = reach;
  const sign = text.charAt(at);
  const inObject = open.at(-1) === '{';
  const next = (end: number, then: Wanted): boolean => {
    reach.at = end;
    reach.wanted = then;
    return true;
  };
  const afterValue = () => (open.length === 0 ? 'nothing' : 'commaOrEnd');
  if ((wanted === 'commaOrEnd' || wanted === 'nameOrEnd' || wanted === 'valueOrEnd') && sign === (inObject ? '}' : ']')) {
    open.pop();
    return next(at + 1, afterValue());
  }
  switch (wanted) {
    case 'nothing':
      return false;
    case 'colon':
      return sign === ':' && next(at + 1, 'value');
    case 'commaOrEnd':
      return sign === ',' && next(at + 1, inObject ? 'name' : 'value');
    case 'name':
    case 'nameOrEnd': {
      const end = stringEnd(text, at);
      return end > at && next(end, 'colon');
    }
    default: {
      if (sign === '{' || sign === '[') {
        open.push(sign);
        return next(at + 1, sign === '{' ? 'nameOrEnd' : 'valueOrEnd');
      }
      const end = Math.max(stringEnd(text, at), endOf(PLAIN, reach));
      return end > at && next(end, afterValue());
    }
  }
}

function endOf(pattern: RegExp, { text, at }: Reach): number {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : at;
}

/** Behind the closing quotation mark, or where it was begun if no whole string starts here. */
function stringEnd(text: string, at: number): number {
  if (text.charAt(at) !== '"') return at;
  for (let i = at + 1; i < text.length; i += 1) {
    const sign = text.charAt(i);
    if (sign === '"') return i + 1;
    if (sign < ' ') return at;
    if (sign !== '\\') continue;
    if (!/^(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/.test(text.slice(i + 1, i + 6))) return at;
    i += 1;
  }
  return at;
}
