import { en } from '../en.ts';
import type { RatioCheckRow } from '../file/ratioCheckRow.ts';
import type { ShopFile } from '../file/shopFile.ts';
import { SIDES, type SideName } from '../plan.ts';
import { clip } from '../visible.ts';

const LINE_LENGTH = 160;

/** What was on the machine, and the change sheet that put it there. */
export function provesText(file: ShopFile, { machine, mounted, changeSheet }: RatioCheckRow): string {
  const of = file.machines.find(({ id }) => id === machine);
  const pump = (side: SideName) => of?.[side].pumps.find(({ id }) => id === mounted.pumps[side])?.name ?? mounted.pumps[side];
  const stage = (index: number) =>
    of?.stages.length === mounted.teeth.length ? (of.stages[index]?.name ?? of.stages[index]?.id) : undefined;
  const teeth = mounted.teeth.map(({ driver, driven }, index) => en`${stage(index) ?? en`stage ${index + 1}`} ${driver} to ${driven}`);
  const sheet = file.changeSheets.find(({ id }) => id === changeSheet);
  const proved = sheet === undefined ? en`What was fitted` : en`Change sheet ${sheet.number}`;
  return clip(`${proved}: ${SIDES.map((side) => en`pump ${side} ${pump(side)}`).join(', ')}; ${teeth.join(', ')}`, LINE_LENGTH);
}

/** How the catches were made. */
export function howText({ run, scale }: RatioCheckRow, weighed: boolean): string {
  const typed = (of: { readonly value: string; readonly unit: string }) => `${of.value}\u00A0${of.unit}`.trim();
  const length =
    run?.turns !== undefined
      ? en`${typed(run.turns)} turns of the motor a catch`
      : run?.time !== undefined && run.dial !== undefined
        ? en`${typed(run.time)} a catch at dial ${typed(run.dial)}`
        : en`neither turns nor seconds noted`;
  const read = weighed ? readText(typed(scale.step), scale.tared) : en`measured by volume`;
  return en`both sides unmixed, ${length}; ${read}`;
}

const readText = (step: string, tared: boolean): string =>
  tared ? en`scale reads to ${step}, tared` : en`scale reads to ${step}, gross and tare`;
