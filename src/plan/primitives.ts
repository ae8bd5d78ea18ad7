import { z } from 'zod';

/** A stable name inside one plan file: letters, digits and hyphens, never shown to a crew. */
export const id = z
  .string()
  .regex(/^[A-Za-z0-9][A-Za-z0-9-]{0,63}$/, 'an id has letters, digits and hyphens, 1 to 64 of them');

const isOneLine = (text: string) => !/[\p{Cc}\p{Cs}]/u.test(text);

/** Free text on one line. */
export const label = z.string().max(200).refine(isOneLine, 'a line of text has no control characters');
/** A few characters on one line: a revision. */
export const shortLabel = z.string().max(20).refine(isOneLine, 'a line of text has no control characters');
/** Free text on several lines. */
export const longText = z
  .string()
  .max(4000)
  .refine((text) => isOneLine(text.replace(/[\n\t]/g, ' ')), 'a text has no control characters');

const isWholeMicrometres = (mm: number) => Math.abs(mm * 1000 - Math.round(mm * 1000)) < 1e-4;

/** A length in millimetres, whole micrometres, within 1 km either way. */
export const offsetMm = z
  .number()
  .min(-1e6)
  .max(1e6)
  .refine(isWholeMicrometres, 'a length has at most three decimals in mm');
/** A length in millimetres that cannot be negative. */
export const lengthMm = z
  .number()
  .min(0)
  .max(1e6)
  .refine(isWholeMicrometres, 'a length has at most three decimals in mm');
/** A length in millimetres above zero. */
export const sizeMm = z
  .number()
  .min(0.001)
  .max(1e5)
  .refine(isWholeMicrometres, 'a length has at most three decimals in mm');

export const angleDeg = z.number().min(-180).max(180);
/** Angle of one joint between neighbouring columns: positive is concave, the audience is inside. */
export const jointDeg = z.number().min(-90).max(90);
export const share = z.number().min(0).max(1);
export const count = z.int().min(0).max(1e6);
export const amount = z.number().min(0).max(1e12);
export const turnDeg = z.literal([0, 90, 180, 270]);
export const bitDepth = z.literal([8, 10, 12]);
export type BitDepth = z.infer<typeof bitDepth>;
export type TurnDeg = z.infer<typeof turnDeg>;

/** An exact frame rate: 23.976 is 24000 frames in 1001 seconds. */
export const frameRate = z.strictObject({ frames: z.int().min(1).max(1_000_000), seconds: z.int().min(1).max(10_000) });
export type FrameRate = z.infer<typeof frameRate>;

/** A place in the lattice of a surface: column counted inside its segment, from 1; rows from the floor, from 1.
 *  On a ceiling `segmentId` is null and column and row are lattice numbers about its fixed origin (they may be negative). */
export const anchor = z.strictObject({
  surfaceId: id,
  segmentId: id.nullable(),
  column: z.int().min(-10_000).max(10_000),
  row: z.int().min(-10_000).max(10_000),
});
export type Anchor = z.infer<typeof anchor>;
