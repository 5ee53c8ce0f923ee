import { decodePDFRawStream, PDFDocument, PDFRawStream } from 'pdf-lib';

type Matrix = readonly [number, number, number, number, number, number];
type Point = readonly [number, number];

const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0];

/** First `inner`, then `outer`, as `cm` asks for [PDF reference, transformation matrices]. */
const product = ([a, b, c, d, e, f]: Matrix, [A, B, C, D, E, F]: Matrix): Matrix => [
  a * A + b * C,
  a * B + b * D,
  c * A + d * C,
  c * B + d * D,
  e * A + f * C + E,
  e * B + f * D + F,
];

/** Lengths in points of all straight lines that the first page draws; curves, rectangles and texts are passed over. */
export async function lineLengths_pt(pdf: Uint8Array): Promise<readonly number[]> {
  const contents = (await PDFDocument.load(pdf)).getPage(0).node.Contents();
  if (!(contents instanceof PDFRawStream)) throw new Error('the page has no content stream of its own');
  const lengths: number[] = [];
  const saved: Matrix[] = [];
  let matrix = IDENTITY;
  let at: Point = [0, 0];
  let operands: number[] = [];
  const placed = ([x, y]: Point): Point => [x * matrix[0] + y * matrix[2] + matrix[4], x * matrix[1] + y * matrix[3] + matrix[5]];
  for (const word of Buffer.from(decodePDFRawStream(contents).decode()).toString('latin1').split(/\s+/)) {
    if (/^[-+.\d]+$/.test(word)) {
      operands.push(Number(word));
      continue;
    }
    const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = operands;
    operands = [];
    if (word === 'q') saved.push(matrix);
    if (word === 'Q') matrix = saved.pop() ?? IDENTITY;
    if (word === 'cm') matrix = product([a, b, c, d, e, f], matrix);
    if (word === 'm') at = placed([a, b]);
    if (word === 'l') {
      const to = placed([a, b]);
      lengths.push(Math.hypot(to[0] - at[0], to[1] - at[1]));
      at = to;
    }
  }
  return lengths;
}
