import { readFileSync } from 'node:fs';
import { readShopFile } from '../../../core/src/file/read.ts';
import { resolve, type Selection } from '../../../core/src/file/resolve.ts';
import type { ShopFile } from '../../../core/src/file/shopFile.ts';
import { writeShopFile } from '../../../core/src/file/write.ts';
import type { Say } from '../../../core/src/format.ts';
import { type PlannedOption, planOption } from '../../../core/src/option.ts';
import type { Plan, Teeth } from '../../../core/src/plan.ts';
import { type ChangeSheet, changeSheet } from '../../../core/src/sheet/changeSheet.ts';
import { type DriveDrawing, driveDrawing } from '../../../core/src/sheet/driveDrawing.ts';
import { fittedPumps, fittedTeeth } from '../../../core/src/train.ts';

// Sheets for the invented demo shop, laid out for chosen teeth: no search stands behind them.

export const metric: Say = { decimal: '.', system: 'metric' };
export const inch: Say = { decimal: ',', system: 'inch' };

export interface Made {
  readonly plan: Plan;
  readonly option: PlannedOption;
  readonly fitted: PlannedOption;
  readonly sheet: ChangeSheet;
  readonly drawing: DriveDrawing;
}

interface Wanted {
  readonly selection: Selection;
  readonly teeth?: readonly Teeth[];
  readonly pumps?: Readonly<Record<'A' | 'B', string>>;
  readonly say?: Say;
  readonly number?: string;
  readonly change?: (file: ShopFile) => void;
}

export const pair = (driver: number, driven: number): Teeth => ({ driver, driven });

/** The demo shop, changed as a test asks, read again so that it stays a file that opens. */
export function demoFile(change: (file: ShopFile) => void = () => undefined): ShopFile {
  const first = opened(readFileSync(new URL('../../examples/demo.ratiowright', import.meta.url), 'utf8'));
  change(first);
  return opened(writeShopFile(first, 'test'));
}

function opened(text: string): ShopFile {
  const read = readShopFile(text);
  if (!read.ok) throw new Error(read.findings.map(({ where, what }) => `${where.join(' ')}: ${what}`).join('\n'));
  return read.value;
}

export function demoPlan({ selection, say = metric, change }: Wanted): Plan {
  const resolved = resolve(demoFile(change), selection, say);
  if (!resolved.ok) throw new Error(resolved.findings.map(({ what }) => what).join('\n'));
  return resolved.value;
}

/** The change to these teeth, or what is fitted where none are named. */
export function made(wanted: Wanted): Made {
  const { say = metric, number = '0147' } = wanted;
  const plan = demoPlan(wanted);
  const pumpNamed = (side: 'A' | 'B') => plan.sides[side].pumps.find(({ id }) => id === wanted.pumps?.[side]) ?? fittedPumps(plan)[side];
  const fitted = planOption(plan, fittedPumps(plan), fittedTeeth(plan), say);
  const option = planOption(plan, { A: pumpNamed('A'), B: pumpNamed('B') }, wanted.teeth ?? fittedTeeth(plan), say);
  const sheet = changeSheet(plan, option, fitted, { number, date: '24 Nov 2026', file: 'demo.ratiowright', say });
  return { plan, option, fitted, sheet, drawing: driveDrawing(plan, option, fitted) };
}

export const E12_ON_BENCH_1: Wanted = { selection: { machine: 'bench-1', material: 'e12' }, teeth: [pair(23, 25)] };
export const U40_ON_BENCH_2: Wanted = { selection: { machine: 'bench-2', material: 'u40' }, teeth: [pair(22, 32), pair(26, 17)] };

/** A bench by its id. */
export function bench(file: ShopFile, id: string): ShopFile['machines'][number] {
  const found = file.machines.find((machine) => machine.id === id);
  if (found === undefined) throw new Error(`the demo shop has no ${id}`);
  return found;
}

/** Bench 2 with a third stage like its second, behind a second jackshaft. */
export function thirdStage(file: ShopFile): void {
  const machine = bench(file, 'bench-2');
  const second = machine.stages[1];
  if (second === undefined) throw new Error('bench 2 has two stages');
  machine.stages.push({ ...structuredClone(second), id: 's3', name: 's3' });
  machine.shafts = [
    { id: 'motor' },
    { id: 'j1', turnedBy: { shaft: 'motor', stage: 's1' } },
    { id: 'j2', turnedBy: { shaft: 'j1', stage: 's2' } },
    { id: 'last', turnedBy: { shaft: 'j2', stage: 's3' } },
  ];
  machine.B.shaft = 'last';
  for (const rack of file.racks) for (const piece of rack.pieces) piece.quantity = 3;
}
