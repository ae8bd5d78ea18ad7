import { networkOf, readIpv4, writeIpv4 } from '../calc/nodes/ipv4';
import type { NodesResults } from '../calc/nodes/node-result';
import { counted } from '../units/counted';
import type { Schedule } from './schedule';
import { figures, words } from './schedule-column';

/** Addresses: a row for each device with its network and its port on a switch. */
export function scheduleAddresses(prefixBits: number, devices: NodesResults['addresses']): Schedule {
  const network = (address: string) => `${writeIpv4(networkOf(readIpv4(address), prefixBits).address)}/${prefixBits}`;
  return {
    id: 'addresses',
    title: 'Addresses by device',
    columns: [
      words('device', 'Device'),
      words('address', 'Address'),
      words('network', 'Network'),
      figures('switch', 'Switch', 'count'),
      figures('port', 'Port', 'count'),
    ],
    count: devices.length,
    row: (index) => {
      const { device, address, switch: number, switchPort } = devices[index]!;
      return [device, address ?? 'none left', address === null ? null : network(address), number, switchPort];
    },
    panelOf: () => null,
    totals: [
      counted(devices.length, 'device'),
      null,
      null,
      counted(Math.max(0, ...devices.map((device) => device.switch)), 'switch', 'switches'),
      null,
    ],
  };
}
