import { expect, test } from 'vitest';
import { checkWish } from '../../../src/calc/wish/check-wish';
import { wishInputs } from '../../arbitraries/wish-inputs';

test('checkWish passes nothing that nobody stated', () => {
  const checks = checkWish(wishInputs());
  expect(checks.map(({ id, severity, limit }) => [id, severity, limit])).toEqual([
    ['wish.budget', 'offer', null],
    ['wish.stock-not-stated', 'offer', null],
  ]);
});

test('checkWish holds money, counts and cameras to the wish', () => {
  const mode = { rate: { frames: 24, seconds: 1 }, depthBits: 10 as const, pictures: 1 };
  const picture = {
    surfaces: [{ surfaceId: 'wall-1', letter: 'A', pixels: 1, mode, served: [mode], rateBps: 1 }],
    pixels: 1,
    rateBps: 1,
  };
  const stock = [{ itemId: 'a', owned: 0, obtainable: 0 }];
  const checks = checkWish(wishInputs({ budget: 1, stock, camerasAtOnce: 2 }, { picture }));
  expect(checks.map(({ id, severity }) => [id, severity])).toEqual([
    ['wish.budget', 'stop'],
    ['wish.stock.a', 'stop'],
    ['wish.stock-not-stated', 'offer'],
    ['wish.cameras', 'offer'],
  ]);
});
