import { expect, test } from 'vitest';
import { paintGround, rampRows } from '../../../../src/calc/outputs/picture/paint-ground';
import { panelLayout } from '../../../../src/calc/outputs/picture/panel-layout';
import { groundOfRun, pictureInks, picturePalette, rampInk } from '../../../../src/calc/outputs/picture/picture-inks';
import { newRaster } from '../../../../src/calc/outputs/raster';

const spot = { panel: 0, x: 10, y: 20, width: 60, height: 60 };
const paint = (run: number, onSurface = { x: 10, y: 20 }, size = { width: 100, height: 100 }) => {
  const raster = newRaster(size.width, size.height, picturePalette());
  paintGround(raster, spot, onSurface, run, 20, rampRows(size.width));
  return { raster, ink: (x: number, y: number) => raster.inks[y * size.width + x]! };
};

test('paintGround fills the panel and nothing beside it', () => {
  const { raster, ink } = paint(0);
  for (let y = 0; y < 100; y++) {
    for (let x = 0; x < 100; x++) {
      const inside = x >= 10 && x < 70 && y >= 20 && y < 80;
      if (!inside) expect(ink(x, y)).toBe(pictureInks.blank);
    }
  }
  expect(raster.inks).toContain(groundOfRun(0).ground);
});

test('paintGround hatches where x + y or x - y of the surface is a whole number of pitches', () => {
  const onSurface = { x: 1013, y: 507 };
  const { ink } = paint(2, onSurface);
  const { rampY } = panelLayout(60, 60);
  for (let row = 0; row < rampY; row++) {
    for (let across = 0; across < 60; across++) {
      const [x, y] = [onSurface.x + across, onSurface.y + row];
      const isLine = (x + y) % 20 === 0 || (x - y) % 20 === 0;
      const { ground, hatch } = groundOfRun(2);
      expect(ink(10 + across, 20 + row)).toBe(isLine ? hatch : ground);
    }
  }
});

test('paintGround ends with the ramps: the level is that of the pixel’s place on the whole canvas', () => {
  const { ink } = paint(0);
  const { rampY, rampStripe } = panelLayout(60, 60);
  const y = 20 + rampY;
  // 1024 levels over 100 px: pixel 50 is level 512, pixel 69 level 706.
  expect(ink(50, y)).toBe(rampInk('grey', 512));
  expect(ink(50, y + 2 * rampStripe)).toBe(rampInk('red', 512));
  expect(ink(50, y + 3 * rampStripe)).toBe(rampInk('green', 512));
  expect(ink(69, y + 4 * rampStripe)).toBe(rampInk('blue', 706));
});

test('rampRows run from black to full, and on a wide canvas through every one of 1024 levels', () => {
  const { grey } = rampRows(2880);
  expect([grey[0], grey.at(-1)]).toEqual([rampInk('grey', 0), rampInk('grey', 1023)]);
  expect(new Set(grey).size).toBe(1024);
});

test('paintGround of a panel on no run has a ground of its own', () => {
  expect(paint(-1).raster.inks).toContain(pictureInks.idleGround);
});

test('paintGround on a canvas that is too small keeps what fits, and wraps nothing round', () => {
  const { raster, ink } = paint(0, { x: 10, y: 20 }, { width: 40, height: 50 });
  expect(raster.inks.length).toBe(2000);
  for (let y = 20; y < 50; y++) for (let x = 0; x < 10; x++) expect(ink(x, y)).toBe(pictureInks.blank);
  expect(ink(39, 49)).not.toBe(pictureInks.blank);
});
