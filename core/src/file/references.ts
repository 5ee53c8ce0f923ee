import { driveKind } from '../drives/index.ts';
import type { Place } from '../finding.ts';
import type { MachineRow } from './machine.ts';
import type { Problems } from './problems.ts';
import { shaftTree } from './shaftTree.ts';
import type { ShopFile } from './shopFile.ts';

/** What the schema cannot see: ids that are used twice or point nowhere, sizes a kind does not know, ranges the wrong way round. */
export function references(file: ShopFile, problems: Problems): void {
  for (const rows of ['machines', 'materials', 'racks'] as const) uniqueIds(file[rows], [rows], problems);
  file.machines.forEach((machine, index) => {
    checkMachine(machine, file, ['machines', index], problems);
  });
  file.racks.forEach((rack, r) => {
    uniqueIds(rack.pieces, ['racks', r, 'pieces'], problems);
    rack.pieces.forEach((piece, p) => {
      knownSize(piece.kind, piece.size, ['racks', r, 'pieces', p, 'size'], problems);
    });
  });
}

function uniqueIds(rows: readonly { readonly id: string }[], place: Place, problems: Problems): void {
  const seen = new Set<string>();
  rows.forEach((row, index) => {
    if (seen.has(row.id)) problems.add([...place, index, 'id'], `the id "${row.id}" is used twice`);
    seen.add(row.id);
  });
}

function knownSize(kind: string, size: string, place: Place, problems: Problems): void {
  const found = driveKind(kind);
  if (found.size(size) === null) {
    problems.add(place, `"${size}" is not a ${found.words.size} known here; known are ${found.sizes.join(', ')}`);
  }
}

function checkMachine(machine: MachineRow, file: ShopFile, place: Place, problems: Problems): void {
  uniqueIds(machine.shafts, [...place, 'shafts'], problems);
  uniqueIds(machine.stages, [...place, 'stages'], problems);
  if (machine.rack !== undefined && !file.racks.some((rack) => rack.id === machine.rack)) {
    problems.add([...place, 'rack'], `there is no rack with the id "${machine.rack}"`);
  }
  machine.stages.forEach((stage, index) => {
    knownSize(stage.kind, stage.size, [...place, 'stages', index, 'size'], problems);
  });
  for (const side of ['A', 'B'] as const) {
    uniqueIds(machine[side].pumps, [...place, side, 'pumps'], problems);
    if (!machine[side].pumps.some((pump) => pump.id === machine[side].fitted)) {
      problems.add([...place, side, 'fitted'], `the fitted pump "${machine[side].fitted}" is not among the pumps of side ${side}`);
    }
  }
  const { wheels, purchases } = machine.search ?? {};
  if (wheels === 'any' && machine.search?.teeth === undefined) {
    problems.add([...place, 'search', 'teeth'], 'a search with any wheel needs the range of teeth, from and to');
  }
  if (purchases !== undefined && wheels !== 'rack and purchases') {
    problems.add([...place, 'search', 'purchases'], 'purchases are allowed only where wheels is "rack and purchases"');
  }
  shaftTree(machine, place, problems);
}
