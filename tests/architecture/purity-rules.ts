import { lineOf, parse, type SyntaxNode, walk } from './syntax';

/** Names that bring in a clock, the machine, or somewhere to write: what the pure layers get as arguments, if at all. */
const impure = new Set(['Date', 'performance', 'console', 'globalThis', 'eval', 'Function']);
/** Calls whose answer hangs on the machine's locale unless one is named. */
const needsLocale = new Map([
  ['toLocaleString', 1],
  ['toLocaleDateString', 1],
  ['toLocaleTimeString', 1],
  ['toLocaleUpperCase', 1],
  ['toLocaleLowerCase', 1],
  ['localeCompare', 2],
]);

/** What in a file makes its answers hang on anything but its arguments, a sentence each. */
export function impurities(path: string, text: string): string[] {
  const found: string[] = [];
  walk(parse(path, text), (node, parent, key) => {
    const what = impurity(node, parent, key);
    if (what !== null) found.push(`${path}:${lineOf(text, node.start)} ${what}`);
  });
  return found;
}

function impurity(node: SyntaxNode, parent: SyntaxNode | null, key: string): string | null {
  if (node.type === 'CallExpression') return localeOf(node, (node.arguments as unknown[]).length);
  if (node.type === 'NewExpression') return localeOfIntl(node);
  if (node.type !== 'Identifier' || parent === null || isOnlyAName(parent, key)) return null;
  const name = String(node.name);
  if (impure.has(name)) return `uses ${name}`;
  if (name !== 'Math') return null;
  const isPlain = parent.type === 'MemberExpression' && key === 'object' && parent.computed === false;
  if (!isPlain) return 'uses Math otherwise than as Math.name';
  return (parent.property as SyntaxNode).name === 'random' ? 'uses Math.random' : null;
}

/** An identifier that names a property, a key, a label or a type, and reaches for nothing. */
function isOnlyAName(parent: SyntaxNode, key: string): boolean {
  if (key === 'property') return parent.computed === false;
  if (key === 'key') return parent.computed === false;
  return parent.type.startsWith('TS') && key === 'label';
}

function localeOf(call: SyntaxNode, given: number): string | null {
  const callee = call.callee as SyntaxNode;
  if (callee.type !== 'MemberExpression' || callee.computed !== false) return null;
  const name = String((callee.property as SyntaxNode).name);
  if ((callee.object as SyntaxNode).name === 'Intl') return localeOfIntl(call);
  const needed = needsLocale.get(name);
  return needed !== undefined && given < needed ? `${name} without a locale` : null;
}

function localeOfIntl(made: SyntaxNode): string | null {
  const callee = made.callee as SyntaxNode;
  const isIntl = callee.type === 'MemberExpression' && (callee.object as SyntaxNode).name === 'Intl';
  const first = (made.arguments as SyntaxNode[])[0];
  const isNamed = first !== undefined && !(first.type === 'Identifier' && first.name === 'undefined');
  return isIntl && !isNamed ? 'uses Intl without a locale' : null;
}
