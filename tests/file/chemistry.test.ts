import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chemistryNumberTrouble, ingredientTrouble } from '../../core/src/file/chemistryRow.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { resolve } from '../../core/src/file/resolve.ts';
import type { Mix } from '../../core/src/plan.ts';
import { exactText, float, ONE } from '../../core/src/ratio.ts';
import { isPlace, lines, opened, say, smallest } from './shop.ts';

type Json = Readonly<Record<string, unknown>>;

const gcc = (value: string) => ({ density: { value: { value, unit: 'g/cm3' } } });
const parts = { A: gcc('1.0'), B: gcc('1.2') };
const polyol = (more: Json = {}) => ({ id: 'polyol', by: 'OH number', value: '165', ...more });
const isocyanate = (more: Json = {}) => ({ id: 'iso', by: '% NCO', value: '31.0', ...more });
const tank = (...ingredients: readonly Json[]) => ({ ingredients });
const urethane = (more: Json = {}): Json => ({
  system: 'urethane',
  isocyanateIn: 'B',
  index: '105',
  A: tank(polyol()),
  B: tank(isocyanate()),
  ...more,
});
const epoxy = (more: Json = {}): Json => ({
  system: 'epoxy',
  resinIn: 'A',
  index: '100',
  A: tank({ id: 'resin', by: 'EEW', value: '190' }),
  B: tank({ id: 'amine', by: 'AHEW', value: '43' }),
  ...more,
});

function mixOf(material: Json): Mix {
  const outcome = resolve(opened(JSON.stringify(smallest({ ...parts, ...material }))), {}, say);
  if (!outcome.ok) throw new Error(lines(outcome.findings).join('\n'));
  return outcome.value.mix;
}

/** What stands against a plan; every finding points at a place of the file. */
function refused(material: Json): readonly string[] {
  const json = smallest({ ...parts, ...material });
  const outcome = resolve(opened(JSON.stringify(json)), {}, say);
  expect(outcome.ok).toBe(false);
  for (const { where } of outcome.findings) expect(isPlace(json, where), where.join(' ')).toBe(true);
  return lines(outcome.findings).map((line) => line.replace('materials 0 chemistry ', ''));
}

/** What stands against opening the file. */
function unread(chemistry: Json): readonly string[] {
  const read = readShopFile(JSON.stringify(smallest({ ...parts, chemistry })));
  expect(read.ok).toBe(false);
  return lines(read.findings).map((line) => line.replace('materials 0 chemistry ', ''));
}

describe('a ratio from chemistry', () => {
  test('by weight, written in short, with the densities carried to volumes: 41.853 parts [definition]', () => {
    const mix = mixOf({ chemistry: urethane() });
    expect(mix.sheet.basis).toBe('weight');
    expect(float(mix.sheet.partsB)).toBeCloseTo((105 * 4201.7) / 31 / (56105.6 / 165), 10);
    expect(exactText(mix.wantedBPerA)).toBe(exactText(mix.sheet.partsB.div(100).div('1.2')));
    expect(mix.sheet.written).toBe('31.0 % NCO on OH 165, index 105');
    expect(mixOf({ chemistry: epoxy() }).sheet.written).toBe('AHEW 43 on EEW 190, 100 % of stoichiometry');
    expect(
      mixOf({ chemistry: urethane({ A: tank(polyol({ parts: '90' }), { id: 'water', parts: '1', by: 'water' }) }) }).sheet.written,
    ).toBe('31.0 % NCO on blend of 2 in A, index 105');
  });
  test('an inert ingredient dilutes its side: half filler takes half as much [arithmetic]', () => {
    const filled = tank(polyol({ parts: '50' }), { id: 'chalk', name: 'Chalk', parts: '50', by: 'inert' });
    const neat = mixOf({ chemistry: urethane() });
    expect(exactText(mixOf({ chemistry: urethane({ A: filled }) }).wantedBPerA)).toBe(exactText(neat.wantedBPerA.div(2)));
  });
  test('parts of what is alone in its tank do not matter', () => {
    const [with7, without] = [polyol({ parts: '7' }), polyol()].map((one) => mixOf({ chemistry: urethane({ A: tank(one) }) }));
    expect(with7?.wantedBPerA).toEqual(without?.wantedBPerA);
  });
});

