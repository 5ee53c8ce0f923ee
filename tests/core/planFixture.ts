import { expect } from 'vitest';
import { type Check, findingsOf, type OptionSubject, type PairSubject } from '../../core/src/check.ts';
import type { MachineRow, SlotRow, StageRow } from '../../core/src/file/machine.ts';
import type { PieceRow } from '../../core/src/file/rack.ts';
import { readShopFile } from '../../core/src/file/read.ts';
import { resolve, type Selection } from '../../core/src/file/resolve.ts';
import type { ShopFile } from '../../core/src/file/shopFile.ts';
import { writeShopFile } from '../../core/src/file/write.ts';
import type { Figure, Finding, Place } from '../../core/src/finding.ts';
import type { Say } from '../../core/src/format.ts';
import type { Plan, Pump, SideName, Teeth } from '../../core/src/plan.ts';
import { assignPieces } from '../../core/src/rack.ts';
import { fitOf } from '../../core/src/stageFit.ts';
import { fittedPumps } from '../../core/src/train.ts';

// Invented machines for the tests: the least a file may hold, and what a test adds to it.

export const say: Say = { decimal: '.', system: 'metric' };

export const mm = (value: string) => ({ value, unit: 'mm' });
export const inch = (value: string) => ({ value, unit: 'in' });
export const rpm = (value: string) => ({ value, unit: 'rpm' });
export const pitches = (value: string) => ({ value, unit: 'pitches' });

/** A stage on half-inch chain of which only the teeth are given. */
export function stageRow(driver: number | SlotRow, driven: number | SlotRow, more: Partial<StageRow> = {}): StageRow {
  const slot = (teeth: number | SlotRow): SlotRow => (typeof teeth === 'number' ? { teeth } : teeth);
  return { id: 's1', kind: 'chain', size: '40', driver: slot(driver), driven: slot(driven), ...more };
}

export const pieceRow = (teeth: number, quantity: number, more: Partial<PieceRow> = {}): PieceRow => ({
  id: 'piece',
  kind: 'chain',
  size: '40',
  teeth,
  quantity,
  ...more,
});

/** A pump of so many cc to the turn. */
export const pumpRow = (id: string, displacement_cc: string, more: Partial<MachineRow['A']['pumps'][number]> = {}) => ({
  id,
  displacement: { value: displacement_cc, unit: 'cc/rev' },
  ...more,
});

/** The stages in one line: pump A on the motor, pump B behind the last. */
export function inLine(stages: readonly StageRow[], more: Partial<MachineRow> = {}): MachineRow {
  const rows = stages.map((stage, index) => ({ ...stage, id: `s${index + 1}` }));
  const shafts = rows.map((stage, index) => ({
    id: `shaft-${index + 1}`,
    turnedBy: { shaft: index === 0 ? 'motor' : `shaft-${index}`, stage: stage.id },
  }));
  return {
    id: 'bench',
    name: 'Test bench',
    motor: { speed: rpm('60') },
    shafts: [{ id: 'motor' }, ...shafts],
    stages: rows,
    A: { shaft: 'motor', fitted: 'pump-a', pumps: [pumpRow('pump-a', '10')] },
    B: { shaft: shafts.at(-1)?.id ?? 'motor', fitted: 'pump-b', pumps: [pumpRow('pump-b', '5')] },
    ...more,
  };
}

/** A shop with one machine, one material of 2 : 1 by volume without limits, and one rack. */
export function shopOf(machine: MachineRow, pieces: readonly PieceRow[] = [], more: Partial<ShopFile['materials'][number]> = {}): ShopFile {
  const file: ShopFile = {
    format: 'ratiowright shop file',
    version: 1,
    shop: { name: 'Invented test shop', invented: true },
    machines: [machine],
    materials: [{ id: 'resin', name: 'Test resin', ratio: { basis: 'volume', parts: '2 : 1' }, A: {}, B: {}, ...more }],
    racks: [{ id: 'rack', name: 'Test rack', pieces: pieces.map((piece, index) => ({ ...piece, id: `piece-${index + 1}` })) }],
    changeSheets: [],
    ratioChecks: [],
  };
  // Through its text, so that no test stands on a file that could not be opened.
  const read = readShopFile(writeShopFile(file, 'test'));
  if (!read.ok) throw new Error(read.findings.map(({ where, what }) => `${where.join(' ')}: ${what}`).join('\n'));
  return read.value;
}

