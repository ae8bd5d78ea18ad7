import { expect, test } from 'vitest';
import { anneal } from '../../../../src/calc/runs/search/anneal';
import { PathCover } from '../../../../src/calc/runs/search/path-cover';
import { createRandomBits } from '../../../../src/calc/runs/search/random-bits';
import { regionOf } from '../../../../src/calc/runs/search/region';
import { aPort, block } from './block-of-panels';

const aim = { chains: 2, highMost: 0, bendWeight: 0.4, highWeight: 1.5, temperature: 0.2, steps: 20_000 };

/** 4 x 4 panels, each a chain by itself. */
function singles(panels: number, reachMm = 600): PathCover {
  const region = regionOf(block(4, 4), aPort(panels, 'panels', reachMm), Int32Array.from(Array(16).keys()));
  return new PathCover(region, { order: Int32Array.from(Array(16).keys()), start: Int32Array.from(Array(17).keys()) });
}

test('anneal brings 16 chains of one panel down to two of eight, with their entries in reach', () => {
  const cover = singles(8);
  const { steps, arrived } = anneal(cover, aim, createRandomBits(5));
  expect(arrived).toBe(true);
  expect(steps).toBeLessThan(aim.steps);
  expect(cover).toMatchObject({ chains: 2, overloaded: 0, high: 0 });
});

test('anneal does not arrive where nothing can: 16 panels are more than two ports of seven', () => {
  expect(anneal(singles(7), aim, createRandomBits(5))).toEqual({ steps: aim.steps, arrived: false });
});

test('anneal gives the same for the same random bits', () => {
  const [one, other] = [singles(8), singles(8)];
  anneal(one, aim, createRandomBits(9));
  anneal(other, aim, createRandomBits(9));
  expect(one.read()).toEqual(other.read());
});
