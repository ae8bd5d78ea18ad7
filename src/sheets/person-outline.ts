/** Height of the person who stands in drawings for scale. Common practice, no source. */
export const personMm = 1750;

/** Outline of a standing person, feet at (0, 0), y down, as points x0 y0 x1 y1 ... in mm: a head and a body, each closed. */
export const personOutline: readonly (readonly number[])[] = [
  [-70, -1750, 70, -1750, 105, -1680, 95, -1570, 40, -1510, -40, -1510, -95, -1570, -105, -1680],
  [
    ...[-60, -1490, 60, -1490, 210, -1430, 240, -1000, 225, -780, 180, -780, 165, -1150, 150, -820, 130, 0, 20, 0],
    ...[0, -760, -20, 0, -130, 0, -150, -820, -165, -1150, -180, -780, -225, -780, -240, -1000, -210, -1430],
  ],
];
