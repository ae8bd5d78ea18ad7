import { expect, test } from 'vitest';
import { nextRate } from '../../../src/ui/widgets/next-rate';

const whole = (frames: number) => ({ frames, seconds: 1 });

test('nextRate goes through the usual rates, the slower ones by 1000/1001 included', () => {
  expect(nextRate(whole(24), 1)).toEqual(whole(25));
  expect(nextRate(whole(24), -1)).toEqual({ frames: 24000, seconds: 1001 });
  expect(nextRate({ frames: 30000, seconds: 1001 }, 1)).toEqual(whole(30));
});

test('nextRate from an unusual rate goes to the neighbour, and past the ends stays', () => {
  expect(nextRate(whole(27), 1)).toEqual({ frames: 30000, seconds: 1001 });
  expect(nextRate(whole(240), 1)).toEqual(whole(240));
  expect(nextRate({ frames: 24000, seconds: 1001 }, -1)).toEqual({ frames: 24000, seconds: 1001 });
});
