import type { RatioCheckRow } from '../file/ratioCheckRow.ts';
import type { Plan, SideName, Stage } from '../plan.ts';

/**
 * The machine with the pumps and teeth of a check on it.
 *
 * @returns null where the machine of today has other stages, or no longer lists a pump
 */
export function asMounted(plan: Plan, { pumps, teeth }: RatioCheckRow['mounted']): Plan | null {
  if (teeth.length !== plan.stages.length) return null;
  const at = (side: SideName) => plan.sides[side].pumps.findIndex(({ id }) => id === pumps[side]);
  const [A, B] = [at('A'), at('B')];
  if (A < 0 || B < 0) return null;
  const stages = plan.stages.map((stage, index): Stage => {
    const pair = teeth[index];
    if (pair === undefined) return stage;
    return { ...stage, driver: { ...stage.driver, teeth: pair.driver }, driven: { ...stage.driven, teeth: pair.driven } };
  });
  return { ...plan, stages, sides: { A: { ...plan.sides.A, fitted: A }, B: { ...plan.sides.B, fitted: B } } };
}
