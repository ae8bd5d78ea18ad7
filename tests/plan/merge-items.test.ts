import { expect, test } from 'vitest';
import type { Catalogue } from '../../src/plan/catalogue';
import { starterCatalogue } from '../../src/plan/catalogue/starter-catalogue';
import { mergeItems } from '../../src/plan/merge-items';

const empty: Catalogue = { panels: [], processors: [], breakouts: [], distros: [], nodes: [], cables: [] };
const ids = (list: readonly { id: string }[]) => list.map(({ id }) => id);

test('mergeItems takes along what an item leans on', () => {
  const { catalogue } = mergeItems(empty, starterCatalogue, ['sedge-19']);
  expect(ids(catalogue.panels)).toEqual(['sedge-19']);
  expect(ids(catalogue.processors)).toEqual(['weir-24', 'culvert-16']);
  expect(ids(catalogue.breakouts)).toEqual(['sluice-8']);
  expect(catalogue.distros).toEqual([]);
});

test('mergeItems takes nothing twice, and then keeps the very catalogue', () => {
  const { catalogue, idOf } = mergeItems(starterCatalogue, structuredClone(starterCatalogue), ['sedge-19', 'mill-4']);
  expect(catalogue).toBe(starterCatalogue);
  expect(idOf.get('sedge-19')).toBe('sedge-19');
});

test('mergeItems gives an id of its own to what means something else here, and references follow', () => {
  const other = structuredClone(starterCatalogue);
  other.breakouts[0]!.ports = 12;
  const { catalogue, idOf } = mergeItems(starterCatalogue, other, ['sedge-19']);
  expect(idOf.get('sluice-8')).toBe('sluice-8-2');
  // The processor leans on the other breakout, and so is another processor; so is the panel that it drives.
  expect(idOf.get('weir-24')).toBe('weir-24-2');
  expect(idOf.get('sedge-19')).toBe('sedge-19-2');
  expect(idOf.get('culvert-16')).toBe('culvert-16');
  const taken = catalogue.panels.find(({ id }) => id === 'sedge-19-2')!;
  expect(taken.data.drivenBy.map(({ processorId }) => processorId)).toEqual(['weir-24-2', 'culvert-16']);
  const weir = catalogue.processors.find(({ id }) => id === 'weir-24-2')!;
  expect(weir.outlets).toMatchObject({ breakoutId: 'sluice-8-2' });
  expect(mergeItems(catalogue, other, ['sedge-19']).catalogue).toBe(catalogue);
});

test('mergeItems keeps ids within their length, and counts on where the next is taken', () => {
  const long = 'a'.repeat(64);
  const node = (id: string, powerW: number) => ({ ...starterCatalogue.nodes[0]!, id, powerW });
  const own = { ...empty, nodes: [node(long, 1), node(`${'a'.repeat(57)}-2`, 2)] };
  const { idOf } = mergeItems(own, { ...empty, nodes: [node(long, 3)] }, [long]);
  expect(idOf.get(long)).toBe(`${'a'.repeat(57)}-3`);
});
