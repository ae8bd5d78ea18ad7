import { degrees, toRadians } from '../../units/angle';

/** Thinnest footprint that is looked at, so that columns of no depth to speak of still cross. */
const THINNEST_MM = 5;

/**
 * Footprints of columns in plan, eight numbers each: front left, front right, back right, back left. A bevelled frame
 * is narrower at its back, by as much as the widest convex joint of the wall asks for.
 */
export function columnFootprints(
  frontMm: Float64Array,
  jointDeg: Float64Array,
  depthMm: number,
  unbevelledMm: number,
): Float64Array {
  const deep = Math.max(depthMm, THINNEST_MM);
  let convex = 0;
  for (let c = 1; c < jointDeg.length; c++) convex = Math.max(convex, -jointDeg[c]!);
  const columns = jointDeg.length;
  const corners = new Float64Array(columns * 8);
  for (let c = 0; c < columns; c++) {
    const x0 = frontMm[c * 4]!;
    const y0 = frontMm[c * 4 + 1]!;
    const x1 = frontMm[c * 4 + 2]!;
    const y1 = frontMm[c * 4 + 3]!;
    const width = Math.sqrt((x1 - x0) ** 2 + (y1 - y0) ** 2);
    const alongX = (x1 - x0) / width;
    const alongY = (y1 - y0) / width;
    const bevel = Math.max(0, deep - unbevelledMm) * Math.tan(toRadians(degrees(convex / 2)));
    const inset = Math.min(0.49 * width, bevel);
    corners.set(
      [
        x0,
        y0,
        x1,
        y1,
        x1 - inset * alongX - deep * alongY,
        y1 - inset * alongY + deep * alongX,
        x0 + inset * alongX - deep * alongY,
        y0 + inset * alongY + deep * alongX,
      ],
      c * 8,
    );
  }
  return corners;
}
