import { createMemo, createSignal } from 'solid-js';
import { type LimitDefinition, type MaterialList, readMaterials } from '../../../../core/src/file/materialCsv/index.ts';
import { useApp } from '../../state/app.ts';

/** What was pasted stays while other pages are looked at. */
const [text, setText] = createSignal('');
const [limitsMean, setLimitsMean] = createSignal<LimitDefinition>('% of B per A');

/** A list of materials on its way into the shop file. */
export interface PastedList {
  readonly text: () => string;
  readonly setText: (text: string) => void;
  /** What limits without a definition of their own mean. */
  readonly limitsMean: () => LimitDefinition;
  readonly setLimitsMean: (definition: LimitDefinition) => void;
  readonly list: () => MaterialList;
  /** Puts what could be read into the file, as one undo step; the rest stays. Tells how many went. */
  readonly add: () => number;
}

export function createPastedList(): PastedList {
  const app = useApp();
  const list = createMemo(() => {
    const taken = app.shop.file?.materials.map(({ id }) => ({ id })) ?? [];
    return readMaterials(text(), { say: app.say(), limitsMean: limitsMean(), taken });
  });
  return {
    text,
    setText,
    limitsMean,
    setLimitsMean,
    list,
    add() {
      const read = list();
      if (read.materials.length === 0) return 0;
      const first = app.shop.file?.materials.length ?? 0;
      app.shop.pause();
      app.shop.edit('materials.list', (file) => {
        file.materials.push(...read.materials.map(({ material }) => material));
      });
      app.shop.pause();
      app.pickMaterial(first);
      setText(read.left);
      return read.materials.length;
    },
  };
}
