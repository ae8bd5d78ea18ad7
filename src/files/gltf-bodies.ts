import type { PlanBox } from '../sheets/place-hall';
import type { GltfBuffer } from './gltf-buffer';

/** What a body is made of, by its place in the materials of the file. */
const materialOf = { face: 0, body: 1, floor: 2 } as const;

const matt = (name: string, ...rgb: readonly [number, number, number]) => ({
  name,
  pbrMetallicRoughness: { baseColorFactor: [...rgb, 1], metallicFactor: 0, roughnessFactor: 1 },
});

/** LED faces nearly black, backs grey, the floor light: without gloss. */
export const bodyMaterials = [
  matt('LED face', 0.02, 0.02, 0.025),
  matt('Body', 0.35, 0.35, 0.35),
  matt('Floor', 0.7, 0.7, 0.68),
] as const;

interface BoxSize {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly depthMm: number;
}

type Corner = readonly [x: number, y: number, z: number];

/** Source: Khronos, glTF 2.0 (ISO/IEC 12113:2022), 3.7.2.1: primitives that are lines. */
const lines = 1;

/** A panel with the middle of its LED face at the origin, looking along +z; its depth lies behind. */
export function panelMesh(buffer: GltfBuffer, type: BoxSize & { readonly name: string }): object {
  const [front, ...others] = boxSides(type);
  return {
    name: type.name,
    primitives: [flatSides(buffer, [front!], materialOf.face), flatSides(buffer, others, materialOf.body)],
  };
}

/** A plain box, its front at z = 0 and its middle on the z axis. */
export function boxMesh(buffer: GltfBuffer, size: BoxSize): object {
  return { primitives: [flatSides(buffer, boxSides(size), materialOf.body)] };
}

/** A rectangle of the floor. */
export function floorMesh(buffer: GltfBuffer, { leftMm, rightMm, lowMm, highMm }: PlanBox): object {
  const corner = (xMm: number, yMm: number): Corner => [xMm / 1000, 0, 0 - yMm / 1000];
  const side: Side = {
    corners: [corner(leftMm, lowMm), corner(rightMm, lowMm), corner(rightMm, highMm), corner(leftMm, highMm)],
    normal: [0, 1, 0],
  };
  return { primitives: [flatSides(buffer, [side], materialOf.floor)] };
}

/** Edges of a hall as lines: its floor, and where the clear height is stated its posts and the upper edge. */
export function hallMesh(buffer: GltfBuffer, hall: PlanBox, clearHeightMm: number | null): object {
  const heights = clearHeightMm === null ? [0] : [0, clearHeightMm / 1000];
  const foot = [
    [hall.leftMm, hall.lowMm],
    [hall.rightMm, hall.lowMm],
    [hall.rightMm, hall.highMm],
    [hall.leftMm, hall.highMm],
  ] as const;
  const positions = heights.flatMap((y) => foot.flatMap(([xMm, yMm]) => [xMm / 1000, y, 0 - yMm / 1000]));
  const round = heights.flatMap((_, level) => foot.flatMap((_corner, i) => [level * 4 + i, level * 4 + ((i + 1) % 4)]));
  const posts = heights.length === 1 ? [] : foot.flatMap((_corner, i) => [i, 4 + i]);
  const attributes = { POSITION: buffer.putPositions(positions) };
  return { primitives: [{ attributes, indices: buffer.putIndices([...round, ...posts]), mode: lines }] };
}

/** A flat side with its corners counter-clockwise as seen from outside. */
interface Side {
  readonly corners: readonly [Corner, Corner, Corner, Corner];
  readonly normal: Corner;
}

/** The front first. */
function boxSides({ widthMm, heightMm, depthMm }: BoxSize): readonly Side[] {
  const [x, y, z] = [widthMm / 2000, heightMm / 2000, depthMm / 1000];
  const left = [
    [-x, -y, -z],
    [-x, -y, 0],
    [-x, y, 0],
    [-x, y, -z],
  ] as const;
  const right = [
    [x, -y, 0],
    [x, -y, -z],
    [x, y, -z],
    [x, y, 0],
  ] as const;
  return [
    { corners: [left[1], right[0], right[3], left[2]], normal: [0, 0, 1] },
    { corners: [right[1], left[0], left[3], right[2]], normal: [0, 0, -1] },
    { corners: left, normal: [-1, 0, 0] },
    { corners: right, normal: [1, 0, 0] },
    { corners: [left[2], right[3], right[2], left[3]], normal: [0, 1, 0] },
    { corners: [left[0], right[1], right[0], left[1]], normal: [0, -1, 0] },
  ];
}

function flatSides(buffer: GltfBuffer, sides: readonly Side[], material: number): object {
  return {
    attributes: {
      POSITION: buffer.putPositions(sides.flatMap(({ corners }) => corners.flat())),
      NORMAL: buffer.put(
        sides.flatMap(({ normal }) => [normal, normal, normal, normal].flat()),
        3,
      ),
    },
    indices: buffer.putIndices(sides.flatMap((_, i) => [0, 1, 2, 0, 2, 3].map((corner) => i * 4 + corner))),
    material,
  };
}
