import { expect, test } from 'vitest';
import type { DrawingState } from '../../../src/ui/state/bench-state';
import { drawingOfPage } from '../../../src/ui/state/drawing-of-page';

const surfaces = [
  { surfaceId: 'a', kind: 'wall' },
  { surfaceId: 'b', kind: 'ceiling' },
] as const;
const follows: DrawingState = {
  view: 'stage',
  surfaceId: null,
  wires: false,
  from: 'behind',
  tint: 'port',
  follows: true,
};

test('a drawing that follows shows what the page is about', () => {
  expect(drawingOfPage(follows, 'walls', surfaces)).toMatchObject({ view: 'above', tint: 'none' });
  expect(drawingOfPage(follows, 'power', surfaces)).toMatchObject({
    view: 'unrolled',
    tint: 'circuit',
    surfaceId: 'a',
  });
  expect(drawingOfPage(follows, 'ceilings', surfaces)).toMatchObject({ view: 'unrolled', surfaceId: 'b' });
  expect(drawingOfPage({ ...follows, surfaceId: 'b' }, 'runs', surfaces)).toMatchObject({ surfaceId: 'b' });
});

test('a page that is about no drawing leaves it as it is', () => {
  expect(drawingOfPage(follows, 'heat', surfaces)).toMatchObject({ view: 'stage', tint: 'port' });
});

test('a drawing chosen by hand stays', () => {
  const chosen = { ...follows, follows: false };
  expect(drawingOfPage(chosen, 'walls', surfaces)).toBe(chosen);
});

test('a page about ceilings where there is none keeps the surface', () => {
  expect(drawingOfPage({ ...follows, surfaceId: 'a' }, 'ceilings', surfaces.slice(0, 1))).toMatchObject({
    surfaceId: 'a',
  });
});
