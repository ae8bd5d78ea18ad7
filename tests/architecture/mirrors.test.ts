import { expect, test } from 'vitest';
import { readText, sourceFiles, testFiles } from './repository';
import { parse, walk } from './syntax';

/** Layers whose every function is tested by a file at the same place under tests/. */
const mirrored = /^src\/(units|plan|calc|sheets|files|cli)\//;

/**
 * Whether a file can be wrong by itself: whether it holds a function. Types, schemas put together from other schemas and
 * constants hold none; they are read by the compiler and tested where they are used.
 */
function holdsAFunction(path: string, text: string): boolean {
  let found = false;
  walk(parse(path, text), (node) => {
    const isFunction = /^(FunctionDeclaration|FunctionExpression|ArrowFunctionExpression)$/.test(node.type);
    if (isFunction && node.declare !== true) found = true;
  });
  return found;
}

/** 'src/calc/walls/lay-out-walls.ts' is tested by 'tests/calc/walls/lay-out-walls.test.ts', or by several '...lay-out-walls.part.test.ts'. */
function hasMirror(path: string, tests: readonly string[]): boolean {
  const stem = path.replace(/^src\//, 'tests/').replace(/\.(ts|tsx)$/, '');
  return tests.some((test) => test.startsWith(`${stem}.`) && /\.test\.tsx?$/.test(test));
}

function unmirrored(sources: readonly { path: string; text: string }[], tests: readonly string[]): string[] {
  return sources
    .filter(({ path, text }) => mirrored.test(path) && holdsAFunction(path, text) && !hasMirror(path, tests))
    .map(({ path }) => path);
}

test('every file with a function has a test at the same place', () => {
  const sources = sourceFiles.map((path) => ({ path, text: readText(path) }));
  expect(sources.filter(({ path, text }) => mirrored.test(path) && holdsAFunction(path, text)).length).toBeGreaterThan(
    10,
  );
  expect(unmirrored(sources, testFiles)).toEqual([]);
});

test.each([
  ['function turn() { return 1; }'],
  ['export const turn = () => 1;'],
  ['export const turn = { apply(plan) { return plan; } };'],
  ['export const size = z.number().refine((mm) => mm > 0);'],
  ['export class Turn { by() { return 1; } }'],
])('%s wants a test', (text) => {
  const planted = { path: 'src/calc/planted.ts', text };
  expect(unmirrored([planted], ['tests/calc/planted-too.test.ts', 'tests/plan/planted.test.ts'])).toEqual([
    'src/calc/planted.ts',
  ]);
  expect(unmirrored([planted], ['tests/calc/planted.test.ts'])).toEqual([]);
  expect(unmirrored([planted], ['tests/calc/planted.mirror.test.ts'])).toEqual([]);
});

test.each([
  ["import type { A } from './a'; export interface B { readonly a: A; }"],
  ['export const band = z.strictObject({ rows: z.int().min(1) });'],
  ['export const inchMm = 25.4;'],
  ['export type Apply = (plan: Plan) => Plan;'],
])('%s wants none', (text) => {
  expect(unmirrored([{ path: 'src/calc/planted.ts', text }], [])).toEqual([]);
});
