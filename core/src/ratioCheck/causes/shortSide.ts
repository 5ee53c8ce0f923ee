import { en } from '../../en.ts';
import type { Say } from '../../format.ts';
import { SIDES, type SideName } from '../../plan.ts';
import { Fraction, float, ONE } from '../../ratio.ts';
import type { MeasuredDelivery } from '../delivery.ts';
import type { CheckTerms } from '../model.ts';
import { type Cause, type CauseFound, likely, notLookedFor, possible, ruledOut } from './cause.ts';
import { shareText } from './words.ts';

/** Of a new gear pump; the same figure warns where a measured delivery is typed. */
const USUAL_WHEN_NEW = new Fraction('0.95');

interface Standing {
  readonly side: SideName;
  readonly share: Fraction;
  /** ± 0 where one catch does not tell. */
  readonly uncertainty: number;
  /** The least that a pump in order would give. */
  readonly least: Fraction;
  readonly most: Fraction;
}

/** One side that gives less than its pump should, or both alike. */
export const shortSide: Cause = {
  id: 'cause.shortSide',
  title: en`One side short`,
  within: en`one side short`,
  source: en`definition of volumetric efficiency; 95 % of its displacement for a new pump whose own delivery is not given (from memory)`,
  why: en`Air, a starving inlet, a blocked filter and a worn pump all take from one side only; gearing for them hides them.`,
  judge({ evaluation: { input, delivery } }) {
    const { A, B } = delivery;
    if (input.run === null) return notLookedFor(en`Nobody counted turns or seconds, so what each side should have given is not known.`);
    if (A === null || B === null) return notLookedFor(en`The density of a side is not given, so what its pump delivered is not known.`);
    return judged(standing('A', A, input.terms), standing('B', B, input.terms));
  },
};

function standing(side: SideName, { share, uncertainty }: MeasuredDelivery, { tolerance, newDelivery }: CheckTerms): Standing {
  const off = tolerance[side].known ? tolerance[side].value : new Fraction(0);
  const whenNew = newDelivery[side];
  return {
    side,
    share: share.value,
    uncertainty: uncertainty?.value ?? 0,
    least: (whenNew.known ? whenNew.value : USUAL_WHEN_NEW).mul(ONE.sub(off)),
    most: ONE.add(off),
  };
}

const isShort = ({ share, uncertainty, least }: Standing): boolean => float(share) + uncertainty < float(least);
const isOver = ({ share, uncertainty, most }: Standing): boolean => float(share) - uncertainty > float(most);

function judged(A: Standing, B: Standing): CauseFound {
  const both = (say: Say) => en`A gives ${told(A, say)} of its displacement, B ${told(B, say)}`;
  const over = [A, B].filter(isOver);
  const short = [A, B].filter(isShort);
  if (over.length > 0)
    return possible(
      (say) =>
        en`${both(say)}: more than the whole is not possible for ${over.map(({ side }) => side).join(en` and `)}. Look at the turns or the dial that were noted, the displacement and the density.`,
    );
  if (short.length === SIDES.length)
    return possible(
      (say) =>
        en`${both(say)}: both are short of ${shareText(A.least, say)} and ${shareText(B.least, say)}. Short on both sides points to the speed, or to turns miscounted; where they are short alike the ratio does not change.`,
    );
  const [only] = short;
  if (only === undefined) return ruledOut((say) => en`Neither side is short: ${both(say)}.`);
  return likely(
    (say) =>
      en`${both(say)}: only side ${only.side} is short of ${shareText(only.least, say)}, by ${shareText(only.least.sub(only.share), say)}. Look, in this order, for air, a starving inlet, a blocked filter, a valve that leaks back, and then a worn pump; sprockets would only hide it.`,
  );
}

const told = ({ share, uncertainty }: Standing, say: Say): string =>
  uncertainty > 0 ? `${shareText(share, say)} (± ${shareText(uncertainty, say)})` : shareText(share, say);