export function planOf(file: ShopFile, selection: Selection = {}): Plan {
  const outcome = resolve(file, selection, say);
  if (!outcome.ok) throw new Error(outcome.findings.map(({ what }) => what).join('\n'));
  return outcome.value;
}

/** Sentences keep a number and its unit together with a no-break space, which nobody sees in a test. */
const inPlainSpaces = (finding: Finding): Finding => ({ ...finding, what: finding.what.replaceAll('\u00a0', ' ') });

/** What a pair check says of one stage with these wheels. */
export function judgePair(check: Check<PairSubject>, plan: Plan, teeth: Teeth, index = 0, how = say): readonly Finding[] {
  const stage = plan.stages[index];
  if (stage === undefined) throw new Error(`there is no stage ${index}`);
  return findingsOf(check, { plan, stage, teeth, fit: fitOf(stage, teeth) }, how).map(inPlainSpaces);
}

/** What a check says of a whole option. */
export function judgeOption(
  check: Check<OptionSubject>,
  plan: Plan,
  teeth: readonly Teeth[],
  pumps: Readonly<Record<SideName, Pump>> = fittedPumps(plan),
): readonly Finding[] {
  return findingsOf(check, { plan, pumps, teeth, assignment: assignPieces(plan, teeth) }, say).map(inPlainSpaces);
}

export const pair = (driver: number, driven: number): Teeth => ({ driver, driven });

/** The only finding; fails the test where there is none or another. */
export function only(findings: readonly Finding[]): Finding {
  expect(findings.map(({ what }) => what)).toHaveLength(1);
  const [finding] = findings;
  if (finding === undefined) throw new Error('no finding');
  return finding;
}

interface Expected {
  readonly severity: Finding['severity'];
  readonly where: Place;
  readonly figure: Figure;
  readonly limit: Figure | null;
  /** Decimal places to which both are held; 4 unless said. */
  readonly places?: number;
  /** What the sentence must name. */
  readonly names: readonly string[];
}

/** Holds a finding to its severity, place, figures and the words of its sentence; the place must be there in the file. */
export function expectFinding(finding: Finding, file: ShopFile, expected: Expected): void {
  const near = (figure: Figure | null) => figure && { unit: figure.unit, value: expect.closeTo(figure.value, expected.places ?? 4) };
  expect(finding).toMatchObject({
    severity: expected.severity,
    where: expected.where,
    figure: near(expected.figure),
    limit: near(expected.limit),
    missing: false,
  });
  for (const word of expected.names) expect(finding.what).toContain(word);
  expect(holds(file, finding.where), `${finding.where.join(' ')} is no place in the file`).toBe(true);
}

/** Holds a finding to saying that a check was not made, at a field that is still to be filled in. */
export function expectNotMade(finding: Finding, file: ShopFile, where: Place): void {
  expect(finding).toMatchObject({ severity: 'notes', where, figure: null, missing: true });
  expect(finding.what).toMatch(/not (given|noted|checked)|no bore is noted/);
  expect(holds(file, where.slice(0, -1))).toBe(true);
  expect(isField(file, where), `${where.join(' ')} is no field of the file`).toBe(true);
}

/** What stands at a step of a path; undefined where nothing does. */
const inside = (at: unknown, step: string | number): unknown =>
  typeof at === 'object' && at !== null ? Object.entries(at).find(([key]) => key === String(step))?.[1] : undefined;

const holds = (file: unknown, where: Place): boolean => where.reduce(inside, file) !== undefined;

/** Whether the schema knows a field: it then refuses `null` there, where it only warns of a key it does not know. */
function isField(file: ShopFile, where: Place): boolean {
  const json: unknown = JSON.parse(writeShopFile(file, 'test'));
  const parent = where.slice(0, -1).reduce(inside, json);
  if (typeof parent !== 'object' || parent === null) return false;
  Object.assign(parent, { [String(where.at(-1))]: null });
  const read = readShopFile(JSON.stringify(json));
  return !read.ok && read.findings.some((finding) => finding.where.join(' ').startsWith(where.join(' ')));
}
