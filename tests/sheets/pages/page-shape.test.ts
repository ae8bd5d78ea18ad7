import { expect, test } from 'vitest';
import { pageShape } from '../../../src/sheets/pages/page-shape';
import { paperById, papers } from '../../../src/sheets/pages/papers';

test('pageShape keeps the borders of ISO 5457, the filing margin always on the left', () => {
  const a4 = paperById('a4');
  expect(pageShape(a4, 'upright', false)).toMatchObject({
    widthMm: 210,
    heightMm: 297,
    frame: { leftMm: 20, topMm: 10, rightMm: 200, bottomMm: 287 },
  });
  expect(pageShape(a4, 'lying', false)).toMatchObject({
    widthMm: 297,
    heightMm: 210,
    frame: { leftMm: 20, topMm: 10, rightMm: 287, bottomMm: 200 },
  });
});

test('pageShape leaves less of the frame where a caution stands on the title block', () => {
  for (const paper of papers) {
    const plain = pageShape(paper, 'upright', false);
    const cautioned = pageShape(paper, 'upright', true);
    expect(cautioned.body.bottomMm).toBeLessThan(plain.body.bottomMm - 5);
    expect(plain.body.leftMm).toBeGreaterThan(plain.frame.leftMm);
    expect(plain.body.bottomMm).toBeLessThan(plain.frame.bottomMm - 12);
  }
});
