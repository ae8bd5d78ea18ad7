import { expect, test } from 'vitest';
import { giveAddresses } from '../../../src/calc/nodes/give-addresses';
import type { Device } from '../../../src/calc/nodes/list-devices';
import type { DeviceKind } from '../../../src/calc/nodes/node-result';
import { defaultAddresses } from '../../../src/plan/addresses';

const devices = (...kinds: DeviceKind[]): Device[] =>
  kinds.map((kind, i) => ({ name: `${kind} ${i}`, kind, rate: { frames: 25, seconds: 1 } }));

test('giveAddresses counts each kind on from its first address', () => {
  const given = giveAddresses(defaultAddresses, devices('node', 'node', 'processor', 'camera', 'tracker'), false);
  expect(given.map(({ address }) => address)).toEqual([
    '10.20.0.11',
    '10.20.0.12',
    '10.20.0.101',
    '10.20.0.201',
    '10.20.0.221',
  ]);
});

test('giveAddresses has none left behind the last host of the network', () => {
  // 192.168.0.0/30 has two hosts, .1 and .2.
  const small = { ...defaultAddresses, prefixBits: 30, nodes: '192.168.0.1' };
  expect(giveAddresses(small, devices('node', 'node', 'node'), false).map(({ address }) => address)).toEqual([
    '192.168.0.1',
    '192.168.0.2',
    null,
  ]);
});

test('giveAddresses fills one switch and joins the next by a port of each', () => {
  const four = { ...defaultAddresses, portsASwitch: 4 };
  const places = (count: number, hasClock: boolean) =>
    giveAddresses(four, devices(...new Array<DeviceKind>(count).fill('node')), hasClock).map((device) => [
      device.switch,
      device.switchPort,
    ]);
  expect(places(4, false)).toEqual([
    [1, 1],
    [1, 2],
    [1, 3],
    [1, 4],
  ]);
  // Five: port 1 of the first leads to port 1 of the second.
  expect(places(5, false)).toEqual([
    [1, 2],
    [1, 3],
    [1, 4],
    [2, 2],
    [2, 3],
  ]);
  // The clock takes port 1 of the first.
  expect(places(3, true)).toEqual([
    [1, 2],
    [1, 3],
    [1, 4],
  ]);
});
