import { expect, it } from 'vitest';
import { layOutWalls } from '../../../src/calc/walls/lay-out-walls';
import { walkwayBox, walkwayEdge } from '../../../src/calc/walls/walkway-edge';
import { plainPanel } from '../panels/plain-panel';
import { plainWall } from './plain-wall';

const wallOf = (...given: Parameters<typeof plainWall>) =>
  layOutWalls([plainWall(...given)], [plainPanel('p1')]).walls[0]!;

it('walkwayEdge runs behind the back of every column', () => {
  // Two columns of 500, 80 deep, 1000 behind.
  const edge = walkwayEdge(wallOf(2, 0), 1000);
  expect([...edge].filter((_, i) => i % 2 === 0)).toEqual([-500, 0, 0, 500].map((x) => expect.closeTo(x, 9)));
  expect([...edge].filter((_, i) => i % 2 === 1)).toEqual([1080, 1080, 1080, 1080].map((y) => expect.closeTo(y, 9)));
});

it('walkwayEdge goes round a ring at one distance', () => {
  // Over flats 500 / (2 tan 5 deg) = 2857.513, 80 deep and 1200 behind; half a width aside.
  const edge = walkwayEdge(wallOf(36, 10), 1200);
  expect(edge).toHaveLength(36 * 4);
  for (let i = 0; i < edge.length; i += 2) {
    expect(Math.hypot(edge[i]!, edge[i + 1]!)).toBeCloseTo(Math.hypot(2857.513 + 1280, 250), 1);
  }
});

it('walkwayBox holds the faces and the edge, and is nothing without walls', () => {
  expect(walkwayBox([wallOf(2, 0)], 1000)).toEqual({ leftMm: -500, rightMm: 500, frontMm: 0, backMm: 1080 });
  expect(walkwayBox([], 1000)).toEqual({ leftMm: 0, rightMm: 0, frontMm: 0, backMm: 0 });
});
