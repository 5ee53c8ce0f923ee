const CLASSES: Readonly<Record<string, string>> = { d: 'D', D: 'd', s: 'S', S: 's', w: 'W', W: 'w', p: 'P', P: 'p' };

/**
 * The patterns that differ from a regular expression's in one sign: without an anchor, without a quantifier, with a class that
 * takes what it refused, with a look around that wants what it forbade.
 */
export function regexMutants(pattern: string): readonly string[] {
  const found: string[] = [];
  const put = (from: number, to: number, other: string) => found.push(pattern.slice(0, from) + other + pattern.slice(to));
  let inClass = false;
  for (let index = 0; index < pattern.length; index++) {
    const sign = pattern[index] ?? '';
    if (sign === '\\') {
      const other = CLASSES[pattern[index + 1] ?? ''];
      if (other !== undefined) put(index, index + 2, `\\${other}`);
      index += 1;
    } else if (inClass) inClass = sign !== ']';
    else if (sign === '[') {
      const negated = pattern[index + 1] === '^';
      put(index, index + (negated ? 2 : 1), negated ? '[' : '[^');
      inClass = true;
    } else if (sign === '^' || sign === '$') put(index, index + 1, '');
    else if (sign === '(' && pattern[index + 1] === '?') {
      const around = /^\(\?(<?)([=!])/.exec(pattern.slice(index));
      if (around !== null) put(index, index + around[0].length, `(?${around[1]}${around[2] === '=' ? '!' : '='}`);
      index += pattern.slice(index).search(/[:=!>]/);
    } else {
      const quantifier = /^(?:[*+?]|\{\d+(?:,\d*)?\})\??/.exec(pattern.slice(index))?.[0];
      if (quantifier === undefined) continue;
      put(index, index + quantifier.length, '');
      index += quantifier.length - 1;
    }
  }
  return found;
}
