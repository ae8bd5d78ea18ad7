import type { Phase, Sync } from '../../plan/sync';
import { fanOut } from './fan-out';
import { framePeriodMs } from './frame-period';
import type { Device } from './list-devices';
import type { DeviceAddress, DeviceKind, SyncLine } from './node-result';

const phaseOf = {
  node: 'nodes',
  processor: 'processors',
  camera: 'cameras',
  tracker: 'trackers',
} as const satisfies Record<DeviceKind, keyof Sync['phase']>;

/**
 * Every cable of the sync, from the reference on. Black burst and tri-level go through splitters, as few as give each device an
 * outlet; the precision time protocol goes over the network, where the reference is on the first switch.
 */
export function spreadSync(
  sync: Pick<Sync, 'reference' | 'outletsASplitter' | 'phase'>,
  devices: readonly Device[],
  addresses: readonly DeviceAddress[],
): readonly SyncLine[] {
  if (devices.length === 0) return [];
  const line = (from: string, outlet: number, device: Device): SyncLine => ({
    from,
    outlet,
    to: device.name,
    kind: device.kind,
    ...phaseFigures(sync.phase[phaseOf[device.kind]], framePeriodMs(device.rate)),
  });
  const first = { from: 'Reference', outlet: 1, phaseMs: 0, phaseDegrees: 0 };
  if (sync.reference === 'ptp') {
    return [
      { ...first, to: 'Switch 1', kind: 'switch' },
      ...devices.map((device, i) => line(`Switch ${addresses[i]!.switch}`, addresses[i]!.switchPort, device)),
    ];
  }
  if (devices.length === 1) return [line(first.from, first.outlet, devices[0]!)];
  const tree = fanOut(devices.length, sync.outletsASplitter, sync.outletsASplitter);
  return [
    ...tree.feeds.map(
      (feed, i): SyncLine => ({
        ...first,
        ...(feed === null ? {} : { from: `Splitter ${feed.unit + 1}`, outlet: feed.outlet }),
        to: `Splitter ${i + 1}`,
        kind: 'splitter',
      }),
    ),
    ...devices.map((device, i) => {
      const { unit, outlet } = tree.devices[i]!;
      return line(`Splitter ${unit + 1}`, outlet, device);
    }),
  ];
}

function phaseFigures({ amount, unit }: Phase, periodMs: number): Pick<SyncLine, 'phaseMs' | 'phaseDegrees'> {
  return unit === 'ms'
    ? { phaseMs: amount, phaseDegrees: (amount / periodMs) * 360 }
    : { phaseMs: (amount / 360) * periodMs, phaseDegrees: amount };
}
