import { indexMade } from '../chemistry/chemistry.ts';
import { indexText } from '../chemistry/indexText.ts';
import { en } from '../en.ts';
import { fixed, offRatioText, ratioText, type Say, SENSE, signedPercentText, withTrueMinus } from '../format.ts';
import { madeOffRatio, madeRatio } from '../madeRatio.ts';
import { aPerB, perHundredA } from '../mixRatio.ts';
import { type Build, BY_BASIS, type Mix, type Plan, SIDES } from '../plan.ts';
import type { Fraction } from '../ratio.ts';
import { type Input, input, type Worked, work } from '../working.ts';
import { type Fact, type FactGroup, fact } from '../workingText.ts';

/** The mix ratio: wanted and made, how far off, as the sheet counts it, and what that makes of the index. */
export function mixFacts(plan: Plan, build: Build, say: Say): FactGroup {
  const { mix } = plan;
  const { pumps, wheels, made } = madeRatio(plan, build);
  const e = madeOffRatio(plan, build);
  const ratio = (what: string, r: Input<Fraction>) => work(aPerB, what, { r });
  const ratioFact = (id: string, worked: Worked<Fraction>) => fact(id, worked, say, { figure: ratioText(worked.value, say) });
  return {
    id: 'mix',
    title: en`Mix ratio`,
    facts: [
      ratioFact('wanted', ratio(en`A per B by volume as run, wanted`, mix.wanted)),
      ratioFact('made', ratio(en`A per B by volume, made`, made)),
      fact('pumps', pumps, say),
      fact('wheels', wheels, say),
      fact('offRatio', e, say, { figure: offRatioText(e.value, say, 3) }),
      perHundredFact(mix, e, say),
      ...indexFacts(mix, e, say),
      ...limitFacts(mix, say),
      ...chemistryFacts(mix, say),
      ...densityFacts(mix, say),
    ],
  };
}

function perHundredFact({ sheet }: Mix, e: Input<Fraction>, say: Say): Fact {
  const worked = work(perHundredA, en`B per 100 A ${BY_BASIS[sheet.basis]}, made`, {
    a: input(en`parts of A ${BY_BASIS[sheet.basis]}, wanted`, sheet.partsA, 'number'),
    b: input(en`parts of B ${BY_BASIS[sheet.basis]}, wanted`, sheet.partsB, 'number'),
    e,
  });
  return fact('perHundredA', worked, say, { figure: fixed(worked.value, 3, say), note: en`wanted: ${sheet.written}` });
}

function indexFacts({ chemistry }: Mix, e: Input<Fraction>, say: Say): readonly Fact[] {
  if (!chemistry.known) return [];
  const { system, index } = chemistry.value;
  const made = indexMade(chemistry.value, e);
  return [
    fact('index', made, say, { figure: indexText(system, made.value, say), note: en`wanted: ${indexText(system, index.value, say)}` }),
  ];
}

function limitFacts({ limitsWorked, limitsWritten }: Mix, say: Say): readonly Fact[] {
  if (limitsWorked === null) return [];
  return (['low', 'high'] as const).map((end) => {
    const worked = limitsWorked[end];
    return fact(`${end}Limit`, worked, say, {
      figure: signedPercentText(worked.value, say, 3),
      note: `${withTrueMinus(limitsWritten ?? '')}; ${SENSE}`,
    });
  });
}

function chemistryFacts({ chemistry }: Mix, say: Say): readonly Fact[] {
  if (!chemistry.known) return [];
  const { equivalentWeight, perHundredA: needed } = chemistry.value;
  const weights = SIDES.map((side) =>
    fact(`equivalentWeight${side}`, equivalentWeight[side], say, {
      what: en`equivalent weight of ${side}`,
      figure: `${fixed(equivalentWeight[side].value, 3, say)}\u00A0g/eq`,
    }),
  );
  return [...weights, fact('perHundredAWanted', needed, say, { figure: fixed(needed.value, 3, say) })];
}

function densityFacts({ density }: Mix, say: Say): readonly Fact[] {
  return SIDES.flatMap((side) => {
    const known = density[side];
    return known.known ? [fact(`density${side}`, known.value, say, { what: en`density of ${side} as run` })] : [];
  });
}
