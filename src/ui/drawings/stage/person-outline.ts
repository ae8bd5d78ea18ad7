/** Outline of a standing adult of 1.75 m, cut from card: points in metres about the feet, right half from the neck down. */
const half = [
  [0.052, 1.49],
  [0.1, 1.465],
  [0.19, 1.43],
  [0.235, 1.3],
  [0.25, 1.05],
  [0.245, 0.8],
  [0.2, 0.78],
  [0.185, 1.02],
  [0.165, 1.2],
  [0.145, 1.02],
  [0.17, 0.88],
  [0.15, 0.48],
  [0.12, 0.07],
  [0.17, 0],
  [0.045, 0],
  [0.04, 0.45],
  [0.012, 0.8],
] as const;

const headRadius = 0.11;
const headHeight = 1.64;

/** The whole outline, closed without repeating the first point. */
export const personOutline: readonly (readonly [number, number])[] = [
  ...Array.from({ length: 17 }, (_, i) => {
    const angle = -0.34 * Math.PI + (i / 16) * 1.68 * Math.PI;
    return [headRadius * Math.cos(angle), headHeight + headRadius * Math.sin(angle)] as const;
  }),
  ...half.map(([x, y]) => [-x, y] as const),
  ...[...half].reverse(),
];
