import { createContext, createSignal, useContext } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import { readWith } from '../../../core/src/file/readWith.ts';
import { type Place, placeText, type Say, type Selection } from '../../../core/src/index.ts';
import type { Fraction } from '../../../core/src/ratio.ts';
import type { CheckVerdict } from '../../../core/src/ratioCheck/verdict.ts';
import type { Host, OpenedFile, Paper } from '../host/host.ts';
import type { KeptPlans } from './buying.ts';
import { createShopStore, type ShopStore } from './shopStore.ts';
import { createSolution, type Solution } from './solution.ts';
import { usualPaper } from './usualPaper.ts';

export const PAGES = ['machine', 'material', 'options', 'reach', 'sheet', 'check'] as const;
export type Page = (typeof PAGES)[number];

/** A yes-or-no question to the person; `yes` names what is lost, so it is never the button that waits for Enter. */
export interface Question {
  readonly text: string;
  readonly yes: string;
  readonly no: string;
  readonly answer: (yes: boolean) => void;
}

/** The window of ratios that the Reach page shows and its tolerance, as typed; no ends: all that can be built. */
export interface ReachAsked {
  readonly low: string;
  readonly high: string;
  readonly tolerance: string;
}

/** What the Reach page is to plan purchases for, as set there. */
export interface BuyAsked {
  /** The window that is shown, in place of materials. */
  readonly whole: boolean;
  /** Materials that are not ticked, by id. */
  readonly without: readonly string[];
  readonly most: number;
  /** Pumps that are not fitted count as parts to buy. */
  readonly pumps?: boolean;
  /** As typed; empty: as the machine says. */
  readonly teeth: string;
}

/** What a person says of the quote page, as typed. */
export interface QuoteAsked {
  readonly customer: string;
  readonly note: string;
  /** How long it holds; empty: as long as nothing it rests on changes. */
  readonly days: string;
}

/** What a ratio check measured of what is fitted. */
export interface Measured {
  /** By volume as run. */
  readonly bPerA: Fraction;
  readonly offRatio: Fraction;
  readonly verdict: CheckVerdict;
  readonly day: string;
}

/** Help follows the focus, looks up a word, lists the keys. */
export type HelpPart = 'box' | 'words' | 'checks' | 'keys';

/** The code of the pages, which comes in files of their own. */
export interface PageFiles {
  readonly has: (page: Page) => boolean;
  /** Rejects where the file cannot be read; asking again tries again. */
  readonly load: (page: Page) => Promise<void>;
}

/** Everything a view may read or call. */
export interface App {
  readonly host: Host;
  readonly shop: ShopStore;
  readonly solution: Solution;
  /** The machine and the material of the pages, by id. */
  readonly selection: () => Selection;
  readonly page: () => Page;
  /** Opens a page; the one before stays until its file is there. Resolves once it is drawn, or its file could not be read. */
  readonly show: (page: Page) => Promise<void>;
  /** Which machine and material the pages work on, as indexes into the file's lists; 0 where the list is empty. */
  readonly machine: () => number;
  readonly material: () => number;
  readonly pickMachine: (index: number) => void;
  readonly pickMaterial: (index: number) => void;
  readonly say: () => Say;
  readonly setSay: (say: Say) => void;
  readonly paper: () => Paper;
  readonly setPaper: (paper: Paper) => void;
  /** Whether the workings are printed behind the sheet. */
  readonly workings: () => boolean;
  readonly setWorkings: (on: boolean) => void;
  readonly reachAsked: () => ReachAsked;
  readonly askReach: (asked: ReachAsked) => void;
  readonly buyAsked: () => BuyAsked;
  readonly askBuy: (asked: BuyAsked) => void;
  /** Purchases as planned last, by the id of their machine. */
  readonly purchases: () => ReadonlyMap<string, KeptPlans>;
  readonly keepPurchases: (plans: ReadonlyMap<string, KeptPlans>) => void;
  readonly quoteAsked: () => QuoteAsked;
  readonly askQuote: (asked: QuoteAsked) => void;
  /** Prints what stands on the page, where that is no change sheet; null where it is. */
  readonly ownPrint: () => (() => Promise<void>) | null;
  readonly printInstead: (print: (() => Promise<void>) | null) => void;
  /** On the band: the check that is written, else the last kept one. */
  readonly measured: () => Measured | null;
  readonly setMeasured: (by: 'kept' | 'written', measured: Measured | null) => void;
  /** What of help stands beside the page; null while it is closed. */
  readonly help: () => HelpPart | null;
  readonly showHelp: (part: HelpPart | null) => void;
  /** One line for the person: a disk failure, a refused file. Null hides it. */
  readonly notice: () => string | null;
  readonly tell: (notice: string | null) => void;
  readonly question: () => Question | null;
  /** Asks, and waits for the answer. */
  readonly ask: (question: Omit<Question, 'answer'>) => Promise<boolean>;
  /** Opens the page that holds a field and puts the cursor there. */
  readonly goTo: (place: Place) => void;
  /** The place asked for last: a page that shows only part of its fields shows that one. */
  readonly sought: () => Place | null;
  /** Takes in the text of a file; says why where it cannot, and where its backup lies. */
  readonly take: (file: Pick<OpenedFile, 'text' | 'name'> & Partial<OpenedFile>) => boolean;
  /** Puts a file in the place of the one that is open. */
  readonly open: ShopStore['load'];
}

