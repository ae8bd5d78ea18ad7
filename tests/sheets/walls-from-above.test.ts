import { describe, expect, it } from 'vitest';
import { drawWallsFromAbove } from '../../src/sheets/walls-from-above';
import { stageFixture } from '../arbitraries/evaluation-fixture';
import { lengthOf, polylines } from './polylines';

const { walls, zones } = stageFixture({ columns: 4, rows: 2, jointDeg: 0, zoneColumns: 2 });
const named = (layer: string, weight: string) =>
  drawWallsFromAbove(walls, zones, true, 1200).strokes.find((one) => one.layer === layer && one.weight === weight)!;

describe('drawWallsFromAbove', () => {
  it('draws the LED face heavy, over the whole length, with plan y upwards', () => {
    expect(lengthOf(named('wall', 'cut').lines)).toBe(2000);
    expect(polylines(named('wall', 'fine').lines)[0]![2]).toEqual([-500, -90]);
  });
  it('keeps the seams of a curved wall open at the back', () => {
    const ring = stageFixture({ columns: 3, rows: 1, jointDeg: 10 });
    const bodies = polylines(drawWallsFromAbove(ring.walls, [], false, 0).strokes[0]!.lines);
    const [first, second] = [bodies[0]!, bodies[1]!];
    // Fronts touch; backs stand apart by 2 d sin(joint / 2) = 180 sin 5 deg = 15.69 mm.
    expect(Math.hypot(first[1]![0]! - second[0]![0]!, first[1]![1]! - second[0]![1]!)).toBeCloseTo(0, 3);
    expect(Math.hypot(first[2]![0]! - second[3]![0]!, first[2]![1]! - second[3]![1]!)).toBeCloseTo(15.69, 2);
  });
  it('draws the walkway behind the wall and the borders between processors across it', () => {
    expect(polylines(named('hall', 'fine').lines)).toEqual([
      [
        [-1000, -1290],
        [1000, -1290],
      ],
    ]);
    const [border] = polylines(named('zones', 'heavy').lines);
    expect(border!.map(([x]) => x)).toEqual([0, 0]);
    expect(drawWallsFromAbove(walls, zones, true, 0).strokes.some((one) => one.layer === 'hall')).toBe(false);
  });
  it('tints columns by processor only where that is asked for', () => {
    const paints = (tinted: boolean) => drawWallsFromAbove(walls, zones, tinted, 0).fills.map((fill) => fill.paint);
    expect(paints(true)).toEqual(['sheet', 0, 1]);
    expect(paints(false)).toEqual(['sheet']);
  });
  it('numbers columns outside the wall and names processors beyond the walkway', () => {
    const [processors, short, columns] = drawWallsFromAbove(walls, zones, false, 1200).labels;
    expect(columns!.at(0)).toMatchObject({ text: 'C1', xMm: -750, yMm: -90, asideY: -1 });
    expect(columns!.numberOf!(3)).toBe(4);
    // A zone of two columns is 1000 mm long: its whole name of some 90 px wants about 0.09 px a mm.
    expect(processors!.leastScale).toBeCloseTo(0.09, 3);
    expect(short!.at(1)).toMatchObject({ text: 'P2', yMm: -1290 });
    expect(processors!.at(1)).toMatchObject({ text: 'Processor 2', yMm: -1290 });
  });
});
