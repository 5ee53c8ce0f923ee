import { bestOptionLines, bestOptionsJson, laidBest, type Target } from '../src/bestOptions.ts';
import { bestOptionsCsv } from '../src/bestOptionsCsv.ts';
import { en } from '../src/en.ts';
import { type Outcome, type Plan, resolve, type ShopFile } from '../src/index.ts';
import { ownerJson } from '../src/jsonParts.ts';
import type { Call } from './flags.ts';
import { targetsOf } from './materials.ts';
import { table } from './optionTable.ts';
import { reachAnswer } from './reachText.ts';

/** What a machine can make of a window, of the materials of the file, or of both. */
export function reach(file: ShopFile, call: Call): Outcome<{ readonly text: string; readonly served: boolean }> {
  const targets = call.best ? targetsOf(file, call.selection, call) : null;
  if (targets?.ok === false) return targets;
  const plan = planFor(file, call, targets?.value ?? []);
  if (!plan.ok) return plan;
  const ofWindow = call.window && reachAnswer(plan.value, call.window, call);
  const served = ofWindow?.served !== false && (targets === null || targets.value.every(isInside(call)));
  return { ok: true, value: { text: textOf(plan.value, ofWindow, targets?.value ?? null, call), served }, findings: [] };
}

/** Ratios by weight are counted for the material named; of a whole list for the first that is complete. */
function planFor(file: ShopFile, call: Call, targets: readonly Target[]): Outcome<Plan> {
  const complete = targets.find(({ plan }) => plan !== null)?.id ?? targets[0]?.id;
  const material = call.selection.material ?? complete;
  return resolve(file, { ...call.selection, ...(material !== undefined && { material }) }, call.say);
}

const isInside =
  ({ say }: Call) =>
  (target: Target): boolean =>
    target.plan !== null && target.best !== null && laidBest(target.plan, target.best, say).option.inside === true;

function textOf(plan: Plan, ofWindow: ReturnType<typeof reachAnswer> | null, targets: readonly Target[] | null, call: Call): string {
  const { say } = call;
  if (call.csv) return bestOptionsCsv(targets ?? [], say);
  if (call.json) {
    const best = targets === null ? {} : { bestOptions: bestOptionsJson(targets, say) };
    const head = { format: 'ratiowright best options', version: 1, ...ownerJson(plan) };
    return `${JSON.stringify({ ...(ofWindow?.json() ?? head), ...best }, null, 2)}\n`;
  }
  const head = [`${plan.machine.name}, ${plan.rack?.name ?? en`no rack`}${plan.invented ? en` (invented example)` : ''}`];
  const lines = [...(ofWindow?.lines ?? head), ...(targets === null ? [] : ['', ...bestLines(targets, call)])];
  return `${lines.join('\n').replaceAll('\u00a0', ' ')}\n`;
}

function bestLines(targets: readonly Target[], { say }: Call): readonly string[] {
  const lacking = targets.flatMap((target) => (target.plan === null ? [`${target.name}: ${target.missing.join(' ')}`] : []));
  return [
    en`Materials, each with its best option`,
    ...table(bestOptionLines(targets, say)),
    ...(lacking.length === 0 ? [] : ['', ...lacking]),
  ];
}
