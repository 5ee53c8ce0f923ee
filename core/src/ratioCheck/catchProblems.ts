import { en } from '../en.ts';
import type { CatchRow } from '../file/ratioCheckRow.ts';
import type { Place } from '../finding.ts';
import { SIDES, type SideName } from '../plan.ts';
import { type Fraction, float, whole } from '../ratio.ts';
import type { Catch, CatchRun, CheckTerms } from './model.ts';
import type { CatchTrouble } from './net.ts';

/** Beyond this many times the others, or less than one part in as many, a figure was mistyped. */
const FAR = 10;

interface Around {
  readonly terms: CheckTerms;
  readonly run: CatchRun;
  readonly place: Place;
}

/** What is wrong, or odd, about catches taken together. */
export function catchProblems(
  rows: readonly CatchRow[],
  catches: readonly Catch[],
  { terms, run, place }: Around,
): readonly CatchTrouble[] {
  const counted = catches.flatMap((one, index) => (one.leftOut === null ? [{ ...one, index }] : []));
  if (counted.length === 0) return [blocks([...place, 'catches'], en`No catch counts: write one down, or let one count that is left out.`)];
  const troubles: CatchTrouble[] = [];
  const weighed = counted.filter(({ sides }) => SIDES.every((side) => sides[side].mass_kg.known));
  const measured = counted.filter(({ sides }) => SIDES.every((side) => sides[side].volume_m3.known));
  if (weighed.length < counted.length && measured.length < counted.length) {
    const half = counted.filter((one) => !weighed.includes(one) && !measured.includes(one));
    for (const { index, sides } of half) {
      const empty = SIDES.filter((side) => isEmpty(rows[index]?.[side]));
      const where = [...place, 'catches', index];
      for (const side of empty) troubles.push(blocks([...where, side], en`Catch ${index + 1}, ${side}: nothing is written down.`));
      // a weight that gives no net has its own finding
      if (empty.length === 0 && SIDES.some((side) => sides[side].volume_m3.known))
        troubles.push(blocks(where, en`Catch ${index + 1} has no net weight, or no volume, of both sides; one of the two is needed.`));
    }
    if (half.length === 0)
      troubles.push(
        blocks(
          [...place, 'catches'],
          en`Some catches were weighed and others measured by volume; all that count must be one or the other.`,
        ),
      );
  }
  if (weighed.length === counted.length && !terms.densityBOverA.known)
    troubles.push(
      blocks(
        [...place, 'terms', 'densityBOverA'],
        en`The catches were weighed and the densities of the material are not given, so weights cannot be held against a ratio by volume. Give both densities, or read volumes.`,
      ),
    );
  if (counted.length === 1)
    troubles.push({
      severity: 'notes',
      where: [...place, 'catches'],
      what: en`There is one catch: it has no spread, so nothing can be proved by it. Make at least two, better three.`,
    });
  if (run === null)
    troubles.push({
      severity: 'notes',
      where: [...place, 'run'],
      what: en`Neither turns nor seconds with the dial were noted, so what each pump delivers is not worked out.`,
    });
  return [...troubles, ...mixedUnits(rows, place), ...farOff(counted, run, terms, place), ...unequal(counted, place)];
}

const isEmpty = (row: CatchRow['A'] | undefined): boolean => row === undefined || Object.values(row).every((value) => value === undefined);

/** Different units in one column are allowed and often a slip. */
function mixedUnits(rows: readonly CatchRow[], place: Place): readonly CatchTrouble[] {
  return SIDES.flatMap((side) => {
    const units = new Set(
      rows
        .flatMap((row) => (row.leftOut === undefined ? [row[side].gross, row[side].tare, row[side].net] : []))
        .flatMap((one) => one?.unit ?? []),
    );
    if (units.size < 2) return [];
    const what = en`Side ${side} is written down in ${[...units].join(en` and `)}; each is converted, but look whether all are meant.`;
    return [{ severity: 'warns', where: [...place, 'catches'], what } satisfies CatchTrouble];
  });
}

interface Counted extends Catch {
  readonly index: number;
}

/** Where both sides of the largest catch are this many times those of the smallest, they ran for different times. */
const UNEQUAL = 1.25;

/** The interval takes the ratio of means, so that the length of a run counts as spread of either side. */
function unequal(counted: readonly Counted[], place: Place): readonly CatchTrouble[] {
  const times = SIDES.map((side) => {
    const sizes = counted.flatMap(({ sides }) => {
      const { mass_kg, volume_m3 } = sides[side];
      return mass_kg.known ? [float(mass_kg.value)] : volume_m3.known ? [float(volume_m3.value)] : [];
    });
    return sizes.length === counted.length ? Math.max(...sizes) / Math.min(...sizes) : 1;
  });
  // a typing slip has its own finding
  if (!times.every((one) => one > UNEQUAL && one < FAR)) return [];
  const what = en`The catches are not equally large. Catches of one check should run equally long: the interval counts the difference as spread, so that it comes out far too wide.`;
  return [{ severity: 'warns', where: [...place, 'catches'], what }];
}

/** A decimal sign or a unit in the wrong place shows as ten times the others, or as ten times what the pumps can give. */
function farOff(counted: readonly Counted[], run: CatchRun, terms: CheckTerms, place: Place): readonly CatchTrouble[] {
  return SIDES.flatMap((side) => {
    const readings = counted.flatMap(({ sides, index }) => {
      const { mass_kg } = sides[side];
      return mass_kg.known ? [{ index, mass_kg: mass_kg.value }] : [];
    });
    return readings.flatMap(({ index, mass_kg }): readonly CatchTrouble[] => {
      const usual = expected_kg(side, run, terms) ?? median(readings.filter((one) => one.index !== index).map((one) => one.mass_kg));
      if (usual === null) return [];
      const times = float(mass_kg.div(usual));
      if (times < FAR && times > 1 / FAR) return [];
      const grams = (mass_kg: Fraction) => `${Number(float(mass_kg.mul(whole(1000))).toPrecision(4))}\u00A0g`;
      return [
        {
          // no pump gives ten times its displacement, but a blocked one may give a tenth
          severity: times >= FAR ? 'blocks' : 'warns',
          where: [...place, 'catches', index, side],
          what: en`Catch ${index + 1}, ${side}: ${grams(mass_kg)} is far from the ${grams(usual)} that is to be expected. Look at the decimal sign and the unit; leave the catch out if it was written so.`,
        },
      ];
    });
  });
}

/** What a whole displacement would give. */
function expected_kg(side: SideName, run: CatchRun, terms: CheckTerms): Fraction | null {
  const density = terms.density_kg_per_m3[side];
  if (run === null || !density.known) return null;
  const turns = run.by === 'turns' ? run.motorTurns : run.time_s.mul(run.motor_rev_per_s);
  return turns.mul(terms.pumpTurns[side]).mul(terms.displacement_m3_per_rev[side]).mul(density.value);
}

function median(values: readonly Fraction[]): Fraction | null {
  const sorted = [...values].sort((a, b) => a.compare(b));
  return sorted[Math.floor((sorted.length - 1) / 2)] ?? null;
}

const blocks = (where: Place, what: string): CatchTrouble => ({ severity: 'blocks', where, what });
