import { en } from '../src/en.ts';
import { offRatioText, ratioText, type ShopFile, signedRangeText } from '../src/index.ts';
import { ONE } from '../src/ratio.ts';
import { shareText } from '../src/ratioCheck/causes/words.ts';
import { weightBPerA } from '../src/ratioCheck/checksCsv.ts';
import { type KeptCheck, keptChecks } from '../src/ratioCheck/history.ts';
import type { Call } from './flags.ts';
import { table } from './optionTable.ts';

const HEADS = [
  en`date`,
  en`check`,
  en`machine`,
  en`material`,
  en`catches`,
  en`A : B by weight`,
  en`off-ratio`,
  en`interval`,
  en`verdict`,
  en`agree`,
  'A',
  'B',
];
const NONE = '-';

/** Every kept check of the file in a table, in the order of their days, by the terms of their day. */
export function keptChecksText(file: ShopFile, { say }: Call): string {
  const row = ({ row: { id, date, machine, material }, evaluation }: KeptCheck): readonly string[] => {
    const { counted, interval, offRatio, verdict, unstable, delivery } = evaluation;
    const byWeight = weightBPerA(evaluation);
    return [
      date,
      id,
      file.machines.find((one) => one.id === machine)?.name ?? machine,
      file.materials.find((one) => one.id === material)?.name ?? material,
      String(counted.length),
      byWeight === null ? NONE : ratioText(ONE.div(byWeight), say),
      offRatioText(offRatio.value, say),
      interval === null ? NONE : signedRangeText(interval.from.value, interval.to.value, say),
      verdict,
      counted.length < 2 ? NONE : unstable.length === 0 ? en`yes` : en`no`,
      ...[delivery.A, delivery.B].map((of) => (of === null ? NONE : shareText(of.share.value, say))),
    ];
  };
  const kept = keptChecks(file.ratioChecks);
  const lost = file.ratioChecks.length - kept.length;
  const lines = [
    ...(kept.length === 0 ? [en`The file keeps no ratio check that can be judged.`] : table([HEADS, ...kept.map(row)])),
    ...(lost > 0 && kept.length > 0 ? [en`${lost} more cannot be judged any more; --csv says why.`] : []),
  ];
  return `${lines.join('\n').replaceAll('\u00a0', ' ')}\n`;
}
