import { expect, test } from 'vitest';
import { anchorKeys } from '../../../src/calc/compare/anchor-keys';
import { type ChangedPanelsOf, panelsChanged } from '../../../src/calc/compare/panels-changed';
import { createEvaluator } from '../../../src/calc/evaluate';
import { panelAt } from '../../../src/calc/surfaces/panel-at';
import type { Plan } from '../../../src/plan/plan';
import { samplePlan } from '../../arbitraries/sample-plans';

const { evaluate } = createEvaluator();
function known(plan: Plan): ChangedPanelsOf {
  const { surfaces, ceilings, runs, power } = evaluate(plan);
  return { surfaces, runs, power, anchors: anchorKeys({ surfaces, walls: plan.walls, ceilings: ceilings.results }) };
}
const namesOf = ({ surfaces }: ChangedPanelsOf, marks: Uint8Array) =>
  Array.from(marks.keys())
    .filter((panel) => marks[panel] === 1)
    .map((panel) => panelAt(surfaces, panel)!.name);
const changed = (before: ChangedPanelsOf, after: ChangedPanelsOf) => namesOf(after, panelsChanged(before, after));

/** One straight wall of eight columns and eight rows. */
const flat = samplePlan('flat');
const [wall] = flat.walls;
const before = known(flat);

/** The same plan with one run more or less of its wiring told otherwise. */
const withRuns = (
  change: (runs: ChangedPanelsOf['runs']['results']) => Partial<ChangedPanelsOf['runs']['results']>,
) => {
  const { results } = before.runs;
  return { ...before, runs: { results: { ...results, ...change(results) } } };
};

test('panelsChanged marks nothing in a plan that is the same, or stands elsewhere', () => {
  expect(changed(before, before)).toEqual([]);
  const place = { ...wall!.place, xMm: wall!.place.xMm + 3000 };
  expect(changed(before, known({ ...flat, walls: [{ ...wall!, place }] }))).toEqual([]);
});

test('panelsChanged marks new panels, and those below that now pass data or power on to them', () => {
  const after = known({ ...flat, walls: [{ ...wall!, bands: [{ ...wall!.bands[0]!, rows: 9 }] }] });
  const marked = new Set(changed(before, after));
  for (const column of [1, 2, 3, 4, 5, 6, 7, 8]) expect(marked).toContain(`C${column} R9`);
});

test('panelsChanged marks panels of another type', () => {
  const panels = flat.catalogue.panels.map((panel) => ({ ...panel, name: `${panel.name} II` }));
  expect(changed(before, known({ ...flat, catalogue: { ...flat.catalogue, panels } }))).toHaveLength(64);
});

test('panelsChanged marks the panels of a run that is on another port, and no others', () => {
  const [first] = before.runs.results.runs;
  const after = withRuns(({ runs }) => ({ runs: [{ ...first!, port: '1D-09' }, ...runs.slice(1)] }));
  expect(changed(before, after)).toHaveLength(first!.count);
});

test('panelsChanged marks the last panel of a run that goes back to another port', () => {
  const { order, runs } = before.runs.results;
  const [first] = runs;
  const after = withRuns(() => ({ runs: [{ ...first!, returnPort: '1D-09' }, ...runs.slice(1)] }));
  const last = panelAt(before.surfaces, order[first!.start + first!.count - 1]!)!.name;
  expect(changed(before, after)).toEqual([last]);
});

test('panelsChanged marks a panel that another one comes before, on its run', () => {
  const { order, runs } = before.runs.results;
  const swapped = order.slice();
  const { start } = runs[0]!;
  [swapped[start], swapped[start + 1]] = [order[start + 1]!, order[start]!];
  const places = [start, start + 1, start + 2].map((at) => panelAt(before.surfaces, order[at]!)!.name).sort();
  expect(
    changed(
      before,
      withRuns(() => ({ order: swapped })),
    ).sort(),
  ).toEqual(places);
});

test('panelsChanged marks the panels of a circuit under another name, and no others', () => {
  const { results } = before.power;
  const [first] = results.circuits;
  const circuits = [{ ...first!, name: 'D9-1' }, ...results.circuits.slice(1)];
  const after = { ...before, power: { results: { ...results, circuits } } };
  expect(changed(before, after)).toHaveLength(first!.count);
});

test('panelsChanged follows panels by their anchors where columns before them make their names others', () => {
  const first = { ...wall!.path[0]!, id: 'first', columns: 1 };
  const after = known({ ...flat, walls: [{ ...wall!, path: [first, ...wall!.path] }] });
  const marked = panelsChanged(before, after);
  // Column 1 is new.
  expect(marked.slice(0, 8)).toEqual(new Uint8Array(8).fill(1));
  const { runs, runOf } = after.runs.results;
  const then = before.runs.results;
  // A panel keeps its number but for the column before it; whatever is not marked hangs where it hung.
  for (let panel = 8; panel < 72; panel++) {
    if (marked[panel] === 0) expect(runs[runOf[panel]!]!.port).toBe(then.runs[then.runOf[panel - 8]!]!.port);
  }
});