describe('index points', () => {
  const limits = (low: string, high: string) => ({ definition: 'index points', low, high });
  const ends = ({ limits: found }: Mix) => found && [exactText(found.low), exactText(found.high)];

  test('102 to 108 about 105, isocyanate in B: −3/105 and +3/105; in A the ends change places, 105/108 − 1 and 105/102 − 1 [arithmetic]', () => {
    expect(ends(mixOf({ chemistry: urethane(), limits: limits('102', '108') }))).toEqual(['-1/35', '1/35']);
    const turned = urethane({ isocyanateIn: 'A', A: tank(isocyanate()), B: tank(polyol()) });
    const mix = mixOf({ chemistry: turned, limits: limits('102', '108') });
    expect(ends(mix)).toEqual(['-1/36', '1/34']);
    expect([mix.limitsWritten, mix.sheet.written]).toEqual(['index 102 to 108', '31.0 % NCO on OH 165, index 105']);
  });
  test('an epoxy counts its hardener: 90 to 110 % of stoichiometry', () => {
    const mix = mixOf({ chemistry: epoxy(), limits: limits('90', '110') });
    expect([ends(mix), mix.limitsWritten]).toEqual([['-1/10', '1/10'], '90 to 110 % of stoichiometry']);
    const turned = epoxy({ resinIn: 'B', A: epoxy().B, B: epoxy().A });
    expect(ends(mixOf({ chemistry: turned, limits: limits('90', '110') }))).toEqual(['-1/11', '1/9']);
  });
  test('the target may stand at an end, not beyond it; and no index points without chemistry', () => {
    expect(ends(mixOf({ chemistry: urethane(), limits: limits('105', '105') }))).toEqual(['0/1', '0/1']);
    const at = 'materials 0 limits';
    expect(refused({ chemistry: urethane(), limits: limits('106', '108') })).toEqual([
      `${at} low: The low limit 106 lies above the target, which is 105.`,
    ]);
    expect(refused({ chemistry: urethane(), limits: limits('-3', '3') })).toEqual([
      `${at} high: The high limit 3 lies below the target, which is 105.`,
      `${at} low: The low limit -3 would leave no B: it must be above 0.`,
    ]);
    expect(refused({ ratio: { basis: 'volume', parts: '2:1' }, limits: limits('102', '108') })).toEqual([
      `${at} definition: Limits in index points need a ratio from chemistry: this one is as the sheet prints it.`,
    ]);
  });
  test('the other definitions hold for a ratio from chemistry too', () => {
    expect(ends(mixOf({ chemistry: urethane(), limits: { definition: '% of B per A', low: '-2', high: '2' } }))).toEqual(['-1/50', '1/50']);
  });
});

