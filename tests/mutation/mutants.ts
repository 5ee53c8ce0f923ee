import { type ESTree, parseSync, Visitor } from 'vite';
import { regexMutants } from './regexMutants.ts';

/** One small fault put into a source text: what stands from `start` to `end` reads `after` instead. */
export interface Mutant {
  readonly operator: Operator;
  /** How it is switched on: an expression, the statements within a block, or those of a case. */
  readonly form: 'expression' | 'block' | 'case';
  readonly start: number;
  readonly end: number;
  readonly after: string;
}

export type Operator =
  | 'arithmetic'
  | 'array'
  | 'arrow'
  | 'assignment'
  | 'block'
  | 'boolean'
  | 'call'
  | 'condition'
  | 'equality'
  | 'logical'
  | 'object'
  | 'optional chain'
  | 'regex'
  | 'string'
  | 'unary'
  | 'update';

const ARITHMETIC: ReadonlyMap<string, string> = new Map([
  ['+', '-'],
  ['-', '+'],
  ['*', '/'],
  ['/', '*'],
  ['%', '*'],
]);
const EQUALITY: ReadonlyMap<string, readonly string[]> = new Map([
  ['<', ['<=', '>=']],
  ['<=', ['<', '>']],
  ['>', ['>=', '<=']],
  ['>=', ['>', '<']],
  ['===', ['!==']],
  ['!==', ['===']],
  ['==', ['!=']],
  ['!=', ['==']],
]);
const LOGICAL: ReadonlyMap<string, string> = new Map([
  ['&&', '||'],
  ['||', '&&'],
  ['??', '&&'],
]);
const ASSIGNMENT: ReadonlyMap<string, string> = new Map([
  ['+=', '-='],
  ['-=', '+='],
  ['*=', '/='],
  ['/=', '*='],
  ['%=', '*='],
  ['&&=', '||='],
  ['||=', '&&='],
  ['??=', '&&='],
  ['<<=', '>>='],
  ['>>=', '<<='],
  ['&=', '|='],
  ['|=', '&='],
]);
/** Another call in its place, or none: then what it was called on stands alone. */
const CALLS: ReadonlyMap<string, string | null> = new Map<string, string | null>([
  ['some', 'every'],
  ['every', 'some'],
  ['min', 'max'],
  ['max', 'min'],
  ['startsWith', 'endsWith'],
  ['endsWith', 'startsWith'],
  ['toUpperCase', 'toLowerCase'],
  ['toLowerCase', 'toUpperCase'],
  ['trimStart', 'trimEnd'],
  ['trimEnd', 'trimStart'],
  ['trim', null],
  ['filter', null],
  ['slice', null],
  ['sort', null],
  ['toSorted', null],
  ['reverse', null],
  ['toReversed', null],
  ['charAt', null],
]);

