import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isPrivateIpv4, networkOf, readIpv4 } from '../../../src/calc/nodes/ipv4';
import { numberAnew } from '../../../src/calc/nodes/number-anew';
import { defaultAddresses } from '../../../src/plan/addresses';

test('numberAnew starts each kind at the next decade of the same network', () => {
  const counts = { node: 12, processor: 11, camera: 2, tracker: 1 };
  expect(numberAnew(defaultAddresses, counts)).toEqual({
    prefixBits: 24,
    nodes: '10.20.0.1',
    processors: '10.20.0.21',
    cameras: '10.20.0.41',
    trackers: '10.20.0.51',
  });
});

test('numberAnew goes without decades where they do not fit, and widens a network that is too small', () => {
  // 30 hosts of a /27: 12 + 11 + 2 + 1 = 26.
  const small = { ...defaultAddresses, prefixBits: 27, nodes: '192.168.7.40' };
  expect(numberAnew(small, { node: 12, processor: 11, camera: 2, tracker: 1 })).toEqual({
    prefixBits: 27,
    nodes: '192.168.7.33',
    processors: '192.168.7.45',
    cameras: '192.168.7.56',
    trackers: '192.168.7.58',
  });
  // 300 devices need 302 addresses: a /23 has 512.
  expect(numberAnew(defaultAddresses, { node: 300, processor: 0, camera: 0, tracker: 0 }).prefixBits).toBe(23);
});

test('numberAnew leaves a network that is not private', () => {
  const abroad = { ...defaultAddresses, nodes: '8.8.8.8' };
  expect(numberAnew(abroad, { node: 1, processor: 1, camera: 1, tracker: 1 }).nodes).toBe('10.20.0.1');
});

test('numberAnew gives every device a private host of its own', () => {
  const count = fc.integer({ min: 0, max: 200 });
  fc.assert(
    fc.property(
      fc.integer({ min: 8, max: 30 }),
      fc.ipV4(),
      fc.record({ node: count, processor: count, camera: count, tracker: count }),
      (prefixBits, nodes, counts) => {
        const made = numberAnew({ ...defaultAddresses, prefixBits, nodes }, counts);
        const given = (
          [
            [made.nodes, counts.node],
            [made.processors, counts.processor],
            [made.cameras, counts.camera],
            [made.trackers, counts.tracker],
          ] as const
        ).flatMap(([first, many]) => Array.from({ length: many }, (_, i) => readIpv4(first) + i));
        expect(new Set(given).size).toBe(given.length);
        const { firstHost, lastHost } = networkOf(readIpv4(made.nodes), made.prefixBits);
        expect(given.every((address) => address >= firstHost && address <= lastHost)).toBe(true);
        expect(given.every(isPrivateIpv4)).toBe(true);
      },
    ),
  );
});
