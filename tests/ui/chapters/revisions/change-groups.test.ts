import { expect, test } from 'vitest';
import type { Change } from '../../../../src/calc/compare/change';
import { countBy, filterChanges } from '../../../../src/ui/chapters/revisions/change-groups';

const change = (kind: Change['kind'], what: Change['what'], name: string): Change => {
  return { kind, what, name, before: null, after: null };
};
const changes = [
  change('changed', 'figure', 'Panels'),
  change('added', 'panel', 'C1 R1'),
  change('added', 'port', '1A-01'),
  change('moved', 'port', '1A-02'),
];
const names = (...given: Parameters<typeof filterChanges>) => filterChanges(...given).map(({ name }) => name);

test('filterChanges lets through one kind of change, of one kind of thing, or all', () => {
  expect(filterChanges(changes, { kind: 'all', what: 'all' })).toBe(changes);
  expect(names(changes, { kind: 'added', what: 'all' })).toEqual(['C1 R1', '1A-01']);
  expect(names(changes, { kind: 'all', what: 'port' })).toEqual(['1A-01', '1A-02']);
  expect(names(changes, { kind: 'added', what: 'port' })).toEqual(['1A-01']);
});

test('countBy counts in the order in which things come up', () => {
  expect([...countBy(changes, ({ kind }) => kind)]).toEqual([
    ['changed', 1],
    ['added', 2],
    ['moved', 1],
  ]);
});
