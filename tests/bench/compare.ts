import { exactText, type Fraction } from '../../core/src/ratio.ts';
import type { Option } from '../../core/src/search/index.ts';

/** Says where two lists of options part; empty where they are the same. */
export function differences(name: string, wanted: Fraction, found: readonly Option[], expected: readonly Option[]): readonly string[] {
  const ours = found.map(lineOf);
  const theirs = expected.map(lineOf);
  const longer = ours.length > theirs.length ? ours : theirs;
  const at = [...longer.keys()].find((i) => ours[i] !== theirs[i]);
  if (at === undefined) return [];
  return [`${name}, ${exactText(wanted)}, row ${at + 1}: ${ours[at] ?? 'nothing'} instead of ${theirs[at] ?? 'nothing'}`];
}

const lineOf = ({ pump, pairs, ratio, offRatio, changed, purchases }: Option): string =>
  [pump, ...pairs, exactText(ratio), exactText(offRatio), changed, purchases].join(' ');
