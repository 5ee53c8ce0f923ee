import { describe, expect, test } from 'vitest';
import { codeOf, filesUnder, withoutComments } from './sources.ts';

/** Units in names, as DEVELOPERS.md lists them: SI inside; millimetres, points and ems on paper; per cent, pitches and degrees where a finding prints them. */
const UNITS =
  /_(?:m|m2|m3|mm|kg|s|min|K|N|Pa|W|J|rad|deg|rev_per_s|m_per_s|m3_per_s|m3_per_rev|kg_per_m3|kg_per_s|per_K|N_m|Pa_s|units_per_m|pt|em|percent|pitches|SI)$/;

/** Names that say by themselves that what they hold has no dimension: a count, a place in a list, an exact ratio, or a share of one. */
const COUNTS =
  /(?:[tT]eeth|[tT]eeth(?:From|To)|[pP]itches|[tT]urns?|[lL]oops|[Cc]ount|[iI]ndex|[pP]laces|Ratios?|PerA|PerB|OverA|OverB|[sS]hare|[uU]ncertainty|[eE]fficiency|[fF]actor|[tT]olerance|[dD]elivery)$/;

/** Bare words, each with what it counts or compares. */
const BARE: Readonly<Record<string, readonly string[]>> = {
  'teeth of the two wheels of a stage, teeth to try, pitches now on': ['driver', 'driven', 'teethToTry', 'present'],
  'pieces, options and changes, counted': ['quantity', 'added', 'purchases', 'changed', 'ways', 'buildable', 'inside', 'rank'],
  'a place in a list or a text': ['fitted', 'train', 'stage', 'shaft', 'at', 'line', 'row', 'rows', 'lastRow', 'column', 'columns'],
  'parts to buy, counted': ['fewestPurchases', 'mostPurchases', 'provenUpTo', 'size', 'sizes'],
  'a part to buy, by its place, and the order of two choices of them': ['part', 'inOrder'],
  'days of the calendar, counted': ['validDays'],
  'money, a whole number of the smallest coin': ['price', 'prices'],
  'which of two comes first: below 0, 0 or above': ['compareMeasured'],
  'targets, by their place in a list': ['target', 'served', 'unserved', 'alone', 'lost'],
  'ratios and options, counted; places on the slide, in steps': [
    'keep',
    'partsChanged',
    'steps',
    'stepsOf',
    'distinct',
    'moreGaps',
    'bins',
    'perBin',
    'binned',
  ],
  'targets, and the share of them that is served': ['worstTarget', 'covered'],
  'shares of full speed, and in per cent': ['dialStep', 'step', 'percentOf'],
  'a set of checks, one bit each': ['field'],
  'both ends of a range, in whatever the range is of': ['from', 'to', 'low', 'high', 'least', 'most'],
  'parts of a mix, counted as the sheet counts': [
    'parts',
    'partsA',
    'partsB',
    'third',
    'A',
    'B',
    'leastB',
    'mostB',
    'wanted',
    'asSheetCounts',
    'inTank',
  ],
  'one ratio over another': ['times', 'triedByVolume', 'e', 'R', 'elongation', 'ofSpan', 'implied', 'speedRipple'],
  'statistics, in the unit of what was read': [
    'mean',
    'values',
    'readings',
    'numbers',
    'deviation',
    'deviations',
    'varianceA',
    'varianceB',
    'covariance',
    'covarianceOf',
    'shared',
    'withinStep',
    'range',
    'movingRange',
    'limit',
    'at0',
    'at0Deviation',
    'slope',
    'slopeDeviation',
    'spreadX',
    'meanX',
    'x',
    'y',
    'amount',
  ],
  'shares of chance and of a ratio, and counts of catches': [
    'confidence',
    'quantile',
    'studentQuantile',
    'degreesOfFreedom',
    'repeatability',
    'quarterToLimit',
    'catchesWorthMaking',
    'waiting',
    'withinStep',
    'pooledRepeatability',
    'confidenceOf',
    'beyond',
    'runs',
    'wantedOn',
  ],
  'any number, with its unit beside it or none': [
    'value',
    'number',
    'numerator',
    'denominator',
    'a',
    'b',
    'whole',
    'ratioOf',
    'float',
    'toSI',
    'fromSI',
    'si',
    'inUnit',
    'digits',
  ],
};
const BARE_WORDS = new Set(Object.values(BARE).flat());

/** Files that set type and draw: places and sizes in the units of the drawing or of the type, as their headers say. */
const DRAWING: Readonly<Record<string, readonly string[]>> = {
  'core/src/quote/rule.ts': ['lanes'],
  'core/src/trendScale.ts': ['mostSteps'],
  'core/src/reachRule.ts': ['ratios', 'counts', 'best', 'lanes'],
  'core/src/sheet/columns.ts': ['size'],
  'core/src/sheet/driveLayout.ts': ['x', 'names', 'foot', 'dimensions', 'height', 'scale'],
  'core/src/sheet/spread.ts': ['width', 'spread'],
  'core/src/sheet/svgShapes.ts': ['x', 'y', 'x1', 'y1', 'x2', 'y2', 'size'],
};

