import { en } from '../../../core/src/en.ts';
import { differences } from '../../../core/src/file/differences.ts';
import { EXTENSION, type Finding, placeText, readShopFile } from '../../../core/src/index.ts';
import { askAboutTheirs, type TheirsChoice } from '../frame/TheirsDialog.tsx';
import type { SavedFile, Theirs } from '../host/host.ts';
import type { App } from './app.ts';
import { asItStood } from './asItStood.ts';

/** Saves the open file; whatever goes wrong, the work is still in the window, and the sentence says so. */
export async function saveShop(app: App, asNew: boolean): Promise<void> {
  try {
    await (asNew ? saveAs(app) : save(app, null));
  } catch (error) {
    const what = error instanceof Error ? error.message : String(error);
    app.tell(en`${what} Your work is still in this window: save it again, or under another name or in another place.`);
  }
}

async function saveAs(app: App): Promise<void> {
  const text = app.shop.text();
  const saved = await app.host.saveAs(nameOf(app), text);
  if (saved !== null) await settle(app, saved, text);
}

async function save(app: App, seen: string | null): Promise<void> {
  const text = app.shop.text();
  const saved = await app.host.save(nameOf(app), text, app.shop.token, seen);
  if (saved === null) return;
  if ('theirs' in saved) await meet(app, saved.theirs);
  else await settle(app, saved, text);
}

const nameOf = ({ shop }: App): string => (shop.name === '' ? `shop${EXTENSION}` : shop.name);

/** The file was changed by somebody else since it was opened: nothing is written before the person has seen what. */
async function meet(app: App, theirs: Theirs): Promise<void> {
  const { shop, host } = app;
  const read = theirs.text === null ? null : readShopFile(theirs.text);
  const base = asItStood(shop.base());
  const mine = asItStood(shop.text());
  const their = read?.ok ? read.value : null;
  const { token } = shop;
  const changed = { theirs: their && base && differences(base, their), mine: mine && base && differences(base, mine) };
  const same = their !== null && mine !== null && differences(their, mine).length === 0;
  if (token !== null && (same || changed.theirs?.length === 0)) {
    // Written by another hand, but it says the same as what was opened, or as what is to be saved.
    await host.opens(token, theirs.seen);
    return save(app, null);
  }
  const faults = read === null || read.ok ? '' : faultsIn(read.findings);
  const choice = await askAboutTheirs(app, { what: [theirs.what, faults].join(' ').trim(), ...changed });
  const act: Readonly<Record<TheirsChoice, () => Promise<void>>> = {
    mine: () => save(app, theirs.seen),
    other: () => saveAs(app),
    back: async () => undefined,
    async theirs() {
      if (their === null || token === null) return;
      await host.opens(token, theirs.seen);
      app.open(their, shop.name, token, { base: null, before: shop.snapshot() });
      app.tell(en`Theirs is open now. Undo brings yours back.`);
    },
  };
  await act[choice]();
}

async function settle({ shop, host, tell }: App, saved: SavedFile, text: string): Promise<void> {
  shop.saved(saved.name, saved.token, text);
  const trouble = unreadable(text);
  if (trouble === null && saved.token !== null) await host.opens(saved.token, null);
  const aside = saved.aside === null ? null : en`Saved. The file that somebody else had left there was kept as ${saved.aside}.`;
  tell([aside, trouble].filter((line) => line !== null).join(' ') || null);
}

/** Saving never loses work, so it is not refused; but what would not open again must be said while it can still be mended. */
function unreadable(text: string): string | null {
  const outcome = readShopFile(text);
  if (outcome.ok) return null;
  return en`Saved. As it stands the file will not open again until this is put right: ${faultsIn(outcome.findings)}`;
}

const faultsIn = (findings: readonly Finding[]): string =>
  findings.map(({ where, what }) => (where.length === 0 ? what : `${placeText(where)}: ${what}`)).join(' ');
