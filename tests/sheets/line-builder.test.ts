import { describe, expect, it } from 'vitest';
import { LineBuilder } from '../../src/sheets/line-builder';
import { polylines } from './polylines';

describe('LineBuilder', () => {
  it('keeps polylines apart and in order', () => {
    const lines = new LineBuilder().segment(0, 0, 10, 0).moveTo(5, 5).lineTo(6, 7).lineTo(5, 9).build();
    expect(polylines(lines)).toEqual([
      [
        [0, 0],
        [10, 0],
      ],
      [
        [5, 5],
        [6, 7],
        [5, 9],
      ],
    ]);
  });
  it('merges points that go straight on, and keeps those that turn or turn back', () => {
    const straight = new LineBuilder()
      .moveTo(0, 0)
      .lineTo(0, 500)
      .lineTo(0, 1000)
      .lineTo(0, 1500)
      .lineTo(500, 1500)
      .build();
    expect(polylines(straight)[0]).toHaveLength(3);
    expect(polylines(new LineBuilder().moveTo(0, 0).lineTo(0, 500).lineTo(0, 200).build())[0]).toHaveLength(3);
  });
  it('never merges across two polylines', () => {
    const lines = new LineBuilder().segment(0, 0, 10, 0).segment(10, 0, 20, 0).build();
    expect(polylines(lines)).toHaveLength(2);
  });
  it('writes whole micrometres', () => {
    const lines = new LineBuilder().segment(1 / 3, 2 / 3, 10 + 1e-9, 0).build();
    expect([...lines.xyMm]).toEqual([0.333, 0.667, 10, 0]);
  });
  it('gives no polylines where nothing was drawn', () => {
    const builder = new LineBuilder();
    expect(builder.isEmpty).toBe(true);
    expect(builder.build().ends).toHaveLength(0);
  });
  it('closes rectangles by their mark, four points each', () => {
    const lines = new LineBuilder().rectangle(0, 0, 4, 2).rectangle(9, 9, 10, 10).build(true);
    expect(lines.closed).toBe(true);
    expect([...lines.ends]).toEqual([4, 8]);
  });
});
