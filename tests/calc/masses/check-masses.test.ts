import { describe, expect, it } from 'vitest';
import { checkMasses } from '../../../src/calc/masses/check-masses';
import { computeMasses, type MassesInputs } from '../../../src/calc/masses/compute-masses';
import { massesInputs } from '../../arbitraries/masses-inputs';

const check = (inputs: MassesInputs) => checkMasses(inputs, computeMasses(inputs));

describe('checkMasses', () => {
  it('masses.floor: not stated is an offer, and an engineer decides', () => {
    const [floor] = check(massesInputs());
    expect(floor).toMatchObject({ id: 'masses.floor', severity: 'offer', limit: null, unit: 'kPa' });
    expect(floor!.sentence).toContain('A structural engineer decides');
  });

  it('masses.floor: 2.82 kPa pass at 2.9 and stop at 2.8', () => {
    expect(check(massesInputs({}, { floorKpa: 2.9 }))[0]!.severity).toBe('pass');
    expect(check(massesInputs({}, { floorKpa: 2.8 }))[0]!.severity).toBe('stop');
  });

  it('masses.floor: larger plates clear it', () => {
    const inputs = massesInputs({}, { floorKpa: 1 });
    const command = check(inputs)[0]!.fix!.command;
    if (command.name !== 'set-fields') throw new Error('another command');
    expect(command.args.fields).toEqual([{ path: ['masses', 'plateAreaM2'], value: 0.71 }]); // 72 x 9.80665 / 1000 = 0.706
    const plateAreaM2 = command.args.fields[0]!.value as number;
    expect(check(massesInputs({}, { floorKpa: 1, plateAreaM2 }))[0]!.severity).toBe('pass');
  });

  it('masses.floor offers no plates where none are large enough', () => {
    expect(check(massesInputs({}, { floorKpa: 0 }))[0]).not.toHaveProperty('fix');
    expect(check(massesInputs({}, { floorKpa: 0.35 }))[0]).not.toHaveProperty('fix');
  });

  it('masses.panel-unknown stops where the catalogue does not have a panel', () => {
    expect(check(massesInputs({ panels: [] }))[0]).toMatchObject({ id: 'masses.panel-unknown', severity: 'stop' });
  });

  it('says nothing of the floor where nothing stands on it', () => {
    expect(check(massesInputs({ walls: [] }))).toEqual([]);
  });
});
