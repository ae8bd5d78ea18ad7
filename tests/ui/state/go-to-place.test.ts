import { expect, test } from 'vitest';
import { goToPlace } from '../../../src/ui/state/go-to-place';
import { fakeBench } from './fake-bench';

function after(place: Parameters<typeof goToPlace>[0]) {
  const { store, actions } = fakeBench();
  goToPlace(place, store.getState(), actions);
  return store.getState();
}

test('goToPlace of a field opens the page that owns it and asks for the field', () => {
  expect(after({ kind: 'field', name: 'power.circuit.ratedA' })).toMatchObject({
    page: 'power',
    asked: { field: 'power.circuit.ratedA' },
  });
});

test('goToPlace of a panel, a port and a column picks it', () => {
  expect(after({ kind: 'node', name: 'node N1' }).selection).toMatchObject({ kind: 'part', part: 'node' });
  expect(after({ kind: 'panel', name: 'C3 R2' }).selection).toMatchObject({ kind: 'panel', name: 'C3 R2' });
  expect(after({ kind: 'column', name: 'C3' }).selection).toMatchObject({ kind: 'column', column: 3 });
});

test('goToPlace of a leg opens Power, of a surface shows it, of something gone changes nothing', () => {
  expect(after({ kind: 'leg', name: 'leg L2' })).toMatchObject({ page: 'power', selection: { name: 'leg L2' } });
  expect(after({ kind: 'surface', name: 'A' }).drawing.surfaceId).not.toBeNull();
  expect(after({ kind: 'panel', name: 'C99 R1' })).toMatchObject({ page: 'summary', selection: null });
});
