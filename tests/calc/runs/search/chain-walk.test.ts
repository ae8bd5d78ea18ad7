import { expect, test } from 'vitest';
import { CellLinks } from '../../../../src/calc/runs/search/cell-links';
import { ChainWalk } from '../../../../src/calc/runs/search/chain-walk';
import { regionOf } from '../../../../src/calc/runs/search/region';
import { aPort, block } from './block-of-panels';

// Two columns of two: cells 0 and 1 on the left, 2 and 3 on the right. The chain is 0 - 1 - 3.
function walk(counting: 'panels' | 'rectangle') {
  const region = regionOf(block(2, 2), aPort(9, counting), Int32Array.from([0, 1, 2, 3]));
  const links = new CellLinks(4);
  links.link(0, 1);
  links.link(1, 3);
  return new ChainWalk(region, links);
}

test('ChainWalk goes from an end to the other one and adds up pixels', () => {
  const chain = walk('panels');
  chain.go(0, -1);
  expect(chain).toMatchObject({ last: 3, count: 3, pixels: 3 * 216 * 216 });
  chain.go(1, 0);
  expect(chain).toMatchObject({ last: 3, count: 2, pixels: 2 * 216 * 216 });
});

test('ChainWalk counts the rectangle round what it met', () => {
  const chain = walk('rectangle');
  chain.go(3, -1);
  expect(chain).toMatchObject({ last: 0, count: 3, pixels: 432 * 432 });
  chain.go(1, 3);
  expect(chain).toMatchObject({ left: 0, right: 216, top: 0, bottom: 432, pixels: 216 * 432 });
  chain.widen(216, 432, 216, 432);
  expect(chain).toMatchObject({ left: 0, right: 432, top: 0, bottom: 432, pixels: 432 * 432 });
});
