import { expect, test } from 'vitest';
import { checkHeldCircuits } from '../../../src/calc/power/check-held-circuits';
import { computePower } from '../../../src/calc/power/compute-power';
import { powerInputs } from '../../arbitraries/power-inputs';

const inputs = powerInputs();
const plain = computePower(inputs);
const chain = (name: string, panel: number) => ({ name, first: panel, last: panel, returnName: null });
const entry = (circuit: number) => plain.order[plain.circuits[circuit]!.start]!;

test('checkHeldCircuits says that names stand, could not stay, or rest', () => {
  expect(checkHeldCircuits([chain('D1-1', entry(0))], plain)).toMatchObject([
    { id: 'power.held-names', severity: 'pass' },
  ]);
  expect(checkHeldCircuits([chain('D9-1', entry(0))], plain)).toMatchObject([
    { id: 'power.held-names', severity: 'watch', where: [{ kind: 'circuit', name: 'circuit D1-1' }] },
  ]);
  expect(checkHeldCircuits([chain('D9-1', -1)], plain)).toMatchObject([
    { id: 'power.held-resting', severity: 'offer' },
  ]);
});

test('computePower names circuits by what is held, keeps them on legs by their numbers, and the service by its distros', () => {
  const held = plain.circuits.map(({ name, distro }, i) => chain(name.replace(/^D\d+/, `D${distro + 4}`), entry(i)));
  const named = computePower({ ...inputs, held });
  expect(named.circuits.map(({ name }) => name)).toEqual(held.map(({ name }) => name));
  expect(named.circuits.map(({ distro }) => distro)).toEqual(plain.circuits.map(({ distro }) => distro + 4));
  expect(named.circuits.map(({ leg }) => leg)).toEqual(plain.circuits.map(({ leg }) => leg));
  expect(named.distros.map(({ number }) => number)).toEqual(plain.distros.map(({ number }) => number + 4));
  expect(named.legs).toEqual(plain.legs);
});
