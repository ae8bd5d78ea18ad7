import type { Addresses } from '../../plan/addresses';
import { fanOut } from './fan-out';
import { networkOf, readIpv4, writeIpv4 } from './ipv4';
import type { Device } from './list-devices';
import type { DeviceAddress, DeviceKind } from './node-result';

/** The field of the plan that holds the first address of a kind of device. */
export const addressField = {
  node: 'nodes',
  processor: 'processors',
  camera: 'cameras',
  tracker: 'trackers',
} as const satisfies Record<DeviceKind, keyof Addresses>;

/**
 * An address and a port of a switch for every device: addresses of a kind follow its first one up to the last host of that network.
 * Switches are joined port to port, as few as have ports enough; `hasClock` keeps the very first port for the reference of the sync.
 */
export function giveAddresses(
  addresses: Addresses,
  devices: readonly Device[],
  hasClock: boolean,
): readonly DeviceAddress[] {
  const clocks = hasClock ? 1 : 0;
  const switches = fanOut(devices.length, addresses.portsASwitch - clocks, addresses.portsASwitch - 1);
  const given = new Map<DeviceKind, number>();
  return devices.map(({ name, kind }, i) => {
    const { unit, outlet } = switches.devices[i]!;
    const before = given.get(kind) ?? 0;
    given.set(kind, before + 1);
    const first = readIpv4(addresses[addressField[kind]]);
    const address = first + before;
    const isThere = address <= networkOf(first, addresses.prefixBits).lastHost || before === 0;
    return {
      device: name,
      kind,
      address: isThere ? writeIpv4(address) : null,
      switch: unit + 1,
      // Port 1 of every switch but the first leads back to the one that feeds it.
      switchPort: outlet + (unit === 0 ? clocks : 1),
    };
  });
}
