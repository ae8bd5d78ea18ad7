import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { createEvaluator } from '../../src/calc/evaluate';
import type { Given } from '../../src/cli/command';
import { compare } from '../../src/cli/compare';
import { serialisePlan } from '../../src/plan/serialise-plan';
import { samplePlan } from '../arbitraries/sample-plans';
import { issue, widenLeft } from '../calc/names/issue';
import { givenTerminal } from './given-terminal';

const sample = readFileSync('fixtures/plans/flat.json', 'utf8');
const higher = JSON.parse(sample);
higher.walls[0].bands[0].rows += 1;
const files = { 'old.json': sample, 'new.json': JSON.stringify(higher), 'broken.json': '{' };

function run(file: string, secondFile: string, ...options: string[]) {
  const terminal = givenTerminal(files);
  const code = compare.run({ file, secondFile, options: new Set(options) }, terminal);
  return { code, output: terminal.output(), complaints: terminal.complaints() };
}

test('compare ends with 0 where nothing changed and says so', () => {
  expect(run('old.json', 'old.json')).toMatchObject({ code: 0, output: expect.stringContaining('Nothing changed.') });
  expect(run('old.json', 'old.json', '--json')).toMatchObject({ code: 0, output: '{\n  "changes": []\n}\n' });
});

test('compare ends with 1 where something changed and lists it in lines of eighty columns', () => {
  const { code, output } = run('old.json', 'new.json');
  expect(code).toBe(1);
  expect(output).toContain('Panel, added: 8');
  for (const line of output.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  expect(output).not.toMatch(/NaN|Infinity|undefined|\[object/);
});

test('compare --json is one object with every change', () => {
  const { code, output } = run('old.json', 'new.json', '--json');
  expect(code).toBe(1);
  const { changes } = JSON.parse(output);
  expect(changes).toContainEqual({
    kind: 'changed',
    what: 'figure',
    name: 'Panels',
    before: [{ value: 64, unit: 'count' }],
    after: [{ value: 72, unit: 'count' }],
  });
  for (const change of changes) expect(Object.keys(change)).toEqual(['kind', 'what', 'name', 'before', 'after']);
});

test('compare of two states of one plan follows panels to their new names, and those of two plans by their names', () => {
  const wider = JSON.parse(sample);
  const [first] = wider.walls[0].path;
  wider.walls[0].path.unshift({ ...first, id: 'more', columns: 1 });
  const other = { ...wider, id: 'another-plan' };
  const kinds = (next: unknown) => {
    const terminal = givenTerminal({ 'old.json': sample, 'next.json': JSON.stringify(next) });
    compare.run({ file: 'old.json', secondFile: 'next.json', options: new Set(['--json']) }, terminal);
    const { changes } = JSON.parse(terminal.output());
    return new Set(
      changes.flatMap((change: { what: string; kind: string }) => (change.what === 'panel' ? [change.kind] : [])),
    );
  };
  expect(kinds(wider)).toEqual(new Set(['added', 'renamed']));
  expect(kinds(other)).toEqual(new Set(['added', 'moved']));
});

describe('compare with revisions', () => {
  const evaluator = createEvaluator();
  const first = issue(samplePlan('flat'), evaluator, 'A');
  const wide = issue(widenLeft(first), evaluator, 'B');
  const issued = serialisePlan(wide);
  const call = (given: Partial<Given>) => {
    const terminal = givenTerminal({ 'plan.json': issued, 'flat.json': sample });
    const code = compare.run({ file: 'plan.json', options: new Set<string>(), ...given }, terminal);
    return { code, output: terminal.output(), complaints: terminal.complaints() };
  };

  test('compares two revisions of one plan, or one with the plan as it is', () => {
    expect(call({ from: 'A', to: 'b' })).toMatchObject({ code: 1, output: expect.stringContaining('Panel, added: 8') });
    expect(call({ from: 'A' })).toEqual(call({ from: 'A', to: 'B' }));
    expect(call({ from: 'B' })).toMatchObject({ code: 0, output: expect.stringContaining('Nothing changed.') });
  });

  test('takes the revisions of two files', () => {
    expect(call({ secondFile: 'flat.json', from: 'A' })).toMatchObject({ code: 0 });
  });

  test('complains of a revision that there is not, and of one file alone', () => {
    expect(call({ from: 'C' })).toMatchObject({
      code: 2,
      complaints: expect.stringContaining('no revision C; it has A, B'),
    });
    expect(call({ secondFile: 'flat.json', to: 'A' }).complaints).toContain('it has none');
    expect(call({})).toMatchObject({ code: 2, complaints: expect.stringContaining('a second file') });
  });
});

test.each([
  ['old.json', 'gone.json', 'gone.json: there is no such file'],
  ['gone.json', 'old.json', 'gone.json: there is no such file'],
  ['old.json', 'broken.json', 'reason: '],
])('compare of %s with %s ends with 2 and prints nothing', (file, secondFile, complaint) => {
  const { code, output, complaints } = run(file, secondFile);
  expect([code, output]).toEqual([2, '']);
  expect(complaints).toContain(complaint);
});
