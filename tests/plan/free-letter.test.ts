import { expect, test } from 'vitest';
import { freeLetter } from '../../src/plan/free-letter';
import { samplePlan } from './sample-plan';

test('freeLetter is the first one that neither wall nor ceiling has', () => {
  const plan = samplePlan('horseshoe');
  expect(freeLetter(plan)).toBe('C');
  plan.walls[0]!.letter = 'Q';
  expect(freeLetter(plan)).toBe('A');
});

test('freeLetter ends at Z', () => {
  const plan = samplePlan('flat');
  const [wall] = plan.walls;
  plan.walls = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].map((letter) => ({ ...wall!, letter }));
  expect(freeLetter(plan)).toBe('Z');
});
