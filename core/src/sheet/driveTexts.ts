import { en } from '../en.ts';
import { lengthText, type Say } from '../format.ts';
import { clip } from '../visible.ts';
import type { DrawnStage } from './driveDrawing.ts';
import { type Layout, TEXT_LINE, WIDTH } from './driveLayout.ts';
import { lengthNumber } from './paperText.ts';
import { type Label, spread } from './spread.ts';
import { line, type Placing, plain, TEXT_SIZE, text } from './svgShapes.ts';
import { textWidth_em } from './textWidth.ts';

/** Names of stages within a drawing are cut beyond this. */
const NAME_LENGTH = 10;

/** Texts side by side, pushed apart where they would meet, and made smaller where the row is too narrow for all. */
function besideEachOther(
  widths_em: readonly number[],
  at: readonly number[],
): { readonly size: number; readonly middles: readonly number[] } {
  const total_em = widths_em.reduce((sum, width) => sum + width + 1, 0);
  const size = Math.min(TEXT_SIZE, WIDTH / total_em);
  const labels = widths_em.map((width, index): Label => ({ at: at[index] ?? 0, width: (width + 1) * size }));
  return { size, middles: spread(labels, 0, WIDTH) };
}

const shortStage = ({ name }: DrawnStage): string => clip(name, NAME_LENGTH);
const midway = ({ ends: [driver, driven] }: DrawnStage, { x, units_per_m }: Placing): number =>
  x + ((driver.wheel.centre.x_m + driven.wheel.centre.x_m) / 2) * units_per_m;

export function names(stages: readonly DrawnStage[], layout: Layout): readonly string[] {
  const words = stages.map((stage) => (stage.train === 'shared' ? shortStage(stage) : `${stage.train}: ${shortStage(stage)}`));
  const { size, middles } = besideEachOther(
    words.map(textWidth_em),
    stages.map((stage) => midway(stage, layout.placing)),
  );
  return words.map((word, index) => text(plain(word), middles[index] ?? 0, layout.names, size, 'middle'));
}

/** The teeth of every shaft, one line for each wheel on it. */
export function teeth({ shafts, teeth: y }: Layout): readonly string[] {
  const lines = shafts.map(({ wheels }) =>
    wheels.map(({ stage, wheel, off }) => [
      ...(wheels.length > 1 ? plain(`${shortStage(stage)} `) : []),
      { words: en`${wheel.teeth} T`, bold: wheel.state === 'new' },
      ...(off === null ? [] : plain(` ${en`was ${off.teeth}`}`)),
    ]),
  );
  const { size, middles } = besideEachOther(
    lines.map((shaft) => Math.max(...shaft.map((pieces) => textWidth_em(pieces.map(({ words }) => words).join(''))))),
    shafts.map(({ x }) => x),
  );
  return lines.flatMap((shaft, index) =>
    shaft.map((pieces, below) => text(pieces, middles[index] ?? 0, y + below * TEXT_LINE, size, 'middle')),
  );
}

/** Centre distances as dimension lines, each with what it was beneath. */
export function dimensions(stages: readonly DrawnStage[], { placing, dimensions: y }: Layout, say: Say): readonly string[] {
  const texts = stages.map((stage) => dimensionText(stage, say));
  const { size, middles } = besideEachOther(
    texts.map((lines) => Math.max(...lines.map(textWidth_em))),
    stages.map((stage) => midway(stage, placing)),
  );
  const lines = stages.flatMap(({ ends }) => {
    const [a, b] = ends.map(({ wheel }) => placing.x + wheel.centre.x_m * placing.units_per_m);
    return a === undefined || b === undefined ? [] : [line(a, y, b, y), line(a, y - 4, a, y + 4), line(b, y - 4, b, y + 4)];
  });
  return [
    ...lines,
    ...texts.flatMap((words, index) =>
      words.map((word, below) => text(plain(word), middles[index] ?? 0, y + TEXT_LINE + below * TEXT_LINE, size, 'middle')),
    ),
  ];
}

function dimensionText({ centre_m, oldCentre_m }: DrawnStage, say: Say): readonly string[] {
  if (centre_m === null) return [en`centre`, en`not given`];
  return [lengthText(centre_m, say), ...(oldCentre_m === null ? [] : [en`was ${lengthNumber(oldCentre_m, say)}`])];
}