/** Every mutant of a source text, by place: the usual operators of mutation testing over its expressions and blocks, none over its types. */
export function mutantsOf(source: string): readonly Mutant[] {
  const found: Mutant[] = [];
  /** Literals that are no values: types, keys, places of modules. */
  const left = new Set<unknown>();
  /** Sides of `&&` and `||`: the value that makes such a side decide alone is a mutant of the whole already. */
  const sides = new Map<unknown, '&&' | '||'>();
  const at = ({ start, end }: ESTree.Span) => source.slice(start, end);
  const add = (operator: Operator, { start, end }: ESTree.Span, after: string, form: Mutant['form'] = 'expression') => {
    if (!found.some((one) => one.start === start && one.end === end && one.after === after))
      found.push({ operator, form, start, end, after });
  };
  const condition = (test: ESTree.Expression, ...values: readonly ('true' | 'false')[]) => {
    for (const value of values) if (at(test) !== value) add('condition', test, value);
  };
  const truth = (node: ESTree.Expression) => {
    const side = sides.get(node);
    if (side !== '||') condition(node, 'true');
    if (side !== '&&') condition(node, 'false');
  };
  const text = (node: ESTree.Node): boolean =>
    node.type === 'TemplateLiteral' ||
    node.type === 'TaggedTemplateExpression' ||
    (node.type === 'Literal' && typeof node.value === 'string') ||
    (node.type === 'BinaryExpression' && node.operator === '+' && (text(node.left) || text(node.right)));
  const swapped = (node: { readonly left: ESTree.Span; readonly right: ESTree.Span }, operator: string) =>
    `(${at(node.left)}) ${operator} (${at(node.right)})`;

  new Visitor({
    ArrayExpression: (node) => add('array', node, node.elements.length > 0 ? '[]' : "['mutant']"),
    ArrowFunctionExpression(node) {
      if (node.body.type !== 'BlockStatement' && at(node.body) !== 'undefined') add('arrow', node.body, 'undefined');
    },
    AssignmentExpression(node) {
      const other = ASSIGNMENT.get(node.operator);
      if (other !== undefined && !text(node.right)) add('assignment', node, `${at(node.left)} ${other} (${at(node.right)})`);
    },
    BinaryExpression(node) {
      const other = ARITHMETIC.get(node.operator);
      if (other !== undefined && !text(node)) add('arithmetic', node, swapped(node, other));
      const others = EQUALITY.get(node.operator);
      if (others === undefined) return;
      for (const one of others) add('equality', node, swapped(node, one));
      truth(node);
    },
    BlockStatement(node) {
      const inside = { start: node.start + 1, end: node.end - 1 };
      if (node.body.length > 0) add('block', inside, '', 'block');
    },
    CallExpression(node) {
      const { callee } = node;
      if (callee.type !== 'MemberExpression' || callee.computed) return;
      const other = CALLS.get(at(callee.property));
      if (other === undefined) return;
      if (other === null) add('call', node, at(callee.object));
      else add('call', node, source.slice(node.start, callee.property.start) + other + source.slice(callee.property.end, node.end));
    },
    ChainExpression(node) {
      for (const from of optionalDots(node.expression, source))
        add('optional chain', node, source.slice(node.start, from) + unchained(source.slice(from, node.end)));
    },
    ConditionalExpression: (node) => condition(node.test, 'true', 'false'),
    DoWhileStatement: (node) => condition(node.test, 'false'),
    ForStatement(node) {
      if (node.test !== null) condition(node.test, 'false');
    },
    IfStatement: (node) => condition(node.test, 'true', 'false'),
    ImportExpression: (node) => left.add(node.source),
    ImportDeclaration: (node) => left.add(node.source),
    ExportAllDeclaration: (node) => left.add(node.source),
    ExportNamedDeclaration: (node) => left.add(node.source),
    ExpressionStatement(node) {
      if ('directive' in node && node.directive) left.add(node.expression);
    },
    Literal(node) {
      if (left.has(node)) return;
      if (typeof node.value === 'boolean') add('boolean', node, String(!node.value));
      else if (typeof node.value === 'string') add('string', node, node.value === '' ? "'mutant'" : "''");
      else if ('regex' in node)
        for (const pattern of regexMutants(node.regex.pattern)) add('regex', node, `/${pattern}/${node.regex.flags}`);
    },
    LogicalExpression(node) {
      const other = LOGICAL.get(node.operator);
      if (other !== undefined) add('logical', node, swapped(node, other));
      if (node.operator === '??') return;
      for (const side of [node.left, node.right]) sides.set(bare(side), node.operator);
      truth(node);
    },
    ObjectExpression(node) {
      if (node.properties.length > 0) add('object', node, '({})');
    },
    Property(node) {
      if (!node.computed) left.add(node.key);
    },
    PropertyDefinition(node) {
      if (!node.computed) left.add(node.key);
    },
    SwitchCase(node) {
      const [first, last] = [node.consequent[0], node.consequent.at(-1)];
      if (first === undefined || last === undefined || node.consequent.some(({ type }) => type.endsWith('Declaration'))) return;
      add('block', { start: first.start, end: last.end }, '', 'case');
    },
    TaggedTemplateExpression(node) {
      left.add(node.quasi);
      add('string', node, '``');
    },
    TemplateLiteral(node) {
      if (!left.has(node)) add('string', node, '``');
    },
    TSLiteralType: (node) => left.add(node.literal),
    UnaryExpression(node) {
      const inner = at(node.argument);
      if (left.has(node)) left.add(node.argument);
      else if (node.operator === '!') add('boolean', node, inner);
      else if (node.operator === '-') add('unary', node, `+${inner}`);
      else if (node.operator === '+') add('unary', node, `-${inner}`);
      else if (node.operator === '~') add('unary', node, inner);
    },
    UpdateExpression(node) {
      const other = node.operator === '++' ? '--' : '++';
      add('update', node, node.prefix ? other + at(node.argument) : at(node.argument) + other);
    },
    WhileStatement: (node) => condition(node.test, 'false'),
  }).visit(parseSync('source.ts', source).program);
  return found.sort((one, other) => one.start - other.start || other.end - one.end);
}

/** Without the brackets around it. */
const bare = (node: ESTree.Expression): ESTree.Expression => (node.type === 'ParenthesizedExpression' ? bare(node.expression) : node);

/** Where the `?.` of a chain stand. */
function optionalDots(node: ESTree.Node, source: string): readonly number[] {
  if (node.type === 'CallExpression')
    return [...optionalDots(node.callee, source), ...(node.optional ? [source.indexOf('?.', node.callee.end)] : [])];
  if (node.type !== 'MemberExpression') return [];
  return [...optionalDots(node.object, source), ...(node.optional ? [source.indexOf('?.', node.object.end)] : [])];
}

/** `?.name` becomes `.name`, `?.[0]` and `?.(x)` lose both signs. */
const unchained = (rest: string): string => rest.replace(/^\?\.(?=[[(])/, '').replace(/^\?\./, '.');
