import { z } from 'zod';
import { angleDeg, id, label, lengthMm, offsetMm, sizeMm, turnDeg } from './primitives';
import { uniqueList } from './unique-list';

const point = z.strictObject({ xMm: offsetMm, yMm: offsetMm });

/** Outline in the ceiling's own axes about its place, before its turn. */
export const outline = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('rectangle'), widthMm: sizeMm, depthMm: sizeMm }),
  z.strictObject({ kind: z.literal('circle'), diameterMm: sizeMm }),
  z.strictObject({ kind: z.literal('polygon'), points: z.array(point).min(3).max(200) }),
]);
export type Outline = z.infer<typeof outline>;

/** An area of a ceiling without panels: for lamps, cables, a hatch. In the ceiling's own axes, from its corner of least x and y. */
export const ceilingHole = z.strictObject({
  id,
  name: label,
  xMm: offsetMm,
  yMm: offsetMm,
  widthMm: sizeMm,
  depthMm: sizeMm,
});
export type CeilingHole = z.infer<typeof ceilingHole>;

/** A ceiling: a lattice of panels of fixed origin clipped to an outline. */
export const ceiling = z.strictObject({
  id,
  letter: z.string().regex(/^[A-Z]$/, 'a surface has one letter, A to Z'),
  name: label,
  panelId: id,
  turnDeg,
  /** The lattice: its origin is a panel corner, or a panel centre along an axis where `centred` says so. */
  place: z.strictObject({
    xMm: offsetMm,
    yMm: offsetMm,
    turnDeg: angleDeg,
    centredAcross: z.boolean(),
    centredAlong: z.boolean(),
  }),
  outline,
  /** Which panels stay: whole panel inside, its centre inside, or any part inside. */
  rule: z.enum(['whole', 'centre', 'any']),
  holes: uniqueList(ceilingHole, 200),
  /** Heights of the LED face above the floor: as planned, lowest and highest of its travel. */
  height: z.strictObject({ trimMm: lengthMm, lowestMm: lengthMm, highestMm: lengthMm }),
});
export type Ceiling = z.infer<typeof ceiling>;