const Context = createContext<App>();
export const AppProvider = Context.Provider;

export function useApp(): App {
  const app = useContext(Context);
  if (app === undefined) throw new RangeError('useApp outside its provider');
  return app;
}

/** Two per cent is what most data sheets allow. */
const REACH: ReachAsked = { low: '', high: '', tolerance: '2' };
const NO_PLANS: ReadonlyMap<string, KeptPlans> = new Map();
const QUOTE: QuoteAsked = { customer: '', note: '', days: '' };

const BUY: BuyAsked = { whole: false, without: [], most: 3, teeth: '' };

/** What went wrong, as a sentence for people. */
export const sentenceOf = (error: unknown): string => (error instanceof Error ? error.message : String(error));

/** A row's place as a field carries it, so that a finding can find its field. */
export const placeKey = (place: Place): string => place.join('.');

export function createApp(host: Host, files: PageFiles): App {
  const shop = createShopStore();
  const [page, setPage] = createSignal<Page>('options');
  let asked: Page = 'options';
  const [machine, pickMachine] = createSignal(0);
  const [material, pickMaterial] = createSignal(0);
  const [reachAsked, askReach] = createSignal(REACH);
  const [buyAsked, askBuy] = createSignal(BUY);
  const [purchases, keepPurchases] = createSignal(NO_PLANS);
  const [quoteAsked, askQuote] = createSignal(QUOTE);
  const [ownPrint, printInstead] = createSignal<(() => Promise<void>) | null>(null);
  const [kept, setKept] = createSignal<Measured | null>(null);
  const [written, setWritten] = createSignal<Measured | null>(null);
  const [help, showHelp] = createSignal<HelpPart | null>(null);
  const [notice, tell] = createSignal<string | null>(null);
  const [question, pose] = createSignal<Question | null>(null);
  const [sought, seek] = createSignal<Place | null>(null, { equals: false });
  const [say, setSay] = createSetting<Say>('say', { decimal: '.', system: 'metric' });
  const [paper, setPaper] = createSetting<Paper>('paper', usualPaper(navigator.language));
  const [workings, setWorkings] = createSetting('workings', false);
  const within = (index: number, rows: readonly unknown[] | undefined) => Math.min(index, Math.max(0, (rows?.length ?? 0) - 1));
  const machineIndex = () => within(machine(), shop.file?.machines);
  const materialIndex = () => within(material(), shop.file?.materials);
  const selection = (): Selection => {
    const of = (row: { id: string } | undefined, key: 'machine' | 'material') => (row === undefined ? {} : { [key]: row.id });
    return { ...of(shop.file?.machines[machineIndex()], 'machine'), ...of(shop.file?.materials[materialIndex()], 'material') };
  };
  const solution = createSolution(shop, selection, say);
  return {
    host,
    shop,
    solution,
    selection,
    page,
    show,
    machine: machineIndex,
    material: materialIndex,
    pickMachine: (index) => void pickMachine(index),
    pickMaterial: (index) => void pickMaterial(index),
    say,
    setSay,
    paper,
    setPaper,
    workings,
    setWorkings,
    reachAsked,
    askReach: (asked) => void askReach(asked),
    buyAsked,
    askBuy: (asked) => void askBuy(asked),
    purchases,
    keepPurchases: (plans) => void keepPurchases(plans),
    quoteAsked,
    askQuote: (asked) => void askQuote(asked),
    ownPrint,
    printInstead: (print) => void printInstead(() => print),
    measured: () => written() ?? kept(),
    setMeasured: (by, measured) => void (by === 'kept' ? setKept(measured) : setWritten(measured)),
    help,
    showHelp: (part) => void showHelp(part),
    notice,
    tell: (line) => void tell(line),
    question,
    ask: (asked) =>
      new Promise((resolve) => {
        const answer = (yes: boolean) => {
          pose(null);
          resolve(yes);
        };
        pose({ ...asked, answer });
      }),
    sought,
    goTo(place) {
      const [list, row] = place;
      if (list === 'machines' && typeof row === 'number') pickMachine(row);
      if (list === 'materials' && typeof row === 'number') pickMaterial(row);
      seek(place);
      void import('./goTo.ts').then(
        (part) => part.goTo(place, page(), show),
        (error) => tell(String(error)),
      );
    },
    take({ text, name, token = null, backup }) {
      const outcome = readWith(text, () => en`the file is damaged, or it is no shop file`);
      if (!outcome.ok) {
        // Where a damaged text goes wrong is looked for by code of its own, which is seldom loaded.
        void import('../../../core/src/file/read.ts')
          .then(
            ({ readShopFile }) => readShopFile(text),
            () => outcome,
          )
          .then(({ findings }) => {
            const faults = findings.map(({ where, what }) => `${placeText(where)}: ${what}`).join(' ');
            tell(
              [
                en`${name} was not opened. ${faults}`,
                ...(backup ? [en`The last version that opened lies beside it as ${backup}.`] : []),
              ].join(' '),
            );
          });
        return false;
      }
      open(outcome.value, name, token);
      // Where the host does not hear it, only the backup stays as it was.
      if (token !== null) void host.opens(token, null).catch(() => undefined);
      tell(outcome.findings.length === 0 ? null : outcome.findings.map((finding) => finding.what).join(' '));
      return true;
    },
    open,
  };

  async function show(next: Page): Promise<void> {
    asked = next;
    try {
      // A page that is there opens at once.
      if (!files.has(next)) await files.load(next);
    } catch (error) {
      tell(en`The page could not be loaded: ${sentenceOf(error)}`);
      return;
    }
    // Whoever asked for another page in the meantime is not taken back.
    if (asked === next) setPage(next);
  }

  function open(...file: Parameters<ShopStore['load']>): void {
    shop.load(...file);
    pickMachine(0);
    pickMaterial(0);
    askReach(REACH);
    askBuy(BUY);
    keepPurchases(NO_PLANS);
    askQuote(QUOTE);
    // A file with holes opens where they are filled.
    void show(solution.plan()?.ok ? 'options' : 'machine');
  }
}

/** A setting of this person on this computer; where the host forbids storage it lasts as long as the window. */
function createSetting<T>(name: string, first: T): readonly [() => T, (value: T) => void] {
  const key = `ratiowright.${name}`;
  const [value, set] = createSignal<T>(stored(key) ?? first);
  return [
    value,
    (next) => {
      set(() => next);
      try {
        localStorage.setItem(key, JSON.stringify(next));
      } catch {
        // Storage is full or forbidden: the setting still holds in this window.
      }
    },
  ];
  function stored(at: string): T | null {
    try {
      return JSON.parse(localStorage.getItem(at) ?? 'null') as T | null;
    } catch {
      return null;
    }
  }
}
