import { en } from '../src/en.ts';
import {
  type Answer,
  asSheetCounts,
  exactRatioText,
  fixed,
  lengthText,
  offRatioText,
  type PlannedOption,
  type Say,
  signed,
} from '../src/index.ts';
import { insideWord } from '../src/optionWords.ts';
import { ONE } from '../src/ratio.ts';
import { teethText } from '../src/teethWords.ts';

export type Row = readonly string[];

/** Head and cells of the list; columns that say nothing on this plan are left out. */
export function tableOf({ plan }: Answer, say: Say): { head: Row; cells: (option: PlannedOption) => Row } {
  const several = plan.stages.length > 1;
  const geometry = plan.stages.some((stage) => stage.centre.known || stage.presentPitches.known);
  const pumps = plan.choice.anyPump;
  const buying = plan.choice.wheels !== 'rack';
  const teethHead = several ? en`teeth ${plan.stages.map((stage) => stage.id).join(', ')}` : en`teeth`;
  const head = ['', teethHead, en`A : B by volume`, '', en`B per 100 A`, en`off-ratio`, en`limits`, en`parts`, 'min'];
  return {
    head: [
      ...head,
      ...(buying ? [en`buy`] : []),
      ...(pumps ? [en`pumps`] : []),
      ...(geometry ? [en`pitches`, en`centre`, en`travel`, en`wrap, deg`] : []),
    ],
    cells: (option) => [
      teethText(option.teeth),
      exactRatioText(ONE.div(option.bPerA)),
      fixed(ONE.div(option.bPerA), 4, say),
      fixed(asSheetCounts(plan, option.bPerA), 3, say),
      offRatioText(option.offRatio, say, 3),
      insideWord(option.inside) ?? '-',
      String(option.changed),
      fixed(option.work_s / 60, 0, say),
      ...(buying ? [String(option.purchases)] : []),
      ...(pumps ? [`${option.pumps.A.name}, ${option.pumps.B.name}`] : []),
      ...(geometry ? geometryCells(option, say) : []),
    ],
  };
}

function geometryCells({ stages }: PlannedOption, say: Say): Row {
  const each = (word: (stage: (typeof stages)[number]) => string) => stages.map(word).join(', ');
  return [
    each(({ fit }) => String(fit.loop?.pitches ?? '-')),
    each(({ fit }) => (fit.loop === null ? '-' : lengthText(fit.loop.centre_m, say, 2))),
    each(({ travel_m }) =>
      travel_m === null ? '-' : signed(travel_m * (say.system === 'inch' ? 1000 / 25.4 : 1000), say.system === 'inch' ? 4 : 2, say),
    ),
    each(({ fit }) => (fit.loop === null ? '-' : fixed((fit.loop.wrap_rad * 180) / Math.PI, 1, say))),
  ];
}

/** Columns padded to their widest cell. */
export function table(rows: readonly Row[]): readonly string[] {
  const widths = rows[0]?.map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0))) ?? [];
  return rows.map((row) =>
    row
      .map((cell, column) => cell.padEnd(widths[column] ?? 0))
      .join('  ')
      .trimEnd(),
  );
}
