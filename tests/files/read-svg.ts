import { parse, type SyntaxNode, walk } from '../architecture/syntax';

export interface SvgElement {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Its text with the entities resolved. */
  readonly text: string;
}

/**
 * Every element of an SVG file, in order. It is read by the parser of a language that holds XML as expressions, and that
 * fails where a tag is not closed or an attribute not quoted; ampersands and control signs, which it passes, are looked for here.
 */
export function readSvg(svg: string): readonly SvgElement[] {
  const wrong = /&(?!(amp|lt|gt|quot|apos);)|[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/u.exec(svg);
  if (wrong !== null) throw new Error(`not XML at ${wrong.index}: ${svg.slice(wrong.index, wrong.index + 20)}`);
  const found: SvgElement[] = [];
  walk(parse('drawing.tsx', `(${svg})`), (node) => {
    if (node.type !== 'JSXElement') return;
    const opening = node.openingElement as SyntaxNode & { name: { name: string }; attributes: readonly SyntaxNode[] };
    const attributes: Record<string, string> = {};
    for (const attribute of opening.attributes) {
      const { name } = attribute.name as { name: string };
      if (Object.hasOwn(attributes, name)) throw new Error(`${opening.name.name} has ${name} twice`);
      attributes[name] = resolved((attribute.value as { value: string }).value);
    }
    const children = node.children as readonly (SyntaxNode & { raw?: string })[];
    const text = children.map((child) => (child.type === 'JSXText' ? (child.raw ?? '') : '')).join('');
    found.push({ name: opening.name.name, attributes, text: resolved(text) });
  });
  return found;
}

const entities: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };

function resolved(text: string): string {
  return text.replace(/&(\w+);/g, (_, name: string) => entities[name] ?? '?');
}

/** Points of path data that is made of absolute moves and lines. */
export function pointsOfPath(d: string): readonly (readonly [number, number])[] {
  if (!/^([ML]-?[\d.]+ -?[\d.]+|Z)*$/.test(d)) throw new Error(`other path data: ${d.slice(0, 80)}`);
  return [...d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
}
