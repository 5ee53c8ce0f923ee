import type { Plan } from '../../../../core/src/index.ts';

/** Which columns a list has: those that say nothing on this plan are left out. */
export interface Columns {
  readonly stages: Plan['stages'];
  readonly buying: boolean;
  readonly pumps: boolean;
  readonly geometry: boolean;
  readonly limits: boolean;
  /** All of them. */
  readonly count: number;
}

/** Rank, ratio, mark, off-ratio, parts, minutes and findings are always there. */
const ALWAYS = 7;

export function columnsOf({ stages, choice, mix }: Plan): Columns {
  const buying = choice.wheels !== 'rack';
  const pumps = choice.anyPump;
  const geometry = stages.some((stage) => stage.centre.known || stage.presentPitches.known);
  const count = ALWAYS + stages.length + Number(buying) + Number(pumps) + (geometry ? 2 : 0);
  return { stages, buying, pumps, geometry, limits: mix.limits !== null, count };
}
