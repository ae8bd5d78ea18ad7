import type { StageMeshes } from '../calc/outputs/stage-meshes';

/** A mesh as text and the file of materials that it names. */
export interface ObjFiles {
  readonly obj: string;
  readonly mtl: string;
}

/**
 * Meshes as OBJ: an object a surface, a quadrilateral a panel, metres with y up; texture coordinates are the surface's
 * canvas with v counted from the bottom, as OBJ has it; a material a node, of the node's name. `materials`: name of the
 * second file. Form: polygons, normals, texture coordinates and materials only; common practice, no source.
 */
export function meshesToObj({ surfaces, nodes }: StageMeshes, materials: string): ObjFiles {
  const nodeName = (node: number) => oneWord(nodes[node]?.name ?? 'no node');
  const lines = [
    '# metres from the origin of the stage, y up; texture coordinates: canvas of the surface; materials: render nodes',
    `mtllib ${materials}`,
  ];
  const used = new Set<string>();
  let vertex = 0;
  let normal = 0;
  for (const { table, mesh } of surfaces) {
    lines.push(`o ${oneWord(`${table.letter} ${table.name}`)}`);
    lines.push(`# canvas ${table.canvasWidth} x ${table.canvasHeight}`);
    const { positions, normals, surfaceUv } = mesh;
    for (let i = 0; i < positions.length; i += 3) {
      lines.push(`v ${metres(positions[i]!)} ${metres(positions[i + 1]!)} ${metres(positions[i + 2]!)}`);
    }
    for (let i = 0; i < surfaceUv.length; i += 2) {
      lines.push(`vt ${share(surfaceUv[i]!)} ${share(1 - surfaceUv[i + 1]!)}`);
    }
    for (let i = 0; i < normals.length; i += 12) {
      lines.push(`vn ${share(normals[i]!)} ${share(normals[i + 1]!)} ${share(normals[i + 2]!)}`);
    }
    for (const { node, start, count } of mesh.parts) {
      lines.push(`usemtl ${nodeName(node)}`);
      used.add(nodeName(node));
      for (let panel = start / 6; panel < (start + count) / 6; panel++) {
        const corners = [1, 2, 3, 4].map((corner) => {
          const at = vertex + panel * 4 + corner;
          return `${at}/${at}/${normal + panel + 1}`;
        });
        lines.push(`f ${corners.join(' ')}`);
      }
    }
    vertex += table.count * 4;
    normal += table.count;
  }
  const mtl = [...used].map((name) => `newmtl ${name}\nKd 0.5 0.5 0.5\nillum 1\n`).join('\n');
  return { obj: `${lines.join('\n')}\n`, mtl };
}

/** To the micrometre. */
const metres = (value: number) => plain(value, 6);
/** A millionth of a pixel on a canvas of a thousand. */
const share = (value: number) => plain(value, 9);

function plain(value: number, decimals: number): string {
  const text = value.toFixed(decimals).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

const oneWord = (name: string) => name.trim().replace(/\s+/g, '_');
