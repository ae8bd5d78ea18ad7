import { type Expression, parseExpression } from './expression-tree';

/** How strongly each form binds; a weaker one inside a stronger one takes parentheses. */
const strength = { '+': 1, '-': 1, '*': 2, '/': 2, minus: 3, '^': 4, whole: 5 } as const;

const signs: Readonly<Record<string, string>> = { '+': ' + ', '-': ' − ', '*': ' × ', '/': ' ÷ ' };
const brackets: Readonly<Record<string, readonly [string, string]>> = {
  floor: ['⌊ ', ' ⌋'],
  ceil: ['⌈ ', ' ⌉'],
  abs: ['| ', ' |'],
  sqrt: ['√(', ')'],
};
const raised: Readonly<Record<string, string>> = { '2': '²', '3': '³', '4': '⁴' };

function strengthOf(tree: Expression): number {
  if (tree.kind === 'pair') return strength[tree.sign];
  return tree.kind === 'minus' ? strength.minus : strength.whole;
}

interface Writing {
  readonly write: (tree: Expression) => string;
  readonly value: (tree: Expression) => Expression;
}

function inside(tree: Expression, least: number, writing: Writing): string {
  const shown = writing.value(tree);
  const text = writing.write(shown);
  return strengthOf(shown) < least ? `(${text})` : text;
}

function writePair(tree: Extract<Expression, { kind: 'pair' }>, writing: Writing): string {
  const { sign, left, right } = tree;
  const own = strength[sign];
  if (sign === '^') {
    const power = writing.write(writing.value(right));
    return `${inside(left, own + 1, writing)}${raised[power] ?? `^${inside(right, own, writing)}`}`;
  }
  // The right side of - and ÷ keeps parentheses of its own strength: 8 ÷ (4 ÷ 2).
  const rightLeast = sign === '-' || sign === '/' ? own + 1 : own;
  return `${inside(left, own, writing)}${signs[sign]}${inside(right, rightLeast, writing)}`;
}

function writeTree(tree: Expression, writing: Writing, number: (value: number) => string): string {
  switch (tree.kind) {
    case 'number':
      return number(tree.value);
    case 'name':
      return tree.name === 'pi' ? 'π' : tree.name;
    case 'minus':
      return `−${inside(tree.of, strength.minus, writing)}`;
    case 'pair':
      return writePair(tree, writing);
    case 'call': {
      const inner = tree.of.map((one) => writing.write(writing.value(one))).join(', ');
      const pair = brackets[tree.name];
      return pair ? `${pair[0]}${inner}${pair[1]}` : `${tree.name}(${inner})`;
    }
  }
}

function writeWith(tree: Expression, value: Writing['value'], number: (value: number) => string): string {
  const writing: Writing = { value, write: (one) => writeTree(one, writing, number) };
  return writing.write(value(tree));
}

export interface PrettyExpression {
  /** With the names of its quantities; null where it has none and says the same as `numbers`. */
  readonly names: string | null;
  /** With their numbers in place. */
  readonly numbers: string;
}

/**
 * An expression as a reader of mathematics writes it, once with names and once with the numbers in place. `number` writes a
 * number. An expression that is not arithmetic stays as it stands.
 */
export function prettifyExpression(
  expression: string,
  numbers: Readonly<Record<string, number>>,
  number: (value: number) => string,
): PrettyExpression {
  const tree = parseExpression(expression);
  if (!tree) return { names: null, numbers: expression };
  let named = false;
  const withNumber = (one: Expression): Expression => {
    if (one.kind !== 'name' || !Object.hasOwn(numbers, one.name)) return one;
    named = true;
    const value = numbers[one.name]!;
    return value < 0 ? { kind: 'minus', of: { kind: 'number', value: -value } } : { kind: 'number', value };
  };
  const inNumbers = writeWith(tree, withNumber, number);
  return { names: named ? writeWith(tree, (one) => one, number) : null, numbers: inNumbers };
}
