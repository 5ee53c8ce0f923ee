import { en } from '../src/en.ts';
import { asSheetCounts, exactRatioText, fixed, offRatioText, type Plan, ratioText, type Say, type ShopFile } from '../src/index.ts';
import { type NearRatio, triedRatios } from '../src/nearRatios.ts';
import { nearRatiosJson } from '../src/nearRatiosJson.ts';
import { insideWord } from '../src/optionWords.ts';
import { BY_BASIS } from '../src/plan.ts';
import { type Fraction, ONE } from '../src/ratio.ts';
import type { Reading } from '../src/reading.ts';
import { teethText } from '../src/teethWords.ts';
import { readTried, triedByVolume, writingOf } from '../src/triedRatio.ts';
import type { Call } from './flags.ts';
import { table } from './optionTable.ts';

const SHOWN_RATIOS = 8;

/** What can be built near another ratio; or what was expected in its place. */
export function tryRatio(
  file: ShopFile,
  plan: Plan,
  text: string,
  call: Call,
): Reading<{ readonly text: string; readonly inside: boolean }> {
  const sheet = file.materials.find(({ id }) => id === plan.material.id)?.ratio;
  const read = readTried(text, writingOf(plan, sheet?.perHundredA !== undefined));
  if (!read.ok) return read;
  const bPerA = triedByVolume(plan, read.value);
  const near = triedRatios(plan).near(bPerA, call.rows ?? SHOWN_RATIOS);
  const written = `${text.trim()} ${BY_BASIS[plan.mix.sheet.basis]}`;
  const printed = call.json
    ? `${JSON.stringify(nearRatiosJson(plan, { written, bPerA }, near), null, 2)}\n`
    : nearText(plan, written, bPerA, near, call.say);
  return { ok: true, value: { text: printed, inside: near.some(({ inside }) => inside === true) } };
}

function nearText(plan: Plan, written: string, bPerA: Fraction, near: readonly NearRatio[], say: Say): string {
  const pumpName = (side: 'A' | 'B', id: string) => plan.sides[side].pumps.find((pump) => pump.id === id)?.name ?? id;
  const lines = [
    `${plan.machine.name}, ${plan.material.name}${plan.invented ? en` (invented example)` : ''}`,
    en`Tried ${written}: A to B by volume ${ratioText(ONE.div(bPerA), say)}; the material wants ${plan.mix.sheet.written}`,
    plan.mix.limits === null
      ? en`Limits not given: no ratio is called inside.`
      : en`Limits ${plan.mix.limitsWritten}, about the tried ratio`,
    '',
    ...(near.length === 0
      ? [en`Nothing can be built.`]
      : table([
          ['', en`A : B by volume`, '', en`B per 100 A`, en`off-ratio`, en`limits`, en`parts`, en`first option, teeth`, en`pumps`],
          ...near.map((ratio, index) => [
            String(index + 1),
            exactRatioText(ONE.div(ratio.bPerA)),
            fixed(ONE.div(ratio.bPerA), 4, say),
            fixed(asSheetCounts(plan, ratio.bPerA), 3, say),
            offRatioText(ratio.offRatio, say, 3),
            insideWord(ratio.inside) ?? '-',
            String(ratio.partsChanged),
            teethText(ratio.first.teeth),
            `${pumpName('A', ratio.first.pumps.A)}, ${pumpName('B', ratio.first.pumps.B)}`,
          ]),
        ])),
  ];
  return `${lines.join('\n').replaceAll('\u00a0', ' ')}\n`;
}
