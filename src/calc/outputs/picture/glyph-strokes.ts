/** A line through points on a glyph's grid, 4 wide and 6 high, y down. */
export type GlyphStroke = readonly (readonly [x: number, y: number])[];

/** Points of each stroke as pairs of digits, strokes apart by a bar: upright, level and 45 degrees, as a lettering guide has them. */
const strokes: Readonly<Record<string, string>> = {
  A: '06 02 20 42 46|04 44',
  B: '03 00 30 41 42 33 03 06 36 45 44 33',
  C: '41 30 10 01 05 16 36 45',
  D: '00 30 41 45 36 06 00',
  E: '40 00 06 46|03 33',
  F: '40 00 06|03 33',
  G: '41 30 10 01 05 16 36 45 43 23',
  H: '00 06|40 46|03 43',
  I: '10 30|20 26|16 36',
  J: '40 45 36 16 05',
  K: '00 06|40 13 46|03 13',
  L: '00 06 46',
  M: '06 00 22 40 46',
  N: '06 00 01 45 46 40',
  O: '10 30 41 45 36 16 05 01 10',
  P: '06 00 30 41 42 33 03',
  Q: '10 30 41 45 36 16 05 01 10|24 46',
  R: '06 00 30 41 42 33 03|13 46',
  S: '41 30 10 01 02 13 33 44 45 36 16 05',
  T: '00 40|20 26',
  U: '00 05 16 36 45 40',
  V: '00 04 26 44 40',
  W: '00 06 24 46 40',
  X: '00 01 45 46|40 41 05 06',
  Y: '00 01 23 41 40|23 26',
  Z: '00 40 41 05 06 46',
  '0': '10 30 41 45 36 16 05 01 10',
  '1': '11 20 26|16 36',
  '2': '01 10 30 41 42 06 46',
  '3': '01 10 30 41 42 33 23|33 44 45 36 16 05',
  '4': '36 30 03 04 44',
  '5': '40 00 02 32 43 45 36 16 05',
  '6': '30 20 02 05 16 36 45 43 32 02',
  '7': '00 40 41 23 26',
  '8': '10 30 41 42 33 13 02 01 10|33 44 45 36 16 05 04 13',
  '9': '16 26 44 41 30 10 01 03 14 44',
  '-': '13 33',
  '/': '05 41',
  '>': '10 43 16',
  ' ': '',
};

/** What stands for a sign that has no glyph. */
const unknown = '00 40 46 06 00';

/** Strokes of one sign. */
export function glyphStrokes(sign: string): readonly GlyphStroke[] {
  const text = strokes[sign] ?? unknown;
  if (text === '') return [];
  return text
    .split('|')
    .map((stroke) => stroke.split(' ').map((point) => [Number(point[0]), Number(point[1])] as const));
}
