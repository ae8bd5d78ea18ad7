import { expect, test } from 'vitest';
import { startingGrids } from '../../../src/sheets/labels/starting-grids';
import { readViewMemory, usualView, type ViewMemory, writeViewMemory } from '../../../src/ui/storage/view-memory';

function storeWith(text: string | null) {
  let kept = text;
  return {
    getItem: () => kept,
    setItem: (_name: string, next: string) => {
      kept = next;
    },
  };
}

test('readViewMemory gives what was written', () => {
  const memory: ViewMemory = {
    theme: 'dark',
    drawing: { view: 'above', from: 'inside', tint: 'leg', follows: false },
    address: 'https://plan.example/',
    labelGrid: startingGrids[1]!,
    who: 'Ada',
    wayInClosed: true,
  };
  const store = storeWith(null);
  writeViewMemory(store, memory);
  expect(readViewMemory(store)).toEqual(memory);
});

test.each([null, '', '{', 'null', '[]', '{"theme":"pink","drawing":{"view":7}}', '{"drawing":null}'])(
  'readViewMemory of %j is the usual',
  (text) => {
    expect(readViewMemory(storeWith(text))).toEqual(usualView);
  },
);

test('readViewMemory takes a name that a line of text can hold', () => {
  expect(readViewMemory(storeWith('{"who":7}')).who).toBe('');
  expect(readViewMemory(storeWith(JSON.stringify({ who: `A\n${'b'.repeat(99)}` }))).who).toBe(`A${'b'.repeat(59)}`);
});

test('a store that is missing or refuses is no loss', () => {
  const refusing = {
    getItem: (): string => {
      throw new Error('no');
    },
    setItem: () => {
      throw new Error('no');
    },
  };
  expect(readViewMemory(null)).toEqual(usualView);
  expect(readViewMemory(refusing)).toEqual(usualView);
  expect(() => writeViewMemory(refusing, usualView)).not.toThrow();
});
