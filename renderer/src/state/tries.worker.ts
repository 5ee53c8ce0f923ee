import { resolve } from '../../../core/src/index.ts';
import { type TriedRatios, triedRatios } from '../../../core/src/nearRatios.ts';
import { ratioOf } from '../../../core/src/ratio.ts';
import type { Reply } from './lastAsked.ts';
import type { SentNear, TryRequest } from './messages.ts';

const reply = (message: Reply<readonly SentNear[]>) => postMessage(message);

/** What the plan can do, worked out when the first ratio is tried on it. */
let tried: () => TriedRatios = () => {
  throw new RangeError('a ratio was tried before there was a plan');
};

/** A worker of its own: a try never waits behind a search. */
self.onmessage = ({ data }: MessageEvent<TryRequest>) => {
  if (data.kind === 'plan') {
    let known: TriedRatios | null = null;
    tried = () => {
      if (known !== null) return known;
      const plan = resolve(data.file, data.selection, data.say);
      if (!plan.ok) throw new RangeError('the plan does not resolve');
      known = triedRatios(plan.value);
      return known;
    };
    return;
  }
  const { id, wanted, keep } = data;
  try {
    const near = tried()
      .near(ratioOf(...wanted), keep)
      .map(({ bPerA, inside, partsChanged, first }) => ({ bPerA: [bPerA.n, bPerA.d] as const, inside, partsChanged, first }));
    reply({ id, kind: 'answer', answer: near });
  } catch (error) {
    reply({ id, kind: 'fault', message: error instanceof Error ? error.message : String(error) });
  }
};
