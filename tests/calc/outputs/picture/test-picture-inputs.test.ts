import { expect, test } from 'vitest';
import { pictureSpot } from '../../../../src/calc/outputs/picture/test-picture-inputs';
import { cornerPicture } from '../corner-stage';

test('pictureSpot is the rectangle of a panel on the canvas of its node, on whichever surface', () => {
  expect(pictureSpot(cornerPicture, 0)).toEqual({ panel: 0, x: 0, y: 100, width: 100, height: 200 });
  expect(pictureSpot(cornerPicture, 3)).toEqual({ panel: 3, x: 0, y: 0, width: 100, height: 100 });
  expect(pictureSpot(cornerPicture, 4)).toEqual({ panel: 4, x: 0, y: 100, width: 100, height: 100 });
});
