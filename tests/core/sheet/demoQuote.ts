import { firstOption } from '../../../core/src/firstOption.ts';
import type { Say } from '../../../core/src/format.ts';
import { resolve } from '../../../core/src/index.ts';
import { materialReach } from '../../../core/src/materialReach.ts';
import { type Quote, quoteOf } from '../../../core/src/quote.ts';
import { quoteAdd } from '../../../core/src/quoteAdd.ts';
import { ratioOf, whole } from '../../../core/src/ratio.ts';
import { reachOf } from '../../../core/src/reach/reach.ts';
import { demoFile, metric } from './demoSheet.ts';

interface Wanted {
  readonly machine?: string;
  readonly say?: Say;
  readonly change?: Parameters<typeof demoFile>[0];
}

/** The quote page of a bench of the demo, from 1 to 5 with 2 %. */
export function quoted({ machine = 'bench-1', say = metric, change }: Wanted): Quote {
  const file = demoFile(change);
  const materials = file.materials.map(({ id }) => {
    const plan = resolve(file, { machine, material: id }, say);
    if (!plan.ok) throw new Error(`${id} does not resolve`);
    const best = firstOption(plan.value);
    return { plan: plan.value, row: materialReach(plan.value, best, say) };
  });
  const [first] = materials;
  if (first === undefined) throw new Error('no material');
  const reach = reachOf(first.plan, { low: whole(1), high: whole(5), tolerance: ratioOf(1, 50), bins: 40 });
  const add = quoteAdd(
    materials.map(({ plan }) => plan),
    say,
  );
  return quoteOf(first.plan, reach, materials, { number: '0031', date: '24 Nov 2026', file: 'demo.ratiowright', say, add });
}