describe('what is missing or does not fit, each with its place', () => {
  test.each<[string, Json, readonly string[]]>([
    ['nothing yet', {}, ['system: Whether this is an epoxy or a urethane is missing.']],
    [
      'only the system',
      { system: 'urethane' },
      [
        'isocyanateIn: In which tank the isocyanate is, A or B, is missing; it is never assumed.',
        'index: The index is missing: ask who made the formulation.',
      ],
    ],
    [
      'empty tanks',
      { system: 'epoxy', resinIn: 'B', index: '100', A: tank() },
      [
        'A ingredients: Tank A holds the hardener, and nothing in it is said to react: its data sheet says how much.',
        'B: Tank B holds the resin, and nothing in it is said to react: its data sheet says how much.',
      ],
    ],
    [
      'an ingredient that says nothing',
      urethane({ A: tank({ id: 'x' }) }),
      ['A ingredients 0 by: What the data sheet says of A is missing: choose what describes it.'],
    ],
    [
      'parts and figures of a blend',
      urethane({ A: tank(polyol({ name: 'Polyol' }), { id: 'y', parts: '5', by: 'OH number' }) }),
      [
        'A ingredients 0 parts: The parts by weight of Polyol are missing.',
        'A ingredients 1 value: Missing for A, ingredient 2: the OH number, as its data sheet says.',
      ],
    ],
    [
      'the tanks the wrong way round',
      urethane({ isocyanateIn: 'A' }),
      [
        'A ingredients 0 by: Tank A holds the isocyanate, but A is a polyol or water.',
        'B ingredients 0 by: Tank B holds the polyol, but B is an isocyanate.',
      ],
    ],
    [
      'only filler',
      urethane({ A: tank({ id: 'chalk', by: 'inert' }) }),
      ['A ingredients: Tank A holds the polyol, and nothing in it is said to react: its data sheet says how much.'],
    ],
  ])('%s', (_what, chemistry, said) => {
    expect(refused({ chemistry })).toEqual(said);
  });
  test('a name that is blank stands for none', () => {
    const unnamed = tank({ id: 'x', name: ' ', by: 'EEW', value: '190' });
    expect(refused({ chemistry: epoxy({ B: unnamed }) })).toEqual(['B ingredients 0 by: Tank B holds the hardener, but B is a resin.']);
  });
  test('a second ratio beside it', () => {
    expect(refused({ chemistry: urethane(), otherRatio: { basis: 'volume', parts: '2:1' } })).toEqual([
      'materials 0 otherRatio: A second ratio stands beside one that the sheet prints; beside a ratio from chemistry it is to be taken away.',
    ]);
  });
  test('a ratio and chemistry: the problem names both', () => {
    const read = readShopFile(JSON.stringify(smallest({ ...parts, chemistry: urethane(), ratio: { basis: 'volume', parts: '2:1' } })));
    expect(lines(read.findings)).toEqual([
      'materials 0 chemistry: The mix ratio is given once: either as the sheet prints it, "ratio", or from what reacts, "chemistry".',
    ]);
  });
  test.each<[Json, string]>([
    [
      epoxy({ A: tank({ id: 'resin', by: 'EEW', value: '0.51' }) }),
      'A ingredients 0 value: 0.51 looks like an epoxy value in mol/100 g. EEW: 50 to 10000 g/eq.',
    ],
    [
      urethane({ B: tank(isocyanate({ value: '0.231' })) }),
      'B ingredients 0 value: 0.231 looks like a fraction; 0.231 is 23.1 %. % NCO: 1 to 50.',
    ],
    [urethane({ index: '1.05' }), 'index: 1.05 looks like a ratio: the index is in per cent, 20 to 1000.'],
    [urethane({ index: '1001' }), 'index: 1001 is out of range: the index is in per cent, 20 to 1000.'],
    [urethane({ A: tank(polyol({ parts: '0' })) }), 'A ingredients 0 parts: 0 is out of range: the parts by weight must be above 0.'],
    [urethane({ A: tank(polyol({ factor: '0.9' })) }), 'A ingredients 0 factor: An ingredient by "OH number" has no "factor".'],
    [urethane({ A: tank(polyol({ parts: '1' }), polyol({ parts: '1' })) }), 'A ingredients 1 id: The id "polyol" is used twice.'],
    [
      urethane({ resinIn: 'A' }),
      'materials 0 chemistry: Of "resinIn" and "isocyanateIn" only the one of its system is given: a urethane has an isocyanate.',
    ],
  ])('a file that is not opened: %#', (chemistry, said) => {
    expect(unread(chemistry)).toEqual([said]);
  });
  test('the same words in the form, while it is typed', () => {
    expect(ingredientTrouble('EEW', 'value', '0.51')).toBe('0.51 looks like an epoxy value in mol/100 g. EEW: 50 to 10000 g/eq');
    expect([
      ingredientTrouble('EEW', 'value', '190'),
      chemistryNumberTrouble('index', '105'),
      chemistryNumberTrouble('parts', '80'),
    ]).toEqual([null, null, null]);
    expect(chemistryNumberTrouble('index', '1.05')).toBe('1.05 looks like a ratio: the index is in per cent, 20 to 1000.');
  });
});

test('exchanging A and B of a chemistry inverts the wanted ratio', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 20, max: 400 }),
      fc.integer({ min: 10, max: 500 }),
      fc.integer({ min: 10, max: 490 }),
      (index, oh, nco) => {
        const [a, b] = [tank(polyol({ value: String(oh) })), tank(isocyanate({ value: String(nco / 10) }))];
        const there = mixOf({ chemistry: urethane({ index: String(index), A: a, B: b }) });
        const turned = mixOf({ chemistry: urethane({ index: String(index), isocyanateIn: 'A', A: b, B: a }), A: parts.B, B: parts.A });
        expect(exactText(there.wantedBPerA.mul(turned.wantedBPerA))).toBe(exactText(ONE));
      },
    ),
    { numRuns: 40 },
  );
});
