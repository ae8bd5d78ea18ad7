import { posix } from 'node:path';
import { lineOf, parse, type SyntaxNode, walk } from './syntax';

/** One import of a file, in whatever form it is written. */
export interface Import {
  readonly from: string;
  readonly line: number;
  /** Repository path without its ending where the import is relative, else the package's name ('node:fs', 'react'); null where it cannot be told before the program runs. */
  readonly target: string | null;
  readonly kind: 'file' | 'package';
}

/** Every import of a file: plain, side effect, type only, re-export, dynamic, type query, `require`, worker address, reference comment. */
export function importsOf(path: string, text: string): Import[] {
  const found: { specifier: string | null; start: number }[] = [];
  walk(parse(path, text), (node) => {
    const source = sourceOf(node);
    if (source !== undefined) found.push({ specifier: source, start: node.start });
  });
  for (const reference of text.matchAll(/^\s*\/\/\/\s*<reference\s+(?:path|types)\s*=\s*["']([^"']+)["']/gm)) {
    found.push({ specifier: reference[1] ?? null, start: reference.index });
  }
  return found.map(({ specifier, start }) => ({ from: path, line: lineOf(text, start), ...targetOf(path, specifier) }));
}

/** The specifier that a node imports; null where it is computed; undefined where the node imports nothing. */
function sourceOf(node: SyntaxNode): string | null | undefined {
  switch (node.type) {
    case 'ImportDeclaration':
    case 'ExportAllDeclaration':
    case 'ImportExpression':
    case 'TSImportType':
      return textOf(node.source);
    case 'ExportNamedDeclaration':
      return node.source === null ? undefined : textOf(node.source);
    case 'TSExternalModuleReference':
      return textOf(node.expression);
    case 'NewExpression':
      return isNamed(node.callee, 'URL') && (node.arguments as SyntaxNode[]).length === 2
        ? textOf((node.arguments as SyntaxNode[])[0])
        : undefined;
    case 'CallExpression':
      return isNamed(node.callee, 'require') || isGlob(node.callee) ? null : undefined;
    default:
      return undefined;
  }
}

function textOf(value: unknown): string | null {
  const node = value as SyntaxNode | undefined;
  if (node?.type === 'Literal' && typeof node.value === 'string') return node.value;
  if (node?.type === 'TemplateLiteral' && (node.expressions as unknown[]).length === 0) {
    return (node.quasis as { value: { cooked: string } }[])[0]?.value.cooked ?? null;
  }
  return null;
}

function isNamed(value: unknown, name: string): boolean {
  const node = value as SyntaxNode;
  return node.type === 'Identifier' && node.name === name;
}

/** import.meta.glob brings in files that no reader of the code can list. */
function isGlob(value: unknown): boolean {
  const node = value as SyntaxNode;
  return (
    node.type === 'MemberExpression' &&
    (node.object as SyntaxNode).type === 'MetaProperty' &&
    isNamed(node.property, 'glob')
  );
}

function targetOf(path: string, specifier: string | null): Pick<Import, 'target' | 'kind'> {
  if (specifier === null) return { target: null, kind: 'file' };
  const plain = specifier.replace(/\?.*$/, '');
  if (plain.startsWith('.')) {
    return { target: posix.join(posix.dirname(path), plain).replace(/\.(ts|tsx|mjs|js)$/, ''), kind: 'file' };
  }
  if (plain.startsWith('/')) return { target: plain.slice(1).replace(/\.(ts|tsx|mjs|js)$/, ''), kind: 'file' };
  const [scope, name] = plain.split('/');
  return { target: plain.startsWith('@') ? `${scope}/${name}` : (scope ?? plain), kind: 'package' };
}
