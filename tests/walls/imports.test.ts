import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { codeOf, filesUnder, withoutStrings } from './sources.ts';

/** What core/src is made of, leaves first: each file at its top and each folder. Imports go to the left only, within a folder anywhere. */
const ORDER: readonly (readonly string[])[] = [
  ['calendar', 'en', 'given', 'pastedCells', 'ratio', 'visible'],
  ['days'],
  ['reading', 'search'],
  ['price', 'ratioWriting', 'reachWindow', 'units'],
  ['format', 'tables', 'working'],
  ['blendFormula', 'drives', 'entry', 'finding', 'mixRatio', 'shown', 'sums'],
  ['chemistry', 'limits', 'liquid', 'range', 'teethRange', 'twoFigures', 'workingText'],
  ['figuresJson', 'plan'],
  [
    'load',
    'mixture',
    'pumpGear',
    'rack',
    'sheetForms',
    'stageFit',
    'tankExpansion',
    'teethWords',
    'train',
    'travel',
    'triedRatio',
    'tryTeeth',
  ],
  ['batch', 'check', 'dial', 'expectedCatch', 'madeRatio', 'pulses', 'work'],
  ['flow'],
  ['slip', 'tanks'],
  ['contributions'],
  ['budget'],
  ['checks', 'drift'],
  ['anyTeeth', 'option'],
  ['band', 'choices', 'facts', 'file', 'layOut'],
  ['ratioCheck'],
  ['ratioCheckWords'],
  ['checkPageWords', 'logMarks', 'mountedWords', 'quick', 'sheet', 'trendScale', 'trendSentence'],
  ['beforeWeighing', 'trendMarks', 'trendTable'],
  ['trendChart'],
  ['checkCharts'],
  [
    'answer',
    'buying',
    'driftCurve',
    'machineSummary',
    'measuredDeliveries',
    'nearRatios',
    'rackLine',
    'reach',
    'reachRule',
    'searchSummary',
    'stageFacts',
  ],
  ['firstOption', 'json', 'knownOnRule', 'windowPlans', 'rackChange', 'reachWords', 'standing'],
  ['jsonParts'],
  ['buyWords', 'buyingJson', 'nearRatiosJson', 'ratioCheckResultJson', 'reachJson'],
  ['ratioCheckJson'],
  ['index', 'optionList', 'productText', 'windowBuyingJson', 'windowWords'],
  ['optionWords'],
  ['comparison', 'materialReach'],
  ['bestOptions', 'quote'],
  ['bestOptionsCsv', 'help'],
];

