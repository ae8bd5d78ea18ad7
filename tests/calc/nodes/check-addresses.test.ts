import { describe, expect, test } from 'vitest';
import { checkAddresses } from '../../../src/calc/nodes/check-addresses';
import { giveAddresses } from '../../../src/calc/nodes/give-addresses';
import type { Device } from '../../../src/calc/nodes/list-devices';
import { setFieldsIn } from '../../../src/calc/set-fields-in';
import { type Addresses, defaultAddresses } from '../../../src/plan/addresses';

const rate = { frames: 25, seconds: 1 };
const devices: Device[] = [
  { name: 'N1', kind: 'node', rate },
  { name: 'N2', kind: 'node', rate },
  { name: 'P1', kind: 'processor', rate },
  { name: 'Camera 1', kind: 'camera', rate },
];
const checks = (addresses: Addresses) => checkAddresses(addresses, giveAddresses(addresses, devices, false));

/** The check once its fix is applied. */
function mended(addresses: Addresses, id: string) {
  const check = checks(addresses).find((one) => one.id === id)!;
  const { fields } = check.fix!.command.args as { fields: { path: (string | number)[]; value: unknown }[] };
  const after = checks(setFieldsIn({ addresses }, fields).addresses);
  return { check, severities: after.map(({ severity }) => severity) };
}

describe('checkAddresses', () => {
  test('passes the addresses of a new plan', () => {
    expect(checks(defaultAddresses).map(({ severity, measured }) => [severity, measured])).toEqual([
      ['pass', 0],
      ['pass', 0],
      ['pass', 0],
    ]);
    expect(checkAddresses(defaultAddresses, [])).toEqual([]);
  });

  test('watches an address given twice, and the fix numbers all anew', () => {
    const { check, severities } = mended({ ...defaultAddresses, processors: '10.20.0.12' }, 'nodes.addresses-unique');
    expect(check).toMatchObject({ severity: 'watch', measured: 1, limit: 0 });
    expect(check.sentence).toContain('N2 and P1');
    expect(check.where).toEqual([
      { kind: 'field', name: 'addresses.nodes' },
      { kind: 'field', name: 'addresses.processors' },
    ]);
    expect(severities).toEqual(['pass', 'pass', 'pass']);
  });

  // RFC 4632: the lowest address names the network, the highest broadcasts.
  test.each([
    ['10.20.0.0', 'N1'],
    ['10.20.0.255', 'N1'],
    ['10.20.0.254', 'N2'],
  ])('watches nodes from %s on: %s has no host address', (nodes, name) => {
    const { check, severities } = mended({ ...defaultAddresses, nodes }, 'nodes.addresses-hosts');
    expect(check.severity).toBe('watch');
    expect(check.sentence).toContain(name);
    expect(severities).toEqual(['pass', 'pass', 'pass']);
  });

  test('watches addresses that are not of the private blocks', () => {
    const { check, severities } = mended({ ...defaultAddresses, cameras: '8.8.8.8' }, 'nodes.addresses-private');
    expect(check).toMatchObject({ severity: 'watch', measured: 1 });
    expect(severities).toEqual(['pass', 'pass', 'pass']);
  });
});
