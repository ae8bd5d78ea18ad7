import { expect, test } from 'vitest';
import { readText, sourceFiles, testFiles } from './repository';

/** Files above their stop. The list may only shrink; it is empty, and so it stays. */
const aboveTheStop: readonly string[] = [];

/** Most lines of a file: past it the file holds two ideas, and both want a name. */
function stopOf(path: string): number {
  if (path.startsWith('tests/')) return 500;
  return path.startsWith('src/calc/') ? 300 : 400;
}

function tooLong(path: string, text: string): string[] {
  const lines = text.replace(/\n$/, '').split('\n').length;
  return lines > stopOf(path) ? [`${path} has ${lines} lines, more than ${stopOf(path)}`] : [];
}

const drawers = /(^|[-_.])(utils?|helpers?|misc|common|shared|lib|stuff)([-_.]|$)/i;
const kebab = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const pascal = /^[A-Z][A-Za-z0-9]*$/;

function badNames(path: string): string[] {
  const found: string[] = [];
  for (const part of path.split('/')) {
    if (drawers.test(part)) found.push(`${path} is named as a drawer for anything: ${part}`);
  }
  const file = path.split('/').at(-1) ?? '';
  const stems = file.replace(/\.(ts|tsx|mjs)$/, '').split('.');
  const isNamedWell = stems.every((stem) => kebab.test(stem)) || (file.endsWith('.tsx') && pascal.test(stems[0] ?? ''));
  if (!isNamedWell) found.push(`${path} is neither lower-kebab nor, for a component, PascalCase`);
  return found;
}

test('no file is longer than its stop, and nothing is excused that is not', () => {
  const found = [...sourceFiles, ...testFiles].filter((path) => tooLong(path, readText(path)).length > 0);
  expect(sourceFiles.length).toBeGreaterThan(50);
  expect(found).toEqual(aboveTheStop);
});

test('every file is named after its idea', () => {
  expect(sourceFiles.flatMap(badNames)).toEqual([]);
});

test.each([
  ['src/calc/walls/planted.ts', 300],
  ['src/ui/chapters/walls/Planted.tsx', 400],
  ['src/plan/planted.ts', 400],
  ['tests/calc/planted.test.ts', 500],
])('%s may have %i lines and not one more', (path, most) => {
  expect(tooLong(path, 'x\n'.repeat(most))).toEqual([]);
  expect(tooLong(path, 'x\n'.repeat(most + 1))).toEqual([`${path} has ${most + 1} lines, more than ${most}`]);
});

test.each([
  ['src/calc/utils.ts'],
  ['src/calc/wall-helpers.ts'],
  ['src/calc/misc/turn.ts'],
  ['src/ui/common/Row.tsx'],
  ['src/calc/layOutWalls.ts'],
  ['src/calc/LayOut.ts'],
  ['src/calc/lay_out.ts'],
  ['src/ui/bench/top_bar.tsx'],
])('the name %s is refused', (path) => {
  expect(badNames(path)).not.toEqual([]);
});

test.each([
  ['src/calc/walls/lay-out-walls.ts'],
  ['src/ui/bench/TopBar.tsx'],
  ['src/ui/state/evaluate.worker.ts'],
  ['src/setup/find-chromium.mjs'],
])('the name %s is taken', (path) => {
  expect(badNames(path)).toEqual([]);
});
