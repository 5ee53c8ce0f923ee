import { en } from '../../../core/src/en.ts';
import { FORMAT, type ShopFile, VERSION, writeShopFile } from '../../../core/src/index.ts';
import demo from '../../../tests/examples/demo.ratiowright?url';
import { layoutOf } from './layouts.ts';
import { WRITTEN_BY } from './shopStore.ts';

/** The invented shop that the tests use too: a copy, so nothing done to it is lost for the next start. */
export async function demoShop(): Promise<string> {
  const answer = await fetch(demo);
  if (!answer.ok) throw new Error(en`The invented example could not be read (${answer.status}).`);
  return answer.text();
}

/** One machine, one material and one rack, all still to be filled in. */
export function emptyShop(): string {
  const { shafts, stages, A, B } = layoutOf('a-direct', []);
  const file: ShopFile = {
    format: FORMAT,
    version: VERSION,
    shop: { name: en`My shop` },
    machines: [
      {
        id: 'machine-1',
        name: en`Machine 1`,
        rack: 'rack-1',
        motor: {},
        shafts,
        stages,
        A: { shaft: A, fitted: 'a1', pumps: [{ id: 'a1' }] },
        B: { shaft: B, fitted: 'b1', pumps: [{ id: 'b1' }] },
      },
    ],
    materials: [{ id: 'material-1', name: en`Material 1`, A: {}, B: {} }],
    racks: [{ id: 'rack-1', name: en`Rack`, pieces: [] }],
    changeSheets: [],
    ratioChecks: [],
  };
  return writeShopFile(file, WRITTEN_BY);
}
