import { expect, test } from 'vitest';
import { giveAddresses } from '../../../src/calc/nodes/give-addresses';
import type { Device } from '../../../src/calc/nodes/list-devices';
import type { DeviceKind } from '../../../src/calc/nodes/node-result';
import { spreadSync } from '../../../src/calc/nodes/spread-sync';
import { defaultAddresses } from '../../../src/plan/addresses';
import { defaultSync } from '../../../src/plan/sync';

const device = (name: string, kind: DeviceKind, frames = 25): Device => ({ name, kind, rate: { frames, seconds: 1 } });
const devices = [device('N1', 'node'), device('P1', 'processor'), device('Camera 1', 'camera', 50)];
const addresses = giveAddresses(defaultAddresses, devices, true);
const ends = (lines: ReturnType<typeof spreadSync>) => lines.map(({ from, outlet, to }) => `${from} ${outlet} > ${to}`);

test('spreadSync leads the reference through a splitter to every device', () => {
  expect(ends(spreadSync(defaultSync, devices, addresses))).toEqual([
    'Reference 1 > Splitter 1',
    'Splitter 1 1 > N1',
    'Splitter 1 2 > P1',
    'Splitter 1 3 > Camera 1',
  ]);
});

test('spreadSync adds splitters where outlets are short, and none for a single device', () => {
  expect(ends(spreadSync({ ...defaultSync, outletsASplitter: 2 }, devices, addresses))).toEqual([
    'Reference 1 > Splitter 1',
    'Splitter 1 1 > Splitter 2',
    'Splitter 1 2 > N1',
    'Splitter 2 1 > P1',
    'Splitter 2 2 > Camera 1',
  ]);
  expect(ends(spreadSync(defaultSync, devices.slice(0, 1), addresses))).toEqual(['Reference 1 > N1']);
  expect(spreadSync(defaultSync, [], [])).toEqual([]);
});

test('spreadSync by the precision time protocol needs ports of the network and no splitter', () => {
  expect(ends(spreadSync({ ...defaultSync, reference: 'ptp' }, devices, addresses))).toEqual([
    'Reference 1 > Switch 1',
    'Switch 1 2 > N1',
    'Switch 1 3 > P1',
    'Switch 1 4 > Camera 1',
  ]);
});

test('spreadSync gives phase in milliseconds and in degrees of a frame', () => {
  const phase = {
    nodes: { amount: 10, unit: 'ms' as const },
    processors: { amount: -90, unit: 'degrees' as const },
    cameras: { amount: 180, unit: 'degrees' as const },
    trackers: { amount: 0, unit: 'ms' as const },
  };
  const lines = spreadSync({ ...defaultSync, phase }, devices, addresses);
  // A frame of 25 a second is 40 ms: 10 ms are a quarter of it; a frame of 50 a second is 20 ms.
  expect(lines.map(({ to, phaseMs, phaseDegrees }) => [to, phaseMs, phaseDegrees])).toEqual([
    ['Splitter 1', 0, 0],
    ['N1', 10, 90],
    ['P1', -10, -90],
    ['Camera 1', 10, 180],
  ]);
});
