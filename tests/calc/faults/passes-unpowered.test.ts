import { expect, it } from 'vitest';
import { passesUnpowered } from '../../../src/calc/faults/passes-unpowered';
import { stageFixture } from '../../arbitraries/evaluation-fixture';

const { surfaces } = stageFixture({ columns: 2, rows: 2, jointDeg: 0 });
const [table] = surfaces.surfaces;
const sheet = (id: string, passesUnpowered: boolean) => ({
  id,
  data: { passesUnpowered, chainPanels: null, drivenBy: [] },
});

it('passesUnpowered goes by the sheet of each panel', () => {
  const [type] = table!.types;
  const two = { ...table!, types: [type!, { ...type!, panelId: 'other' }], type: Uint8Array.of(0, 1, 1, 0) };
  const set = { ...surfaces, surfaces: [two] };
  expect([...passesUnpowered(set, [sheet(type!.panelId, false), sheet('other', true)])]).toEqual([0, 1, 1, 0]);
});

it('passesUnpowered takes a panel of no sheet as one that does not', () => {
  expect([...passesUnpowered(surfaces, [])]).toEqual([0, 0, 0, 0]);
});
