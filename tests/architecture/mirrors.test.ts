import { expect, test } from 'vitest';
import { readText, sourceFiles, testFiles } from './repository';
import { parse, walk } from './syntax';

/** Sources that hold a function and have no test of their own, each with its reason. The list may only shrink. */
// Parts of the wiring search: held as one by choose-wiring (against an integer program), least-ports and regular-wirings.
const excused: readonly string[] = [
  'src/calc/runs/search/anneal.ts',
  'src/calc/runs/search/bounds/canvas-lattice.ts',
  'src/calc/runs/search/bounds/ceil-divide.ts',
  'src/calc/runs/search/bounds/largest-load.ts',
  'src/calc/runs/search/bounds/least-bins.ts',
  'src/calc/runs/search/bounds/least-by-windows.ts',
  'src/calc/runs/search/bounds/least-chains.ts',
  'src/calc/runs/search/bounds/least-high.ts',
  'src/calc/runs/search/bounds/most-in-rectangle.ts',
  'src/calc/runs/search/bounds/most-links.ts',
  'src/calc/runs/search/bounds/sums-before.ts',
  'src/calc/runs/search/bounds/weight-before.ts',
  'src/calc/runs/search/cell-links.ts',
  'src/calc/runs/search/chain-change.ts',
  'src/calc/runs/search/chain-walk.ts',
  'src/calc/runs/search/chains-of-links.ts',
  'src/calc/runs/search/chains-to-runs.ts',
  'src/calc/runs/search/connected-parts.ts',
  'src/calc/runs/search/ends-out-of-reach.ts',
  'src/calc/runs/search/exact/frontier-layer.ts',
  'src/calc/runs/search/exact/frontier-order.ts',
  'src/calc/runs/search/exact/frontier-search.ts',
  'src/calc/runs/search/exact/open-loads.ts',
  'src/calc/runs/search/fewest-chains.ts',
  'src/calc/runs/search/fewest-ports.ts',
  'src/calc/runs/search/home-lengths.ts',
  'src/calc/runs/search/largest-divisor.ts',
  'src/calc/runs/search/line-up-runs.ts',
  'src/calc/runs/search/measure-wiring.ts',
  'src/calc/runs/search/mirror-grid.ts',
  'src/calc/runs/search/most-free.ts',
  'src/calc/runs/search/order-of-merit.ts',
  'src/calc/runs/search/path-cover.ts',
  'src/calc/runs/search/random-bits.ts',
  'src/calc/runs/search/region.ts',
  'src/calc/runs/search/regular-ways.ts',
  'src/calc/runs/search/repair-reach.ts',
  'src/calc/runs/search/shorten-cable.ts',
  'src/calc/runs/search/stack-bands.ts',
  'src/calc/runs/search/wire-in-way.ts',
  'src/calc/runs/search/wiring-key.ts',
  'src/calc/runs/search/zone-to-wire.ts',
];

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
  expect(unmirrored(sources, testFiles)).toEqual(excused);
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
