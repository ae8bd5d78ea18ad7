import { expect, test } from 'vitest';
import type { PictureResults } from '../../../src/calc/picture/picture-result';
import { checkCameras } from '../../../src/calc/wish/check-cameras';

const picture = (...pictures: number[]): PictureResults => ({
  pixels: 1,
  rateBps: 1,
  surfaces: pictures.map((count, i) => {
    const mode = { rate: { frames: 24, seconds: 1 }, depthBits: 10 as const, pictures: count };
    return { surfaceId: `s${i}`, letter: 'A', pixels: 1, mode, served: [mode], rateBps: 1 };
  }),
});

test('checkCameras: two cameras on one picture share it, on two pictures they do not', () => {
  expect(checkCameras(2, picture(1))[0]).toMatchObject({ severity: 'offer', measured: 1, limit: 2 });
  expect(checkCameras(2, picture(2, 1))).toEqual([]);
  expect(checkCameras(1, picture(1))).toEqual([]);
});

test('checkCameras of a stage without surfaces says nothing', () => {
  expect(checkCameras(3, picture())).toEqual([]);
});
