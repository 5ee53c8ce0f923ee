import { en } from '../en.ts';
import { fixed, offRatioText, quantity, ratioText, type Say, signedRangeText, withTrueMinus } from '../format.ts';
import { orNull } from '../given.ts';
import { SIDES, type SideName } from '../plan.ts';
import { type Fraction, ONE, whole } from '../ratio.ts';
import { wantedOn } from '../ratioCheck/amounts.ts';
import { shareText } from '../ratioCheck/causes/words.ts';
import { weightBPerA } from '../ratioCheck/checksCsv.ts';
import type { Evaluation } from '../ratioCheck/evaluate.ts';
import type { Judged } from '../ratioCheck/judge.ts';
import type { Unstable } from '../ratioCheck/verdict.ts';
import { deliveredShare, furtherText, intervalBasis } from '../ratioCheckWords.ts';
import { clip } from '../visible.ts';
import { aPerB, displacementText, partsPlaces } from './paperText.ts';
import type { RatioRow } from './ratioRows.ts';

const WRITTEN_LENGTH = 48;

const WHY: Readonly<Record<Unstable, string>> = {
  'range wider than the limits are apart': en`the catches range further than the limits lie apart`,
  'interval wider than half of that': en`the interval is wider than half of what lies between the limits`,
};

/** Whether the catches agree, beside the verdict. */
export function agreeText({ unstable, counted, input }: Evaluation): string {
  if (counted.length < 2) return en`One catch: nothing tells how catches repeat.`;
  if (input.terms.limits === null) return en`Without limits nothing says how far catches may differ.`;
  return unstable.length === 0 ? en`Stable: the catches agree.` : en`Unstable: ${unstable.map((one) => WHY[one]).join(en`, and `)}.`;
}

/** What the catches say, row by row: each figure with what it is held against. */
export function checkRows({ evaluation, smallest }: Pick<Judged, 'evaluation' | 'smallest'>, say: Say): readonly RatioRow[] {
  const { further, interval, input, offRatio, weighed } = evaluation;
  const { limits, limitsWritten } = input.terms;
  const written = limitsWritten === null ? [] : [en`${clip(withTrueMinus(limitsWritten), WRITTEN_LENGTH)} as written`];
  return [
    ...ratioRow(en`By weight`, weightBPerA(evaluation), weightWanted(evaluation), say),
    ...ratioRow(en`By volume as run`, evaluation.volumeBPerA, input.terms.wantedBPerA, say),
    {
      what: en`Off-ratio`,
      figure: offRatioText(offRatio.value, say),
      against:
        limits === null ? en`limits not given` : [en`limits ${signedRangeText(limits.low, limits.high, say)}`, ...written].join(', '),
    },
    {
      what: en`Interval, ${shareText(input.confidence, say, 1).replace(/[.,]0(?=\u00A0)/, '')}`,
      figure: interval === null ? en`none` : signedRangeText(interval.from.value, interval.to.value, say),
      against: intervalBasis(evaluation, say),
    },
    ...spreadRow(evaluation, say),
    ...SIDES.flatMap((side) => deliveryRow(evaluation, side, say)),
    ...(smallest === null
      ? []
      : [
          {
            what: en`Smallest catch`,
            figure: `A ${quantity(smallest.A.value, 'mass', 'g', 1, say)}, B ${quantity(smallest.B.value, 'mass', 'g', 1, say)}`,
            against: en`worth making on this scale`,
          },
        ]),
    ...(further === null ? [] : [{ what: en`To settle it`, figure: '', against: furtherText(further, weighed, say) }]),
  ];
}

const weightWanted = ({ input: { terms } }: Evaluation): Fraction | null => (terms.densityBOverA.known ? wantedOn(terms, true) : null);

function ratioRow(what: string, made: Fraction | null, wanted: Fraction | null, say: Say): readonly RatioRow[] {
  if (made === null || wanted === null) return [];
  const parts = (bPerA: Fraction) => fixed(bPerA.mul(whole(100)), partsPlaces(wanted.mul(whole(100))), say);
  return [
    {
      what,
      figure: ratioText(aPerB(made), say),
      against: en`wanted ${ratioText(aPerB(wanted), say)}; ${parts(made)} of B per 100 of A, wanted ${parts(wanted)}; B is ${shareText(made.div(made.add(ONE)), say)} of all, wanted ${shareText(wanted.div(wanted.add(ONE)), say)}`,
    },
  ];
}

function spreadRow(evaluation: Evaluation, say: Say): readonly RatioRow[] {
  const { deviation, range } = evaluation;
  if (deviation === null) return [];
  return [
    {
      what: en`Catches range over`,
      figure: shareText(range, say),
      against: en`standard deviation ${shareText(deviation, say, 3)} of off-ratio`,
    },
  ];
}

function deliveryRow({ delivery, input: { terms } }: Evaluation, side: SideName, say: Say): readonly RatioRow[] {
  const of = delivery[side];
  if (of === null) return [];
  const whenNew = orNull(terms.newDelivery[side]);
  const tolerance = orNull(terms.tolerance[side]);
  const nominal = displacementText(terms.displacement_m3_per_rev[side], say);
  return [
    {
      what: en`Pump ${side} delivered`,
      figure: deliveredShare(of, say),
      against: [
        en`of its displacement, ${tolerance === null ? nominal : `${nominal} ±\u00A0${shareText(tolerance, say)}`}`,
        ...(whenNew === null ? [] : [en`new ${shareText(whenNew, say)}`]),
      ].join('; '),
    },
  ];
}
