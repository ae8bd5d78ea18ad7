import type { Addresses } from '../../plan/addresses';
import type { Check, Place } from '../chapter';
import { setFieldsFix } from '../set-fields-fix';
import { addressField } from './give-addresses';
import { isPrivateIpv4, networkOf, readIpv4 } from './ipv4';
import type { DeviceAddress, DeviceKind } from './node-result';
import { numberAnew } from './number-anew';

/** Whether every device has an address of its own that its network gives to hosts (RFC 791, RFC 4632), of the private ones (RFC 1918). */
export function checkAddresses(addresses: Addresses, devices: readonly DeviceAddress[]): Check[] {
  if (devices.length === 0) return [];
  return [checkUnique(addresses, devices), checkHosts(addresses, devices), checkPrivate(addresses, devices)];
}

const common = { chapter: 'nodes', limit: 0, unit: 'count' } as const;

function checkUnique(addresses: Addresses, devices: readonly DeviceAddress[]): Check {
  const owners = new Map<string, DeviceAddress>();
  const twins: (readonly [DeviceAddress, DeviceAddress])[] = [];
  for (const device of devices) {
    if (device.address === null) continue;
    const owner = owners.get(device.address);
    if (owner === undefined) owners.set(device.address, device);
    else twins.push([owner, device]);
  }
  const [first] = twins;
  const base = { ...common, id: 'nodes.addresses-unique', measured: twins.length };
  if (first === undefined) {
    return { ...base, severity: 'pass', where: [], sentence: 'No two devices have the same address.' };
  }
  return {
    ...base,
    severity: 'watch',
    where: placesOf(twins.flat()),
    sentence: `${first[0].device} and ${first[1].device} have the same address; devices that share one with another: {measured}.`,
    fix: anew(addresses, devices),
  };
}

/** Devices without an address, or with the one of the network itself or of its broadcasts. */
function checkHosts(addresses: Addresses, devices: readonly DeviceAddress[]): Check {
  const odd = devices.filter(({ address }) => address === null || !isHost(readIpv4(address), addresses.prefixBits));
  return checkOdd(addresses, devices, odd, {
    id: 'nodes.addresses-hosts',
    pass: 'Every device has an address of a host of its network.',
    watch: ({ device, address }) =>
      address === null
        ? `The network has no address left from ${device} on; devices without one of a host: {measured}.`
        : `${device} has the address of its network itself or of its broadcasts; devices without one of a host: {measured}.`,
  });
}

function isHost(address: number, prefixBits: number): boolean {
  const { firstHost, lastHost } = networkOf(address, prefixBits);
  return address >= firstHost && address <= lastHost;
}

function checkPrivate(addresses: Addresses, devices: readonly DeviceAddress[]): Check {
  const odd = devices.filter(({ address }) => address !== null && !isPrivateIpv4(readIpv4(address)));
  return checkOdd(addresses, devices, odd, {
    id: 'nodes.addresses-private',
    pass: 'All addresses are private ones.',
    watch: ({ device }) =>
      `${device} has an address that may be somebody else's in the world; devices with one that is not private: {measured}.`,
  });
}

interface Saying {
  readonly id: string;
  readonly pass: string;
  /** Said of the first that is odd. */
  readonly watch: (first: DeviceAddress) => string;
}

function checkOdd(
  addresses: Addresses,
  devices: readonly DeviceAddress[],
  odd: readonly DeviceAddress[],
  { id, pass, watch }: Saying,
): Check {
  const [first] = odd;
  const base = { ...common, id, measured: odd.length };
  if (first === undefined) return { ...base, severity: 'pass', where: [], sentence: pass };
  return { ...base, severity: 'watch', where: placesOf(odd), sentence: watch(first), fix: anew(addresses, devices) };
}

function placesOf(devices: readonly DeviceAddress[]): Place[] {
  return [...new Set(devices.map(({ kind }) => kind))].map((kind) => ({
    kind: 'field',
    name: `addresses.${addressField[kind]}`,
  }));
}

function anew(addresses: Addresses, devices: readonly DeviceAddress[]) {
  const counts: Record<DeviceKind, number> = { node: 0, processor: 0, camera: 0, tracker: 0 };
  for (const { kind } of devices) counts[kind]++;
  const fields = Object.entries(numberAnew(addresses, counts));
  return setFieldsFix(
    'Number all anew',
    'addresses',
    fields.map(([field, value]) => ({ path: ['addresses', field], value })),
  );
}
