import { describe, expect, it } from 'vitest';
import { placedPanelType } from '../../../src/calc/surfaces/placed-panel-type';
import { plainPanel } from '../panels/plain-panel';

const tall = plainPanel('tall', { size: { widthMm: 500, heightMm: 1000 }, pixels: { wide: 128, high: 256 } });

describe('placedPanelType', () => {
  it('keeps width, height and pixels at 0 and 180 degrees', () => {
    for (const turnDeg of [0, 180] as const) {
      expect(placedPanelType(tall, turnDeg)).toMatchObject({
        turnDeg,
        widthMm: 500,
        heightMm: 1000,
        depthMm: 80,
        pixelsWide: 128,
        pixelsHigh: 256,
      });
    }
  });

  it('swaps them at 90 and 270 degrees, never the depth', () => {
    for (const turnDeg of [90, 270] as const) {
      expect(placedPanelType(tall, turnDeg)).toMatchObject({
        turnDeg,
        widthMm: 1000,
        heightMm: 500,
        depthMm: 80,
        pixelsWide: 256,
        pixelsHigh: 128,
      });
    }
  });
});
