import { expect, test } from 'vitest';
import type { Evaluation } from '../../../../src/calc/evaluation';
import { findInHand } from '../../../../src/ui/chapters/log/find-in-hand';
import { stageFixture } from '../../../arbitraries/evaluation-fixture';
import { wall } from './wall-in-hand';

const namesOf = (evaluation: Evaluation, query: string) => findInHand(evaluation, query).map(({ name }) => name);

test('findInHand puts what has the very name first, and then what begins so', () => {
  expect(namesOf(wall, 'c3 r2')).toEqual(['C3 R2']);
  expect(namesOf(wall, '1a-0')[0]).toBe('1A-01');
  expect(namesOf(wall, 'd1-1').slice(0, 3)).toEqual(['D1-1', 'D1-10', 'D1-11']);
});

test('findInHand looks for a name without a letter on every surface', () => {
  const { surfaces } = stageFixture({ columns: 12, rows: 6, jointDeg: 5, ceilingDiameterMm: 1500 });
  expect(namesOf({ ...wall, surfaces }, 'c2')).toEqual(['A C2', 'B C2']);
});

test('findInHand finds nothing for nothing, and no pages or commands', () => {
  expect(findInHand(wall, '  ')).toEqual([]);
  expect(namesOf(wall, 'power')).toEqual([]);
});
