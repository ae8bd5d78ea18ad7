import { parseSync, visitorKeys } from 'oxc-parser';

/** A node of the syntax tree; what each kind holds is the parser's business. */
export interface SyntaxNode {
  readonly type: string;
  readonly start: number;
  readonly [key: string]: unknown;
}

/** The tree of one file. A file that does not parse is an error: a guard must never pass on what it could not read. */
export function parse(path: string, text: string): SyntaxNode {
  const { program, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path} does not parse: ${errors[0]?.message}`);
  return program as unknown as SyntaxNode;
}

/** Calls `visit` for every node, a parent before its children. */
export function walk(
  node: SyntaxNode,
  visit: (node: SyntaxNode, parent: SyntaxNode | null, key: string) => void,
  parent: SyntaxNode | null = null,
  inKey = '',
): void {
  visit(node, parent, inKey);
  for (const key of visitorKeys[node.type] ?? []) {
    const child = node[key];
    for (const each of Array.isArray(child) ? child : [child]) {
      if (each !== null && each !== undefined) walk(each as SyntaxNode, visit, node, key);
    }
  }
}

export function lineOf(text: string, offset: number): number {
  return text.slice(0, offset).split('\n').length;
}
