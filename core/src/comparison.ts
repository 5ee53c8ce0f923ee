import { en } from './en.ts';
import { exactRatioText, fixed, lengthText, offRatioText, ratioText, type Say } from './format.ts';
import { asSheetCounts } from './madeRatio.ts';
import type { PlannedOption } from './option.ts';
import { insideWord } from './optionWords.ts';
import { BY_BASIS, type Plan } from './plan.ts';
import { ONE } from './ratio.ts';
import { NONE } from './sheet/paperText.ts';

/** One figure of two options side by side. */
export interface ComparedRow {
  readonly what: string;
  readonly fitted: string;
  readonly chosen: string;
  readonly differs: boolean;
}

/**
 * What is fitted and what is chosen, figure by figure.
 *
 * @param fitted, chosen  options of the plan
 * @returns ratio, off-ratio, parts as the sheet counts, then teeth, pitches and centre of every stage
 * @source our choice of rows
 */
export function comparison(plan: Plan, fitted: PlannedOption, chosen: PlannedOption, say: Say): readonly ComparedRow[] {
  const both = (what: string, figure: (option: PlannedOption) => string): ComparedRow => {
    const [now, then] = [figure(fitted), figure(chosen)];
    return { what, fitted: now, chosen: then, differs: now !== then };
  };
  return [
    both(en`A : B by volume`, (option) => ratioText(ONE.div(option.bPerA), say)),
    both(en`exactly`, (option) => exactRatioText(ONE.div(option.bPerA))),
    both(en`off-ratio`, (option) => offRatioText(option.offRatio, say, 3)),
    both(en`limits`, (option) => insideWord(option.inside) ?? en`not given`),
    both(en`B per 100 A ${BY_BASIS[plan.mix.sheet.basis]}`, (option) => fixed(asSheetCounts(plan, option.bPerA), 3, say)),
    ...plan.stages.flatMap(({ name }, index) => [
      both(en`${name}, teeth`, ({ stages }) => en`${stages[index]?.teeth.driver ?? NONE} to ${stages[index]?.teeth.driven ?? NONE}`),
      both(en`${name}, pitches`, ({ stages }) => String(stages[index]?.fit.loop?.pitches ?? NONE)),
      both(en`${name}, centre`, ({ stages }) => {
        const loop = stages[index]?.fit.loop;
        return loop === null || loop === undefined ? NONE : lengthText(loop.centre_m, say, 2);
      }),
    ]),
    ...(plan.choice.anyPump ? [both(en`pumps`, ({ pumps }) => `${pumps.A.name}, ${pumps.B.name}`)] : []),
  ];
}