/** Each library behind one door. */
const LIBRARIES: readonly (readonly [library: string, door: RegExp])[] = [
  ['fraction.js', /^core\/src\/ratio\.ts$/],
  ['valibot', /^core\/src\/file\//],
  ['papaparse', /^core\/src\/file\/csv\.ts$/],
  ['@stdlib/stats-base-dists-t-quantile', /^core\/src\/ratioCheck\/student\.ts$/],
];

/** Who may import whom besides itself: places of the project, and packages. */
const ROOMS: readonly {
  readonly room: string;
  readonly places: readonly string[];
  readonly typesOnly: readonly string[];
  readonly packages: readonly RegExp[];
}[] = [
  { room: 'core/src', places: [], typesOnly: [], packages: LIBRARIES.map(([library]) => new RegExp(`^${library}($|/)`)) },
  { room: 'core/words', places: ['core/src/en.ts'], typesOnly: [], packages: [] },
  { room: 'core/cli', places: ['core/src'], typesOnly: [], packages: [/^node:/] },
  // The example is the shop file that the app offers to open.
  {
    room: 'renderer/src',
    places: ['core/src', 'core/words', 'tests/examples'],
    typesOnly: ['electron/src/contract.ts'],
    packages: [/^solid-js($|\/)/, /^@fontsource\//],
  },
  {
    room: 'electron/src',
    places: ['core/src/en.ts', 'core/src/file/envelope.ts', 'core/words'],
    typesOnly: [],
    packages: [/^node:/, /^electron$/],
  },
];

interface Import {
  readonly file: string;
  /** A path from the root, or the name of a package. */
  readonly target: string;
  readonly own: boolean;
  readonly typeOnly: boolean;
}

const STATEMENT =
  /\b(?:import|export)\s+(type\s+)?(?:[\w*{][^'";]*?\sfrom\s+)?'([^']+)'|\bimport\(\s*'([^']+)'|new URL\(\s*'([^']+)',\s*import\.meta\.url/g;

function importsOf(file: string): readonly Import[] {
  return [...codeOf(file).matchAll(STATEMENT)].map(([, type, named, called, located]) => {
    const written = (named ?? called ?? located ?? '').replace(/\?.*$/, '');
    const own = written.startsWith('.');
    const target = own ? path.posix.join(path.posix.dirname(file), written) : written;
    return { file, target, own, typeOnly: type !== undefined };
  });
}

const sources = (folder: string) => filesUnder(folder).filter((place) => /\.tsx?$/.test(place) && !place.endsWith('.d.ts'));
const CORE = sources('core/src');
const unitOf = (place: string): string => place.replace('core/src/', '').replace(/\/.*|\.ts$/, '');
const placeInOrder = (unit: string): number => ORDER.findIndex((layer) => layer.includes(unit));

test('imports are seen in all their forms [the definition of the language]', () => {
  expect(importsOf('core/src/ratio.ts').map(({ target }) => target)).toEqual(['fraction.js']);
  expect(importsOf('core/src/checks/index.ts')).toContainEqual({
    file: 'core/src/checks/index.ts',
    target: 'core/src/check.ts',
    own: true,
    typeOnly: true,
  });
  expect(CORE.flatMap(importsOf).length).toBeGreaterThan(200);
});

describe.each(ROOMS)('$room', ({ room, places, typesOnly, packages }) => {
  const imports = sources(room).flatMap(importsOf);

  test('imports only what it may know', () => {
    const within = (target: string, allowed: readonly string[]) =>
      allowed.some((place) => target === place || target.startsWith(`${place}/`));
    const wrong = imports.filter(({ target, own, typeOnly }) =>
      own ? !within(target, [room, ...places]) && !(typeOnly && within(target, typesOnly)) : !packages.some((name) => name.test(target)),
    );
    expect(imports.length).toBeGreaterThan(0);
    expect(wrong).toEqual([]);
  });
});

describe('inside core/src', () => {
  const imports = CORE.flatMap(importsOf).filter(({ own }) => own);

  test('every file and folder has its place in the order, and no place is empty', () => {
    expect([...new Set(CORE.map(unitOf))].filter((unit) => placeInOrder(unit) < 0)).toEqual([]);
    expect(ORDER.flat().filter((unit) => !CORE.some((place) => unitOf(place) === unit))).toEqual([]);
  });
  test('imports go to the left only', () => {
    const between = imports.filter(({ file, target }) => unitOf(file) !== unitOf(target));
    expect(between.filter(({ file, target }) => placeInOrder(unitOf(target)) >= placeInOrder(unitOf(file)))).toEqual([]);
  });
  test('no import leads back to where it came from', () => {
    const after = new Map(CORE.map((place) => [place, imports.filter(({ file }) => file === place).map(({ target }) => target)]));
    const settled = new Set<string>();
    const rings: string[] = [];
    const follow = (place: string, way: readonly string[]): void => {
      if (way.includes(place)) rings.push([...way, place].join(' → '));
      if (settled.has(place) || way.includes(place)) return;
      for (const next of after.get(place) ?? []) follow(next, [...way, place]);
      settled.add(place);
    };
    for (const place of CORE) follow(place, []);
    expect(rings).toEqual([]);
  });
  test.each(LIBRARIES)('%s stands behind one door', (library, door) => {
    const users = CORE.filter((place) => importsOf(place).some(({ target }) => target === library || target.startsWith(`${library}/`)));
    expect(users.length).toBeGreaterThan(0);
    expect(users.filter((place) => !door.test(place))).toEqual([]);
  });
  test('only drives tells one kind of drive from another', () => {
    const kinds = CORE.filter((place) => !place.startsWith('core/src/drives/') && /\.kind === 'chain'|case 'chain'/.test(codeOf(place)));
    expect(kinds).toEqual([]);
  });
  test('no clock, no chance, no locale', () => {
    const LIVE =
      /\bDate\b|\bMath\.random\b|\bIntl\b|\blocaleCompare\b|\btoLocale\w*|\bperformance\b|\bcrypto\b|\bsetTimeout\b|\bsetInterval\b/;
    expect(LIVE.test(withoutStrings('const now = new Date();'))).toBe(true);
    expect(CORE.filter((place) => LIVE.test(withoutStrings(codeOf(place))))).toEqual([]);
  });
});
