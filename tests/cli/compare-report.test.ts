import { expect, test } from 'vitest';
import type { Change } from '../../src/calc/compare/change';
import { compareReport } from '../../src/cli/compare-report';

const plan = { name: 'Cove', revision: 'A', lengths: 'metric', currency: 'EUR' } as const;
const both = { before: plan, after: { ...plan, revision: 'B' } };
const added = (n: number, what: Change['what'] = 'panel'): Change => {
  return { kind: 'added', what, name: `C${n} R1`, before: null, after: ['Panel'] };
};

test('compareReport names both plans and says where nothing changed', () => {
  expect(compareReport(both, [], 80)).toBe('Old: Cove, revision A\nNew: Cove, revision B\n\nNothing changed.\n');
  expect(compareReport({ ...both, before: { ...plan, revision: '' } }, [], 80)).toContain('Old: Cove\n');
});

test('compareReport writes a line a change, by what it is and what became of it', () => {
  const moved: Change = { kind: 'moved', what: 'port', name: '1-01', before: ['2 panels'], after: ['3 panels'] };
  expect(
    compareReport(both, [added(1), moved, added(2)], 80)
      .split('\n')
      .slice(3),
  ).toEqual([
    '3 changes.',
    '',
    'Panel, added: 2',
    '  C1 R1: Panel',
    '  C2 R1: Panel',
    '',
    'Port, moved: 1',
    '  1-01: 2 panels -> 3 panels',
    '',
  ]);
});

test('compareReport counts panels behind the twelfth, and writes out every check', () => {
  const twenty = (what: Change['what']) => Array.from({ length: 20 }, (_, i) => added(i + 1, what));
  const panels = compareReport(both, twenty('panel'), 80);
  expect(panels).toContain('Panel, added: 20');
  expect(panels).toContain('C12 R1');
  expect(panels).not.toContain('C13 R1');
  expect(panels).toContain('and 8 more');
  expect(compareReport(both, twenty('check'), 80)).toContain('C20 R1');
});

test('compareReport writes lengths as the new plan has them, and money of each plan in its own currency', () => {
  const changed = (unit: 'mm' | 'money', name: string): Change => {
    return { kind: 'changed', what: 'figure', name, before: [{ value: 3048, unit }], after: [{ value: 6096, unit }] };
  };
  const text = compareReport(
    { before: plan, after: { ...plan, lengths: 'feet', currency: 'USD' } },
    [changed('mm', 'Wall height'), changed('money', 'Price')],
    80,
  );
  // 10 ft are 3048 mm.
  expect(text).toContain(`Wall height: 10' 0" -> 20' 0"`);
  expect(text).toMatch(/Price: €3,048 -> US\$6,096/);
});
