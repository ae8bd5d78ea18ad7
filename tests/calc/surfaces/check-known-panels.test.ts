import { expect, test } from 'vitest';
import { checkKnownPanels } from '../../../src/calc/surfaces/check-known-panels';
import { plainSurface, plainType, setOf } from '../zones/plain-surface';

const of = (letter: string, panelId: string) =>
  plainSurface({ letter, columns: 1, bands: [{ type: { ...plainType(100), panelId }, rows: 1 }] });
const about = { id: 'masses.some', chapter: 'masses', unit: 'kg', sentence: 'A panel is missing.' } as const;

test('checkKnownPanels stops at the surfaces whose panel is not in the catalogue', () => {
  const surfaces = setOf(of('A', 'here'), of('B', 'gone'), of('C', 'lost'));
  expect(checkKnownPanels({ panels: [{ id: 'here' }], surfaces }, about)).toEqual([
    {
      ...about,
      severity: 'stop',
      measured: null,
      limit: null,
      where: [
        { kind: 'surface', name: 'B' },
        { kind: 'surface', name: 'C' },
      ],
    },
  ]);
});

test('checkKnownPanels says nothing where every panel is known', () => {
  expect(checkKnownPanels({ panels: [{ id: 'here' }], surfaces: setOf(of('A', 'here')) }, about)).toEqual([]);
});
