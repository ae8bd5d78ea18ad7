import type { Import } from './imports-of';

/** Lower may not import upper. Those of the same height know nothing of each other. */
const heights: Readonly<Record<string, number>> = {
  'src/units': 0,
  'src/plan': 1,
  'src/calc': 2,
  'src/sheets': 3,
  'src/files': 4,
  'src/cli': 5,
  'src/ui': 5,
  'src/main': 6,
};

/** Packages that each layer may use. `src/ui` may use any but those that belong to one layer alone. */
const packagesOf: Readonly<Record<string, readonly string[]>> = {
  'src/units': [],
  'src/plan': ['zod', 'immer'],
  'src/calc': ['reselect'],
  'src/sheets': ['uqr'],
  'src/files': [
    '@cantoo/fontkit',
    '@cantoo/pdf-lib',
    '@tarikjabiri/dxf',
    'd3-dsv',
    'fflate',
    'pako',
    'write-excel-file',
  ],
  'src/cli': [],
};
const notForThePage = ['zod', '@tarikjabiri/dxf', 'd3-dsv', 'fflate', 'pako', 'write-excel-file'];

/** What is wrong with one import, in a sentence; null where nothing is. */
export function importViolation(found: Import): string | null {
  const { from, target } = found;
  const where = `${from}:${found.line}`;
  const layer = layerOf(from);
  if (layer === 'src/setup') {
    // It starts what it has just built: the one import that cannot be told from the text.
    const inside = target === null || found.kind === 'package' || layerOf(target) === layer;
    return inside ? null : `${where} setup imports ${target}`;
  }
  if (target === null) return `${where} imports what can only be told when it runs`;
  if (heights[layer] === undefined) return `${where} is in no layer: ${layer}`;
  return found.kind === 'package' ? packageViolation(where, layer, target) : fileViolation(where, from, layer, target);
}

function packageViolation(where: string, layer: string, name: string): string | null {
  const allowed = packagesOf[layer];
  if (name.startsWith('node:')) return layer === 'src/cli' ? null : `${where} ${layer} imports ${name}`;
  if (allowed === undefined) return notForThePage.includes(name) ? `${where} ${layer} imports ${name}` : null;
  return allowed.includes(name) ? null : `${where} ${layer} imports the package ${name}`;
}

function fileViolation(where: string, from: string, layer: string, target: string): string | null {
  if (target.startsWith('shared/')) return null;
  if (target.startsWith('fixtures/plans/')) return null;
  const other = layerOf(target);
  const height = heights[layer];
  const otherHeight = heights[other];
  if (height === undefined || otherHeight === undefined) return `${where} imports ${target}, outside the layers`;
  if (otherHeight > height || (otherHeight === height && other !== layer)) {
    return `${where} ${layer} imports upward: ${target}`;
  }
  const chapter = chapterOf(from);
  const otherChapter = chapterOf(target);
  if (chapter !== null && otherChapter !== null && chapter !== otherChapter) {
    return `${where} the chapter ${chapter} imports the chapter ${otherChapter}`;
  }
  if (from.startsWith('src/ui/widgets/') && !/^src\/(units|ui\/widgets)\//.test(target)) {
    return `${where} widgets know nothing of the plan, and import ${target}`;
  }
  return null;
}

/** 'src/calc' for 'src/calc/walls/lay-out-walls'; 'src/main' for the page's entry. */
function layerOf(path: string): string {
  return path
    .replace(/\.(ts|tsx|mjs)$/, '')
    .split('/')
    .slice(0, 2)
    .join('/');
}

function chapterOf(path: string): string | null {
  return /^src\/ui\/chapters\/([^/]+)\//.exec(path)?.[1] ?? null;
}
