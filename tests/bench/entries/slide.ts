import { exactText, type Fraction, ONE, ratioOf } from '../../../core/src/ratio.ts';
import { slideOf } from '../../../core/src/search/index.ts';
import { anything } from '../../core/search/racks.ts';
import { best } from '../bench.ts';
import { instance, KEEP, ordinary, problemOf } from '../instances.ts';
import { rawCount } from '../nestedLoops.ts';
import type { Row } from '../report.ts';
import { median, timed } from '../timing.ts';
import { type Entry, noLonger } from './entry.ts';

const INSTANCE = instance(60, 3);
const STEPS = 200;
/** One step in so many is compared with a search from nothing. */
const COMPARED = 40;

/** How far apart the targets are: wide, as a hand drags it over a scale, and all within a millionth to either side. */
const SPANS: readonly (readonly [name: string, span: Fraction, share: number])[] = [
  ['slide', ratioOf(1, 10), 1 / 5],
  ['slide within 1e-6', ratioOf(2, 10 ** 6), 1 / 100],
];

/** The same machine, one target after another. */
export const slide: Entry = {
  name: 'slide',
  run: (bench) => {
    const than = bench.ordinary(INSTANCE);
    const slides = SPANS.map(([name, span, share]) => {
      const { row, apart } = slideOver(name, span, bench.form.slide_ms);
      return { row, claim: noLonger(`${row.name}: a step as long as one search`, row, than, share), apart };
    });
    return {
      rows: slides.map(({ row }) => row),
      claims: slides.map(({ claim }) => ({ ...claim, note: '' })),
      differences: slides.flatMap(({ apart }) => apart),
    };
  },
};

function slideOver(name: string, span: Fraction, most_ms: number): { readonly row: Row; readonly apart: readonly string[] } {
  const [middle = ONE] = ordinary(1);
  const problem = problemOf(INSTANCE, middle);
  const targets = Array.from({ length: STEPS }, (_, i) => middle.mul(ONE.add(span.mul(ratioOf(2 * i - STEPS, 2 * STEPS)))));
  const prepared = timed(() => slideOf(problem));
  const times_ms: number[] = [];
  const apart: string[] = [];
  const end_ms = performance.now() + most_ms;
  for (const [i, wanted] of targets.entries()) {
    const { ms, value } = timed(() => prepared.value?.at(wanted, KEEP) ?? []);
    times_ms.push(ms);
    if (i % COMPARED === 0)
      apart.push(
        ...differsFromSearch(
          name,
          wanted,
          value.map(({ ratio }) => exactText(ratio)),
        ),
      );
    if (performance.now() > end_ms) break;
  }
  const row: Row = {
    name: `${INSTANCE.name}, ${name}`,
    raw: rawCount(problem),
    median_ms: median(times_ms),
    max_ms: Math.max(...times_ms),
    loops: null,
    twin: null,
    memory_MB: null,
    note: `${times_ms.length} steps, prepared in ${prepared.ms.toFixed(1)} ms, first step ${(times_ms[0] ?? 0).toFixed(1)} ms`,
  };
  return { row, apart };
}

/** The ratios of a search from nothing, each once, must be those that the slide lists first. */
function differsFromSearch(name: string, wanted: Fraction, slid: readonly string[]): readonly string[] {
  const searched = [...new Set(best(problemOf(INSTANCE, wanted), anything, {}).options.map(({ ratio }) => exactText(ratio)))];
  const at = searched.findIndex((ratio, i) => ratio !== slid[i]);
  return at < 0 ? [] : [`${name}, ${exactText(wanted)}, ratio ${at + 1}: ${slid[at]} instead of ${searched[at]}`];
}
