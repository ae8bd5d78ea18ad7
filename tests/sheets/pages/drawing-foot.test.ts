import { expect, test } from 'vitest';
import { drawingFoot } from '../../../src/sheets/pages/drawing-foot';
import { outside, textsOf } from './page-boxes';

const options = {
  paperName: 'A4',
  lengths: 'metric',
  format: (mm: number) => `${mm / 1000} m`,
  inks: 'colour',
} as const;
const notes = ['seen from behind'];
const legend = ['L1', 'L2', 'L3', 'not fed', 'a fifth'].map((text, tint) => ({ tint, text }));

test('drawingFoot says the scale and for which paper, the notes, and what the tints stand for', () => {
  const foot = drawingFoot({ notes, legend }, 50, 180, options);
  const items = foot.place(20, 100);
  const said = textsOf(items).join(' ');
  expect(said).toContain('1:50 on A4');
  expect(said).toContain('seen from behind');
  for (const { text } of legend) expect(textsOf(items)).toContain(text);
  expect(outside(items, { leftMm: 19.8, topMm: 100, rightMm: 200, bottomMm: 100.2 + foot.heightMm })).toEqual([]);
});

test('drawingFoot leaves the legend out where tints are', () => {
  const foot = drawingFoot({ notes, legend }, 50, 180, { ...options, inks: 'black' });
  expect(textsOf(foot.place(0, 0))).not.toContain('L1');
  expect(foot.heightMm).toBeLessThan(drawingFoot({ notes, legend }, 50, 180, options).heightMm);
});

test('drawingFoot gives long notes the lines that they need', () => {
  const long = ['a note that goes on and on '.repeat(12)];
  const foot = drawingFoot({ notes: long, legend: [] }, 50, 180, options);
  expect(outside(foot.place(0, 0), { leftMm: -0.2, topMm: 0, rightMm: 180, bottomMm: foot.heightMm + 0.2 })).toEqual(
    [],
  );
});
