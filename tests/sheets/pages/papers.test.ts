import { expect, test } from 'vitest';
import { paperById, papers } from '../../../src/sheets/pages/papers';

test('papers are those of ISO 216 and of ANSI/ASME Y14.1', () => {
  // ISO 216: A0 has 1 m2 with sides 1 : sqrt 2; each next size is the last one halved, rounded down to whole mm.
  const halved = (times: number) => {
    let [width, height] = [841, 1189];
    for (let i = 0; i < times; i++) [width, height] = [Math.floor(height / 2), width];
    return { widthMm: width, heightMm: height };
  };
  expect(paperById('a3')).toMatchObject(halved(3));
  expect(paperById('a4')).toMatchObject(halved(4));
  // Sizes A and B: 8.5 x 11 and 11 x 17 inches of 25.4 mm.
  expect(paperById('letter').widthMm).toBeCloseTo(8.5 * 25.4, 9);
  expect(paperById('letter').heightMm).toBeCloseTo(11 * 25.4, 9);
  expect(paperById('tabloid').widthMm).toBeCloseTo(11 * 25.4, 9);
  expect(paperById('tabloid').heightMm).toBeCloseTo(17 * 25.4, 9);
});

test('sheets of the A series have the borders of ISO 5457', () => {
  for (const paper of papers.filter(({ id }) => id.startsWith('a'))) {
    expect([paper.filingMarginMm, paper.marginMm]).toEqual([20, 10]);
  }
  expect(papers.map(({ name }) => name)).toEqual(['A4', 'A3', 'Letter', 'Tabloid']);
});
