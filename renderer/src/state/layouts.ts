import { en } from '../../../core/src/en.ts';
import type { ShopFile } from '../../../core/src/index.ts';

type Machine = ShopFile['machines'][number];
type Shaft = Machine['shafts'][number];
type StageRow = Machine['stages'][number];

export type LayoutId = 'each-from-motor' | 'b-from-a' | 'a-direct' | 'jackshaft' | 'b-through-jackshaft';

/** A ready-made drive: shafts with what turns them, and where the pumps sit. A stage is named for the shaft it turns. */
interface Layout {
  readonly title: string;
  readonly shafts: readonly Shaft[];
  readonly A: string;
  readonly B: string;
}

const shaft = (id: string, name: string, from?: string, stage?: string): Shaft =>
  from === undefined ? { id, name } : { id, name, turnedBy: stage === undefined ? { shaft: from } : { shaft: from, stage } };
const MOTOR = shaft('motor', en`Motor`);

export const LAYOUTS: Readonly<Record<LayoutId, Layout>> = {
  'each-from-motor': {
    title: en`Each pump from the motor`,
    shafts: [MOTOR, shaft('pump-a', en`Pump A`, 'motor', 'sA'), shaft('pump-b', en`Pump B`, 'motor', 'sB')],
    A: 'pump-a',
    B: 'pump-b',
  },
  'b-from-a': {
    title: en`B from A’s shaft`,
    shafts: [MOTOR, shaft('pump-a', en`Pump A`, 'motor', 'sA'), shaft('pump-b', en`Pump B`, 'pump-a', 'sB')],
    A: 'pump-a',
    B: 'pump-b',
  },
  'a-direct': {
    title: en`A direct, B from the motor`,
    shafts: [shaft('motor', en`Motor and pump A`), shaft('pump-b', en`Pump B`, 'motor', 'sB')],
    A: 'motor',
    B: 'pump-b',
  },
  jackshaft: {
    title: en`Both from a jackshaft`,
    shafts: [
      MOTOR,
      shaft('jack', en`Jackshaft`, 'motor', 'sJ'),
      shaft('pump-a', en`Pump A`, 'jack', 'sA'),
      shaft('pump-b', en`Pump B`, 'jack', 'sB'),
    ],
    A: 'pump-a',
    B: 'pump-b',
  },
  'b-through-jackshaft': {
    title: en`B through a jackshaft`,
    shafts: [shaft('motor', en`Motor and pump A`), shaft('jack', en`Jackshaft`, 'motor', 'sJ'), shaft('pump-b', en`Pump B`, 'jack', 'sB')],
    A: 'motor',
    B: 'pump-b',
  },
};

/** Shafts and stages of a layout; stages the present drive already has, by their order, keep their wheels, chain and limits. */
export function layoutOf(
  id: LayoutId,
  present: readonly StageRow[],
): { readonly shafts: Shaft[]; readonly stages: StageRow[]; readonly A: string; readonly B: string } {
  const { shafts, A, B } = LAYOUTS[id];
  const names = shafts.flatMap(({ turnedBy }) => (turnedBy?.stage === undefined ? [] : [turnedBy.stage]));
  const stages = names.map(
    (stage, index): StageRow => ({ ...(present[index] ?? { kind: 'chain', size: '08B', driver: {}, driven: {} }), id: stage, name: stage }),
  );
  return { shafts: structuredClone([...shafts]), stages: structuredClone(stages), A, B };
}
