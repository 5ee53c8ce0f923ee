import { createEffect, createMemo, createSignal, on, onCleanup } from 'solid-js';
import { en } from '../../../core/src/en.ts';
import type { Plan } from '../../../core/src/index.ts';
import { exactText, Fraction } from '../../../core/src/ratio.ts';
import type { WindowPlans } from '../../../core/src/windowPlans.ts';
import type { App } from './app.ts';
import type { Buyable } from './buyable.ts';
import { makeBuyJobs } from './gapChoice.ts';
import type { BuyAnswer, BuyAsked, MaterialPlans, WantedWindow } from './messages.ts';
import type { ReachState, ShopMaterial } from './reach.ts';
import { revived } from './revive.ts';

/** Plans of purchases with what they were made for; they stay in sight when that has changed. */
export type FoundPlans = { readonly plan: Plan; readonly most: number } & (
  | { readonly kind: 'materials'; readonly materials: readonly ShopMaterial[]; readonly plans: MaterialPlans }
  | { readonly kind: 'window'; readonly window: WantedWindow; readonly plans: WindowPlans }
);

/** With the question they answer, by which it is seen whether it has changed. */
export type KeptPlans = FoundPlans & { readonly asked: string };

/** What to buy so that materials, or a whole window, are within reach; worked out when it is asked for. */
export interface BuyingState {
  /** Those of the file that have limits. */
  readonly limited: () => readonly ShopMaterial[];
  readonly ticked: (material: string) => boolean;
  readonly tick: (material: string, yes: boolean) => void;
  /** Why there is nothing to ask. */
  readonly trouble: () => string | null;
  readonly plan: () => void;
  readonly found: () => FoundPlans | null;
  /** Whether something has changed since, so that the answer may not hold any more. */
  readonly stale: () => boolean;
  readonly progress: () => number | null;
  readonly cancel: () => void;
}

export function createBuying(app: App, reach: ReachState, buyable: () => Buyable | null): BuyingState {
  const jobs = makeBuyJobs();
  onCleanup(() => jobs.end());
  // Kept beyond the page: whoever comes back finds them.
  const found = (): KeptPlans | null => app.purchases().get(app.selection().machine ?? '') ?? null;
  const [progress, setProgress] = createSignal<number | null>(null);
  const limited = createMemo(() => reach.materials().filter(({ plan }) => plan?.mix.limits));
  const ticked = (material: string) => !app.buyAsked().without.includes(material);
  const chosen = () => limited().filter(({ id }) => ticked(id));
  const window = (): WantedWindow | null => {
    const shown = reach.window();
    return shown === null ? null : { ...shown, tolerance: reach.tolerance() };
  };
  const trouble = (): string | null => {
    const may = buyable();
    if (may?.ok !== true) return may?.trouble ?? null;
    if (app.buyAsked().whole) return window() === null ? en`The window is not known yet.` : null;
    if (limited().length === 0) return en`No material of the file has limits, so nothing could be called within reach.`;
    return chosen().length === 0 ? en`Tick a material at least.` : null;
  };
  const asked = (): BuyAsked | null => {
    const may = buyable();
    if (may?.ok !== true || trouble() !== null) return null;
    const wish = { most: app.buyAsked().most, pumps: app.buyAsked().pumps === true, teeth: may.teeth };
    const whole = window();
    if (!app.buyAsked().whole) return { kind: 'materials', materials: chosen().map(({ id }) => id), wish };
    return whole === null ? null : { kind: 'window', window: whole, wish };
  };
  /** Tells two questions apart. */
  const name = (one: BuyAsked | null): string =>
    JSON.stringify(one, (_, value: unknown) => (value instanceof Fraction ? exactText(value) : value));
  const cancel = () => {
    jobs.cancel();
    setProgress(null);
  };
  // What is worked on for a plan that has changed would be no answer.
  createEffect(on(buyable, cancel, { defer: true }));
  return {
    limited,
    ticked,
    tick(material, yes) {
      const without = app.buyAsked().without.filter((id) => id !== material);
      app.askBuy({ ...app.buyAsked(), without: yes ? without : [...without, material] });
    },
    trouble,
    plan() {
      const [file, may, wanted, materials] = [app.shop.snapshot(), buyable(), asked(), chosen()];
      if (file === null || may?.ok !== true || wanted === null) return;
      const { plan } = may;
      const keep = (plans: KeptPlans) => app.keepPurchases(new Map(app.purchases()).set(plan.machine.id, plans));
      jobs.plan({ file, selection: app.selection(), say: app.say() });
      setProgress(0);
      const take = (answer: BuyAnswer) => {
        setProgress(null);
        const of = { plan, most: wanted.wish.most, asked: name(wanted) };
        if (answer.kind === 'materials') keep({ ...of, kind: 'materials', materials, plans: revived(answer.plans) });
        if (answer.kind === 'window' && wanted.kind === 'window')
          keep({ ...of, kind: 'window', window: wanted.window, plans: revived(answer.plans) });
      };
      const fault = (message: string) => {
        setProgress(null);
        app.tell(en`Purchases were not planned; this is a fault of the program: ${message}`);
      };
      jobs.ask({ asked: wanted, rank: 0, latest: true, on: { progress: setProgress, found: take, fault } });
    },
    found,
    stale: () => {
      const of = found();
      if (of === null) return false;
      // The window of a page just opened is known a little later.
      const isKnown = !app.buyAsked().whole || window() !== null;
      return of.plan !== buyablePlan(buyable()) || (isKnown && of.asked !== name(asked()));
    },
    progress,
    cancel,
  };
}

const buyablePlan = (may: Buyable | null): Plan | null => (may?.ok === true ? may.plan : null);
