import type { Addresses } from '../../plan/addresses';
import { addressField } from './give-addresses';
import { isPrivateIpv4, networkOf, readIpv4, writeIpv4 } from './ipv4';
import type { DeviceKind } from './node-result';

const kinds: readonly DeviceKind[] = ['node', 'processor', 'camera', 'tracker'];
const privateNetwork = readIpv4('10.20.0.0');
/** Where a kind starts, if there is room: at 1, 11, 21 and so on. */
const decade = 10;

/**
 * First addresses that put all devices into one private network (RFC 1918), each kind behind the one before. The network stays as
 * large as it is, or becomes as large as it must be; the nodes stay in theirs where it is private.
 */
export function numberAnew(
  addresses: Addresses,
  counts: Readonly<Record<DeviceKind, number>>,
): Pick<Addresses, 'prefixBits' | 'nodes' | 'processors' | 'cameras' | 'trackers'> {
  const total = kinds.reduce((sum, kind) => sum + counts[kind], 0);
  // A network has two addresses that are no host's.
  const prefixBits = Math.min(addresses.prefixBits, 32 - Math.ceil(Math.log2(total + 2)));
  const own = networkOf(readIpv4(addresses.nodes), prefixBits);
  const isOwn = isPrivateIpv4(own.address) && isPrivateIpv4(own.broadcast);
  const network = isOwn ? own : networkOf(privateNetwork, prefixBits);
  const hosts = network.lastHost - network.firstHost + 1;
  const starts = startsOf(counts, decade, hosts) ?? startsOf(counts, 1, hosts)!;
  const first = (kind: DeviceKind) => writeIpv4(network.firstHost + Math.min(starts[kind], hosts - 1));
  return {
    prefixBits,
    [addressField.node]: first('node'),
    [addressField.processor]: first('processor'),
    [addressField.camera]: first('camera'),
    [addressField.tracker]: first('tracker'),
  };
}

/** Place of each kind's first device among the hosts, from 0, in steps of `step`; null where they do not fit. */
function startsOf(
  counts: Readonly<Record<DeviceKind, number>>,
  step: number,
  hosts: number,
): Readonly<Record<DeviceKind, number>> | null {
  const starts = { node: 0, processor: 0, camera: 0, tracker: 0 };
  let next = 0;
  for (const kind of kinds) {
    starts[kind] = Math.ceil(next / step) * step;
    next = starts[kind] + counts[kind];
  }
  return next > hosts ? null : starts;
}
