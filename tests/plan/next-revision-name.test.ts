import { expect, test } from 'vitest';
import { nextRevisionName } from '../../src/plan/next-revision-name';
import { planContentOf } from '../../src/plan/plan-content-of';
import { samplePlan } from './sample-plan';

const content = planContentOf(samplePlan('flat'));
const next = (revision: string, ...issued: string[]) =>
  nextRevisionName({
    revision,
    revisions: issued.map((name) => ({ id: `revision-${name}`, name, issuedOn: '2026-11-25', note: '', content })),
  });

test('nextRevisionName is the name of the plan as long as it was not issued', () => {
  expect(next('A')).toBe('A');
  expect(next('C', 'A', 'B')).toBe('C');
  expect(next('')).toBe('A');
});

test.each([
  ['A', 'B'],
  ['Z', 'AA'],
  ['AZ', 'BA'],
  ['ZZ', 'AAA'],
  ['3', '4'],
  ['09', '10'],
  ['Rev 2', 'Rev 3'],
  ['1a', '1b'],
  ['Rev B', 'Rev C'],
  ['For build', 'For build 2'],
  ['draft!', 'draft! 2'],
])('nextRevisionName after %j is %j', (issued, name) => {
  expect(next(issued, issued)).toBe(name);
});

test('nextRevisionName passes over what was issued under the next name', () => {
  expect(next('A', 'A', 'b', 'C')).toBe('D');
});
