import { type ESTree, parseSync, Visitor } from 'vite';
import type { Mutant } from './mutants.ts';

/** What is put around a piece of a text, which stays as it is. */
interface Wrap {
  readonly start: number;
  readonly end: number;
  readonly before: string;
  readonly behind: string;
}

/** Puts all wraps around their pieces; pieces lie within one another or apart. */
function wrapped(source: string, wraps: readonly Wrap[]): string {
  const ordered = wraps.toSorted((one, other) => one.start - other.start || other.end - one.end);
  const open: Wrap[] = [];
  let text = '';
  let done = 0;
  const close = (upTo: number) => {
    for (let last = open.at(-1); last !== undefined && last.end <= upTo; last = open.at(-1)) {
      text += source.slice(done, last.end) + last.behind;
      done = last.end;
      open.pop();
    }
  };
  for (const wrap of ordered) {
    close(wrap.start);
    text += source.slice(done, wrap.start) + wrap.before;
    done = wrap.start;
    open.push(wrap);
  }
  close(source.length);
  return text + source.slice(done);
}

/** A text with mutants built in: each acts while `$mutants.on(its number)` says so. */
export const withMutants = (source: string, mutants: readonly (Mutant & { readonly id: number })[]): string =>
  wrapped(
    source,
    mutants.map(({ id, form, start, end, after }) =>
      form === 'expression'
        ? { start, end, before: `($mutants.on(${id}) ? (${after}) : (`, behind: '))' }
        : { start, end, before: `if (!$mutants.on(${id})) {`, behind: '}' },
    ),
  );

/** A function of a text by where its body stands; what is outside of all of them runs when the module is loaded. */
export interface Region {
  readonly start: number;
  readonly end: number;
  readonly expression: boolean;
}

export function regionsOf(source: string): readonly Region[] {
  const regions: Region[] = [];
  const add = (body: ESTree.Span & { readonly type: string }) => {
    if (body.type !== 'BlockStatement') regions.push({ start: body.start, end: body.end, expression: true });
    else regions.push({ start: body.start + 1, end: body.end - 1, expression: false });
  };
  new Visitor({
    ArrowFunctionExpression: ({ body }) => add(body),
    FunctionDeclaration: ({ body }) => body !== null && add(body),
    FunctionExpression: ({ body }) => body !== null && add(body),
  }).visit(parseSync('source.ts', source).program);
  return regions;
}

/** A text that says when a region is entered: `$mutants.enter(first + its index)`; the number before `first` is the module itself. */
export const withRegions = (source: string, regions: readonly Region[], first: number): string =>
  `$mutants.enter(${first - 1});${wrapped(
    source,
    regions.map(({ start, end, expression }, index) =>
      expression
        ? { start, end, before: `($mutants.enter(${first + index}), `, behind: ')' }
        : { start, end, before: `$mutants.enter(${first + index});`, behind: '' },
    ),
  )}`;

/** The innermost region a piece stands in, by its index; -1 is the module itself. */
export function regionAt(regions: readonly Region[], { start, end }: { readonly start: number; readonly end: number }): number {
  let best = -1;
  for (const [index, region] of regions.entries()) {
    const inner = regions[best];
    const holds = region.start <= start && end <= region.end;
    if (holds && (inner === undefined || region.end - region.start <= inner.end - inner.start)) best = index;
  }
  return best;
}
