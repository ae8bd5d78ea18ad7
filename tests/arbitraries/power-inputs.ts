import { expect } from 'vitest';
import type { Check } from '../../src/calc/chapter';
import { checkPower } from '../../src/calc/power/check-power';
import { computePower, type PowerInputs } from '../../src/calc/power/compute-power';
import type { Power } from '../../src/plan/power';
import { distroOf, powerOf, powerPanel, surfaceOf, surfaceSet } from './power-surfaces';

/** A wall of 36 columns of 10 panels at 230 V on a distro of 48 circuits: 82.38 A a leg. */
export const powerInputs = (changes: Partial<PowerInputs> = {}, power: Partial<Power> = {}): PowerInputs => ({
  power: powerOf({ distroId: 'distro', ...power }),
  distros: [distroOf()],
  panels: [powerPanel('p')],
  surfaces: surfaceSet(surfaceOf({ columns: 36, rows: 10 })),
  signalLoadW: 0,
  ...changes,
});

export const powerChecks = (inputs: PowerInputs): Check[] => checkPower(inputs, computePower(inputs));

export const checkOf = (checks: readonly Check[], id: string) => checks.find((check) => check.id === id);

/** One check of the wall above, with what is changed. */
export const powerCheck = (id: string, changes: Partial<PowerInputs> = {}, power: Partial<Power> = {}) =>
  checkOf(powerChecks(powerInputs(changes, power)), id);

/** The inputs after a fix that sets one field of the power group. */
export function fixedPower(inputs: PowerInputs, from: Check): PowerInputs {
  if (from.fix?.command.name !== 'set-fields') throw new Error('no fix that sets a field');
  const { path, value } = from.fix.command.args.fields[0]!;
  expect(path[0]).toBe('power');
  return { ...inputs, power: { ...inputs.power, [path[1]!]: value } };
}

export const servicePoint = (id: string, legA: number) => ({ id, name: id, legA });
