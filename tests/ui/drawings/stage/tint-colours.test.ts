import { expect, it } from 'vitest';
import { noTint } from '../../../../src/sheets/tint-panels';
import { tintColours } from '../../../../src/ui/drawings/stage/tint-colours';

it('tintColours gives each panel of a surface its tint, and plain card to those without one', () => {
  const palette = [
    [1, 0, 0],
    [0, 1, 0],
  ] as const;
  const tints = Uint8Array.of(9, 0, 1, noTint, 7);
  const colours = tintColours(tints, 1, 4, palette, [0.5, 0.5, 0.5]);
  expect([...colours]).toEqual([1, 0, 0, 0, 1, 0, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5]);
});
