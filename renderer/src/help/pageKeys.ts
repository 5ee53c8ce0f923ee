import { en } from '../../../core/src/en.ts';
import { KEY_WORDS } from '../state/keyWords.ts';

/**
 * What single keys do on a page. This is the one list: whoever listens for them is held to it by the compiler, key by key.
 * Commands bring their own keys.
 */
export const PAGE_KEYS = {
  options: {
    P: en`put the chosen option on the sheet`,
    B: en`hide or show the blocked ones`,
    C: en`compare with what is fitted`,
    O: en`the next order of the list`,
    R: en`try a ratio`,
    T: en`try teeth`,
    W: en`open the workings of every figure, or close them`,
  },
  list: {
    ArrowDown: en`next option`,
    ArrowUp: en`option before`,
    Home: en`first option`,
    End: en`last option`,
    Enter: en`choose it`,
  },
  reach: { Q: en`make the quote page` },
  rule: {
    ArrowLeft: en`move the window to more B`,
    ArrowRight: en`move the window to less B`,
    '+': en`a narrower window`,
    '-': en`a wider window`,
    Home: en`all that can be built`,
    g: en`next gap`,
    G: en`gap before`,
  },
  drive: {
    Enter: en`details of this slot`,
    Insert: en`add a stage below this shaft`,
    'Shift+Delete': en`remove this stage`,
  },
  catches: {
    Enter: en`next cell; after the last one a new catch`,
    'Ctrl+Enter': en`a new catch`,
    ArrowDown: en`the cell below`,
    ArrowUp: en`the cell above`,
    ArrowRight: en`the next cell, from the end of a text`,
    ArrowLeft: en`the cell before, from the start of a text`,
  },
} as const;

type Where = keyof typeof PAGE_KEYS;
export type PageKey<At extends Where> = keyof (typeof PAGE_KEYS)[At];

export const KEY_PLACES: Readonly<Record<string, string>> = {
  options: en`Options page, outside boxes`,
  list: en`in the list of options`,
  reach: en`Reach page, outside boxes`,
  rule: en`on the rule of the Reach page`,
  drive: en`in a slot of the drawn drive`,
  catches: en`in the table of catches`,
} satisfies Readonly<Record<Where, string>>;

const NAMES: Readonly<Record<string, string>> = {
  ArrowDown: '↓',
  ArrowUp: '↑',
  ArrowLeft: '←',
  ArrowRight: '→',
  ...KEY_WORDS,
  g: 'G',
  G: en`Shift G`,
};

/** A key as it stands on a keyboard: `Ctrl S`, `←`. */
export const keyName = (key: string): string =>
  NAMES[key] ??
  (key === '+'
    ? key
    : key
        .split('+')
        .map((part) => NAMES[part] ?? part)
        .join(' '));
