import { panelPose } from '../calc/outputs/panel-pose';
import { panelName } from '../calc/surfaces/panel-at';
import type { SurfaceTable } from '../calc/surfaces/surface-table';
import { findOpening } from '../sheets/find-opening';
import { placeHall } from '../sheets/place-hall';
import type { StageParts } from '../sheets/stage-parts';
import { vehicleBoxes } from '../sheets/vehicle-boxes';
import { bodyMaterials, boxMesh, floorMesh, hallMesh, panelMesh } from './gltf-bodies';
import { createGltfBuffer } from './gltf-buffer';
import type { GltfDocument } from './gltf-document';
import { stageGround } from './stage-ground';
import { surfaceName } from './surface-name';

type GltfParts = Pick<StageParts, 'surfaces' | 'walls' | 'hall' | 'vehicle'>;

interface GltfNode {
  readonly name: string;
  readonly mesh?: number;
  readonly children?: readonly number[];
  readonly translation?: readonly number[];
  readonly rotation?: readonly number[];
}

/** How far before the opening the vehicle stands. */
const beforeMm = 1500;

/**
 * The whole stage for another program: under a node for each surface one for each panel, of its full name and with its depth; the
 * floor, the outline of the hall where it is stated, and before the opening the vehicle that must drive in, if wished. Metres from
 * the stage's origin, y up. Source: Khronos, glTF 2.0 (ISO/IEC 12113:2022).
 */
export function stageGltf(parts: GltfParts, title: string, withVehicle: boolean): GltfDocument {
  const buffer = createGltfBuffer();
  const meshes: object[] = [];
  const nodes: GltfNode[] = [];
  const roots: number[] = [];
  const addMesh = (mesh: object) => meshes.push(mesh) - 1;
  const add = (node: GltfNode) => nodes.push(node) - 1;

  const meshOf = panelMeshes((type) => addMesh(panelMesh(buffer, type)));
  for (const table of parts.surfaces.surfaces) {
    if (table.count === 0) continue;
    const children = Array.from({ length: table.count }, (_, local) =>
      add({
        name: panelName(parts.surfaces, table, table.column[local]!, table.row[local]!),
        mesh: meshOf(table, local),
        ...panelPose(table, local),
      }),
    );
    roots.push(add({ name: surfaceName(table), children }));
  }
  const hall = placeHall(parts.hall, parts.walls);
  roots.push(add({ name: 'Floor', mesh: addMesh(floorMesh(buffer, stageGround(parts.surfaces, hall))) }));
  if (hall !== null) {
    roots.push(add({ name: 'Hall', mesh: addMesh(hallMesh(buffer, hall, parts.hall.clearHeightMm)) }));
  }
  const opening = withVehicle ? findOpening(parts.walls) : null;
  if (opening !== null) {
    const { middle, outX, outY } = opening;
    const children = vehicleBoxes(parts.vehicle).map(({ fromMm, longMm, wideMm, highMm, clearMm }, i) =>
      add({
        name: i === 0 ? 'Cab' : 'Body',
        mesh: addMesh(boxMesh(buffer, { widthMm: wideMm, heightMm: highMm, depthMm: longMm })),
        translation: [0, (clearMm + highMm / 2) / 1000, -fromMm / 1000 + 0],
      }),
    );
    // Its nose looks along +z: out of the stage is plan (outX, outY), so +z is to be (-outX, 0, outY).
    const half = Math.atan2(-outX, outY) / 2;
    roots.push(
      add({
        name: 'Vehicle',
        children,
        translation: [(middle.xMm + outX * beforeMm) / 1000, 0, -(middle.yMm + outY * beforeMm) / 1000],
        rotation: [0, Math.sin(half), 0, Math.cos(half)],
      }),
    );
  }
  return {
    buffer: buffer.values,
    json: {
      asset: { version: '2.0', generator: 'Voussoir' },
      scene: 0,
      scenes: [{ name: title, nodes: roots }],
      nodes,
      meshes,
      materials: bodyMaterials,
      ...buffer.json(),
    },
  };
}

/** Panels of one size share a mesh. */
function panelMeshes(add: (type: SurfaceTable['types'][number]) => number) {
  const known = new Map<string, number>();
  return (table: SurfaceTable, local: number): number => {
    const type = table.types[table.type[local]!]!;
    const key = `${type.panelId} ${type.widthMm} ${type.heightMm} ${type.depthMm}`;
    const index = known.get(key) ?? add(type);
    known.set(key, index);
    return index;
  };
}
