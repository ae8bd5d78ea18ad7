import { mapPixels } from '../calc/outputs/map-pixels';
import type { OutputsInputs } from '../calc/outputs/outputs-inputs';
import { paintTestPicture } from '../calc/outputs/picture/paint-test-picture';
import type { TestPictureInputs } from '../calc/outputs/picture/test-picture-inputs';
import { stageMeshes } from '../calc/outputs/stage-meshes';
import { schedulePixelMap } from '../sheets/schedule-pixel-map';
import type { NamedFile } from './files-to-zip';
import { gltfDocument } from './gltf-document';
import { gltfToGlb } from './gltf-to-glb';
import { meshesToObj } from './meshes-to-obj';
import { outputNotes } from './output-notes';
import { rasterToPng } from './raster-to-png';
import { scheduleToDataCsv } from './schedule-to-data-csv';
import { stageGltf } from './stage-gltf';

/** A file of the set, and the share of the work that is done with it. */
export interface FileMade {
  readonly file: NamedFile;
  readonly done: number;
}

export const fileNames = {
  map: 'pixel-map.csv',
  glb: 'stage.glb',
  obj: 'stage.obj',
  mtl: 'stage.mtl',
  stage: 'whole-stage.glb',
  notes: 'read-me.txt',
};

/** Pixel map of every panel. */
export function mapFile(inputs: OutputsInputs): NamedFile {
  return { name: fileNames.map, bytes: encode(scheduleToDataCsv(schedulePixelMap(inputs, inputs.fed))) };
}

/** Geometry of every surface, as glTF and as OBJ. `title` is the scene's name. */
export function meshFiles({ surfaces, zones, fed }: OutputsInputs, title: string): NamedFile[] {
  const meshes = stageMeshes(surfaces, mapPixels(surfaces, zones, fed), fed);
  const { obj, mtl } = meshesToObj(meshes, fileNames.mtl);
  return [
    { name: fileNames.glb, bytes: gltfToGlb(gltfDocument(meshes, title)) },
    { name: fileNames.obj, bytes: encode(obj) },
    { name: fileNames.mtl, bytes: encode(mtl) },
  ];
}

/** The whole stage with a node for each panel, as glTF. `title` is the scene's name. */
export function stageFile(...stage: Parameters<typeof stageGltf>): NamedFile {
  return { name: fileNames.stage, bytes: gltfToGlb(stageGltf(...stage)) };
}

/** Test pictures of all nodes, one at a time: in 8 bits, and in 16 where the node sends more than 8. */
export function* pictureFiles(inputs: OutputsInputs): Generator<FileMade> {
  const painting = paintingInputs(inputs);
  const { nodes } = inputs.fed;
  for (const [index, { name, mode }] of nodes.entries()) {
    const raster = paintTestPicture(painting, index);
    const done = (index + 1) / nodes.length;
    const isDeep = mode.depthBits > 8;
    const file = { name: `pictures/${name}.png`, bytes: rasterToPng(raster, 8) };
    yield { file, done: isDeep ? done - 0.5 / nodes.length : done };
    if (isDeep) yield { file: { name: `pictures-16-bit/${name}.png`, bytes: rasterToPng(raster, 16) }, done };
  }
}

/** Test picture of one node, in 8 or 16 bits. Throws where there is no such node. */
export function pictureFile(inputs: OutputsInputs, node: number, bits: 8 | 16): NamedFile {
  const bytes = rasterToPng(paintTestPicture(paintingInputs(inputs), node), bits);
  return { name: `${inputs.fed.nodes[node]!.name}${bits === 16 ? ' 16 bit' : ''}.png`, bytes };
}

/** Everything that a crew and a render engine start from: notes, pixel map, geometry and pictures. */
export function* outputSet(inputs: OutputsInputs, title: string): Generator<FileMade> {
  const first: NamedFile[] = [
    { name: fileNames.notes, bytes: encode(outputNotes(inputs.fed.nodes, title)) },
    mapFile(inputs),
    ...meshFiles(inputs, title),
  ];
  for (const file of first) yield { file, done: 0 };
  yield* pictureFiles(inputs);
}

function paintingInputs({ surfaces, zones, runs, fed }: OutputsInputs): TestPictureInputs {
  return { surfaces, zones, runs, nodes: fed.nodes, map: mapPixels(surfaces, zones, fed) };
}

const encode = (text: string) => new TextEncoder().encode(text);
