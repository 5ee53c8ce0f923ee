import { en } from './en.ts';
import type { SideName, Stage, Teeth } from './plan.ts';
import { quoted } from './visible.ts';

/** Teeth as typed for the stages of a plan, or what was expected. */
export type TriedTeeth = { readonly ok: true; readonly teeth: readonly Teeth[] } | { readonly ok: false; readonly expected: string };

/** What a file may hold as teeth of a slot. */
const FEWEST = 5;
const MOST = 400;

/** Two whole numbers, apart by a space, `to`, a colon or an arrow; the words before them name the stage. */
const PAIR = /^(?:(.+?)\s+)?(\d{1,6})(?:\s*(?:\bto\b|:|→|->|>)\s*|\s+)(\d{1,6})$/i;

/**
 * Teeth typed in one line for a quick look: driver and driven of a stage, stages apart by semicolons. A stage is named by its name,
 * its id, or by A or B where one stage alone turns that pump; without names the pairs go to the stages that may change, in their order.
 *
 * @param text    as typed
 * @param stages  of the plan; those not named keep their fitted teeth
 * @returns teeth for every stage, or what was expected
 * @source our choice
 * @example readTeeth('s1 23 25; s2 20 23', stages)  // [{ driver: 23, driven: 25 }, { driver: 20, driven: 23 }]
 */
export function readTeeth(text: string, stages: readonly Stage[]): TriedTeeth {
  const parts = text
    .split(/[;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const teeth = stages.map(({ driver, driven }): Teeth => ({ driver: driver.teeth, driven: driven.teeth }));
  const named = new Set<number>();
  const unnamed = openStages(stages);
  if (parts.length === 0) return refuse(example(stages));
  for (const [index, part] of parts.entries()) {
    const [, name, driver, driven] = PAIR.exec(part) ?? [];
    if (driver === undefined || driven === undefined) return refuse(en`${quoted(part)} is not a pair of teeth. ${example(stages)}`);
    const stage = name === undefined ? unnamed[index] : stageNamed(name, stages);
    if (name === undefined && parts.length !== unnamed.length) return refuse(en`Say which stage is meant. ${example(stages)}`);
    if (stage === undefined) return refuse(en`There is no stage ${quoted(name ?? String(index + 1))}. ${namesOf(stages)}`);
    if (named.has(stage)) return refuse(en`The stage ${stages[stage]?.name ?? ''} is named twice.`);
    named.add(stage);
    const pair = { driver: Number(driver), driven: Number(driven) };
    const wrong = [pair.driver, pair.driven].find((count) => count < FEWEST || count > MOST);
    if (wrong !== undefined) return refuse(en`${wrong} teeth: a wheel has ${FEWEST} to ${MOST}.`);
    teeth[stage] = pair;
  }
  return { ok: true, teeth };
}

const refuse = (expected: string): TriedTeeth => ({ ok: false, expected });

/** Indexes of the stages that may change; where none may, of all. */
function openStages(stages: readonly Stage[]): readonly number[] {
  const all = stages.map((_, index) => index);
  const open = all.filter((index) => stages[index]?.open === true);
  return open.length === 0 ? all : open;
}

function stageNamed(name: string, stages: readonly Stage[]): number | undefined {
  const wanted = name.toLowerCase();
  const among = (is: (stage: Stage) => boolean): number | undefined => {
    const found = stages.flatMap((stage, index) => (is(stage) ? [index] : []));
    return found.length === 1 ? found[0] : undefined;
  };
  const side: SideName | null = wanted === 'a' ? 'A' : wanted === 'b' ? 'B' : null;
  return (
    among((stage) => stage.name.toLowerCase() === wanted) ??
    among((stage) => stage.id.toLowerCase() === wanted) ??
    among((stage) => stage.turns === side)
  );
}

const namesOf = (stages: readonly Stage[]): string => en`Stages here: ${stages.map(({ name }) => name).join(', ')}.`;

/** How the fitted teeth would be typed. */
function example(stages: readonly Stage[]): string {
  const open = openStages(stages).flatMap((index) => stages[index] ?? []);
  if (open.length === 0) return en`This drive has no stage.`;
  const pairs = open.map(({ name, driver, driven }) => `${open.length === 1 ? '' : `${name} `}${driver.teeth} ${driven.teeth}`);
  return en`Driver, then driven, as fitted: ${pairs.join('; ')}`;
}
