import { exactText, type Fraction, ONE, ratioOf } from '../../../core/src/ratio.ts';
import { type Option, slideOf } from '../../../core/src/search/index.ts';
import { anything } from '../../core/search/racks.ts';
import { best } from '../bench.ts';
import type { Form } from '../form.ts';
import { instance, ordinary, problemOf } from '../instances.ts';
import { rawCount } from '../nestedLoops.ts';
import type { Row } from '../report.ts';
import { figure } from '../table.ts';
import { median, type Timed, timed } from '../timing.ts';
import { comparedNote, type Entry, noLonger } from './entry.ts';

const INSTANCE = instance(60, 3);
const STEPS = 200;
/** As many ratios as a screen has rows. */
const ROWS = 20;
/** Beside one step in so many a search from nothing is made, to compare times and answers. */
const COMPARED = 10;
const WARM_UP = 3;

/** How far apart the targets are: wide, as a hand drags it over a scale, and all within a millionth to either side. */
const SPANS: readonly (readonly [name: string, span: Fraction, share: number])[] = [
  ['slide', ratioOf(1, 10), 1 / 5],
  ['slide within 1e-6', ratioOf(2, 10 ** 6), 1 / 100],
];

/** The same machine, one target after another. */
export const slide: Entry = {
  name: 'slide',
  run: (bench) => {
    const slides = SPANS.map(([name, span, share]) => {
      const { row, than, apart } = slideOver(name, span, bench.form);
      return { row, claim: noLonger(`${row.name}: a step as long as one search`, row, than, share), apart };
    });
    return {
      rows: slides.map(({ row }) => row),
      claims: slides.map(({ claim }) => ({ ...claim, note: '' })),
      differences: slides.flatMap(({ apart }) => apart),
    };
  },
};

interface Slid {
  readonly row: Row;
  /** searches from nothing for some of the same targets, in turn with the steps */
  readonly than: Row;
  readonly apart: readonly string[];
}

function slideOver(name: string, span: Fraction, { slide_ms }: Form): Slid {
  const [middle = ONE] = ordinary(1);
  const problem = problemOf(INSTANCE, middle);
  const targets = Array.from({ length: STEPS }, (_, i) => middle.mul(ONE.add(span.mul(ratioOf(2 * i - STEPS, 2 * STEPS)))));
  for (const wanted of targets.slice(0, WARM_UP)) searched(wanted);
  const prepared = timed(() => slideOf(problem));
  const steps_ms: number[] = [];
  const searches_ms: number[] = [];
  const apart: string[] = [];
  const end_ms = performance.now() + slide_ms;
  for (const [i, wanted] of targets.entries()) {
    const { ms, value } = timed(() => prepared.value?.at(wanted, ROWS) ?? []);
    steps_ms.push(ms);
    if (i % COMPARED === 0) {
      const search = searched(wanted);
      searches_ms.push(search.ms);
      apart.push(...differing(`${name}, ${exactText(wanted)}`, textsOf(value), textsOf(search.value)));
    }
    if (performance.now() > end_ms) break;
  }
  const note = `${steps_ms.length} steps, prepared in ${figure(prepared.ms)} ms, first step ${figure(steps_ms[0] ?? null)} ms`;
  const rowFrom = (times_ms: readonly number[]): Row => ({
    name: `${INSTANCE.name}, ${name}`,
    raw: rawCount(problem),
    median_ms: median(times_ms),
    max_ms: Math.max(...times_ms),
    loops: null,
    twin: null,
    memory_MB: null,
    note: comparedNote(note, apart, 'searches from nothing'),
  });
  return { row: rowFrom(steps_ms), than: rowFrom(searches_ms), apart };
}

function searched(wanted: Fraction): Timed<readonly Option[]> {
  const problem = problemOf(INSTANCE, wanted);
  return timed(() => best(problem, anything, {}).options);
}

/** Each ratio once. */
const textsOf = (list: readonly { readonly ratio: Fraction }[]): readonly string[] => [
  ...new Set(list.map(({ ratio }) => exactText(ratio))),
];

/** The ratios that a search finds must be those that the slide lists first. */
function differing(where: string, slid: readonly string[], found: readonly string[]): readonly string[] {
  const at = found.findIndex((ratio, i) => ratio !== slid[i]);
  return at < 0 ? [] : [`${where}, ratio ${at + 1}: ${slid[at]} instead of ${found[at]}`];
}