const NUMBER = '(?:readonly )?(?:Given<)?(?:number|Fraction)\\b';

interface Named {
  readonly file: string;
  readonly name: string;
}

/** Index after the bracket that closes the one before `from`. */
function closing(code: string, from: number, open: string, close: string): number {
  let depth = 1;
  let at = from;
  for (; depth > 0 && at < code.length; at += 1) depth += code[at] === open ? 1 : code[at] === close ? -1 : 0;
  return at;
}

/** Number fields and parameters in a piece of code. */
const numbersIn = (file: string, code: string): readonly Named[] =>
  [...code.matchAll(new RegExp(`\\b(\\w+)\\??: ${NUMBER}`, 'g'))].map(([, name = '']) => ({ file, name }));

/** What a file offers: number fields of its interfaces, number parameters of its functions, and functions that return a number. */
function offered(file: string, code: string): readonly Named[] {
  const fields = [...code.matchAll(/export interface \w+[^{]*\{/g)].flatMap(({ 0: head, index }) => {
    const from = index + head.length;
    return numbersIn(file, code.slice(from, closing(code, from, '{', '}')));
  });
  const functions = [...code.matchAll(/export (?:function |const )(\w+)(?: = )?(?:<[^(]*>)?\(/g)].flatMap(
    ({ 0: head, 1: name = '', index }) => {
      const from = index + head.length;
      const after = closing(code, from, '(', ')');
      const returns = new RegExp(`^: ${NUMBER}`).test(code.slice(after));
      return [...numbersIn(file, code.slice(from, after)), ...(returns ? [{ file, name }] : [])];
    },
  );
  return [...fields, ...functions];
}

const FILES = filesUnder('core/src', '.ts').filter((place) => !place.endsWith('.d.ts'));
/** The search sees counts, ratios and their logarithms and nothing else; so no number in it may carry a unit. */
const inSearch = (place: string): boolean => place.startsWith('core/src/search/');
const named = (list: readonly Named[]): readonly string[] => [...new Set(list.map(({ file, name }) => `${file}: ${name}`))].sort();

test('fields, parameters and results are found, whatever stands between [the definition of the language]', () => {
  const code = withoutComments(
    'export interface A { readonly x_m: number; /* no: number */ readonly b?: Given<Fraction>; f(c: number): string }\n' +
      'export function g<T>(d: number, h: (e: T) => void): Fraction {}\nexport const k = (l: readonly number[]): number => 1;\nfunction hidden(m: number) {}',
  );
  expect(offered('', code).map(({ name }) => name)).toEqual(['x_m', 'b', 'c', 'd', 'g', 'l', 'k']);
});

describe('units in names', () => {
  const all = FILES.filter((place) => !inSearch(place)).flatMap((place) => offered(place, codeOf(place)));

  test('every number that core offers ends in its unit, or in a word that says what it counts', () => {
    expect(all.length).toBeGreaterThan(200);
    const drawn = ({ file, name }: Named) => DRAWING[file]?.includes(name) === true;
    expect(named(all.filter((one) => !UNITS.test(one.name) && !COUNTS.test(one.name) && !BARE_WORDS.has(one.name) && !drawn(one)))).toEqual(
      [],
    );
  });
  test('no bare word stands on the list that nothing uses', () => {
    const used = new Set(all.map(({ name }) => name));
    expect([...BARE_WORDS].filter((word) => !used.has(word))).toEqual([]);
  });
  test('the search knows no dimension', () => {
    const numbers = FILES.filter(inSearch).flatMap((place) => numbersIn(place, codeOf(place)));
    expect(numbers.length).toBeGreaterThan(50);
    expect(named(numbers.filter(({ name }) => UNITS.test(name)))).toEqual([]);
  });
});

/** Words that stand for a dimension: no number may be called by one of them without its unit, nor inside a file. */
const DIMENSIONS =
  /(?:length|diameter|radius|distance|centre|span|gap|travel|bore|guard|keyway|pitch|speed|displacement|density|mass|volume|temperature|pressure|torque|force|tension|flow|angle|wrap|width|height)$/i;
/** In these files they are counted in pitches, as their headers say. */
const IN_PITCHES: Readonly<Record<string, readonly string[]>> = { 'core/src/drives/chainGeometry.ts': ['centre'] };

test('no number is called by a dimension alone, nor inside a file', () => {
  const numbers = FILES.flatMap((place) => numbersIn(place, codeOf(place)));
  const wrong = numbers.filter(
    ({ file, name }) =>
      DIMENSIONS.test(name) && !BARE_WORDS.has(name) && !IN_PITCHES[file]?.includes(name) && !DRAWING[file]?.includes(name),
  );
  expect(named(wrong)).toEqual([]);
});
