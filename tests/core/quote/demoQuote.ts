import { firstOption } from '../../../core/src/firstOption.ts';
import type { Say } from '../../../core/src/format.ts';
import { type Plan, resolve, type ShopFile } from '../../../core/src/index.ts';
import { materialReach } from '../../../core/src/materialReach.ts';
import { quoteAdd } from '../../../core/src/quote/add.ts';
import { type Quote, type QuotedMaterial, quoteOf } from '../../../core/src/quote/quote.ts';
import { ratioOf, whole } from '../../../core/src/ratio.ts';
import type { Reach } from '../../../core/src/reach/figures.ts';
import { reachOf } from '../../../core/src/reach/reach.ts';
import { demoFile, demoPlan, metric } from '../sheet/demoSheet.ts';

const ONE_TO_FIVE = { low: whole(1), high: whole(5), tolerance: ratioOf(1, 50), bins: 40 };

interface Wanted {
  readonly machine?: string;
  readonly say?: Say;
  readonly customer?: string;
  readonly note?: string;
  readonly validUntil?: string;
  readonly change?: Parameters<typeof demoFile>[0];
}

/** Bench 1 of the demo with its first material, and its reach from 1 to 5 with 2 %. */
export function demoReach(): { readonly plan: Plan; readonly reach: Reach } {
  const plan = demoPlan({ selection: { machine: 'bench-1', material: 'e12' } });
  return { plan, reach: reachOf(plan, ONE_TO_FIVE) };
}

/** The materials of a file on one of its benches, each with its best option. */
export function quotedMaterials(file: ShopFile, machine = 'bench-1', say = metric): readonly QuotedMaterial[] {
  return file.materials.map(({ id }) => {
    const plan = resolve(file, { machine, material: id }, say);
    if (!plan.ok) throw new Error(`${id} does not resolve`);
    const best = firstOption(plan.value);
    return { plan: plan.value, row: materialReach(plan.value, best, say) };
  });
}

/** The quote page of a bench of the demo, from 1 to 5 with 2 %. */
export function quoted({ machine = 'bench-1', say = metric, customer = '', note = '', validUntil, change }: Wanted): Quote {
  const file = demoFile(change);
  const materials = quotedMaterials(file, machine, say);
  const [first] = materials;
  if (first === undefined) throw new Error('no material');
  const reach = reachOf(first.plan, ONE_TO_FIVE);
  const add = quoteAdd(
    materials.map(({ plan }) => plan),
    say,
  );
  return quoteOf(first.plan, reach, materials, {
    number: '0031',
    date: '2026-11-24',
    validUntil: validUntil ?? null,
    customer,
    note,
    file: 'demo.ratiowright',
    say,
    incomplete: [],
    add,
  });
}
