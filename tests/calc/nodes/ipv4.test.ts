import { expect, test } from 'vitest';
import { isPrivateIpv4, networkOf, readIpv4, writeIpv4 } from '../../../src/calc/nodes/ipv4';

// RFC 791, section 3.2: an address is 32 bits, written as four numbers of eight bits each.
test.each([
  ['0.0.0.0', 0],
  ['10.20.0.11', 169_082_891],
  ['192.168.1.1', 3_232_235_777],
  ['255.255.255.255', 4_294_967_295],
])('readIpv4 of %s is %d, and writeIpv4 writes it back', (text, address) => {
  expect(readIpv4(text)).toBe(address);
  expect(writeIpv4(address)).toBe(text);
});

// RFC 4632, section 3.1: a prefix of n bits leaves 32 - n for hosts; the lowest names the network, the highest broadcasts.
test.each([
  ['10.20.0.77', 24, '10.20.0.0', '10.20.0.1', '10.20.0.254', '10.20.0.255'],
  ['192.168.10.200', 27, '192.168.10.192', '192.168.10.193', '192.168.10.222', '192.168.10.223'],
  ['172.16.5.9', 30, '172.16.5.8', '172.16.5.9', '172.16.5.10', '172.16.5.11'],
  ['10.255.1.2', 8, '10.0.0.0', '10.0.0.1', '10.255.255.254', '10.255.255.255'],
])('networkOf %s/%d', (text, bits, address, firstHost, lastHost, broadcast) => {
  const network = networkOf(readIpv4(text), bits);
  const written = Object.fromEntries(Object.entries(network).map(([name, value]) => [name, writeIpv4(value)]));
  expect(written).toEqual({ address, firstHost, lastHost, broadcast });
});

// RFC 1918, section 3: 10/8, 172.16/12, 192.168/16.
test.each([
  ['10.0.0.0', true],
  ['10.255.255.255', true],
  ['11.0.0.1', false],
  ['172.15.255.255', false],
  ['172.16.0.1', true],
  ['172.31.255.255', true],
  ['172.32.0.0', false],
  ['192.168.0.1', true],
  ['192.169.0.1', false],
  ['8.8.8.8', false],
])('isPrivateIpv4 of %s is %s', (text, isPrivate) => {
  expect(isPrivateIpv4(readIpv4(text))).toBe(isPrivate);
});
