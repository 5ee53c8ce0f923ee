/**
 * What single keys do on a page. This is the one list: whoever listens for them is held to it by the compiler, key by key.
 * Commands bring their own keys.
 */
export const PAGE_KEYS = {
  options: {
    P: 'put the chosen option on the sheet',
    B: 'hide or show the blocked ones',
    C: 'compare with what is fitted',
    O: 'the next order of the list',
    R: 'try a ratio',
    T: 'try teeth',
    W: 'open the workings of every figure, or close them',
  },
  list: {
    ArrowDown: 'next option',
    ArrowUp: 'option before',
    Home: 'first option',
    End: 'last option',
    Enter: 'choose it',
  },
  reach: { Q: 'make the quote page' },
  rule: {
    ArrowLeft: 'move the window to more B',
    ArrowRight: 'move the window to less B',
    '+': 'a narrower window',
    '-': 'a wider window',
    Home: 'all that can be built',
    g: 'next gap',
    G: 'gap before',
  },
  drive: {
    Enter: 'details of this slot',
    Insert: 'add a stage below this shaft',
    'Shift+Delete': 'remove this stage',
  },
  catches: {
    Enter: 'next cell; after the last one a new catch',
    'Ctrl+Enter': 'a new catch',
    ArrowDown: 'the cell below',
    ArrowUp: 'the cell above',
    ArrowRight: 'the next cell, from the end of a text',
    ArrowLeft: 'the cell before, from the start of a text',
  },
} as const;

type Where = keyof typeof PAGE_KEYS;
export type PageKey<At extends Where> = keyof (typeof PAGE_KEYS)[At];

export const KEY_PLACES: Readonly<Record<string, string>> = {
  options: 'Options page, outside boxes',
  list: 'in the list of options',
  reach: 'Reach page, outside boxes',
  rule: 'on the rule of the Reach page',
  drive: 'in a slot of the drawn drive',
  catches: 'in the table of catches',
} satisfies Readonly<Record<Where, string>>;

const NAMES: Readonly<Record<string, string>> = {
  ArrowDown: '↓',
  ArrowUp: '↑',
  ArrowLeft: '←',
  ArrowRight: '→',
  Delete: 'Del',
  Insert: 'Ins',
  g: 'G',
  G: 'Shift G',
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
