import type { Evaluation } from '../calc/evaluation';
import { mapPixels } from '../calc/outputs/map-pixels';
import { paintTestPicture } from '../calc/outputs/picture/paint-test-picture';
import type { Plan } from '../plan/plan';
import { listSchedules } from '../sheets/list-schedules';
import { outputsOf } from '../sheets/outputs-of';
import { stageParts } from '../sheets/stage-parts';
import { filesToZip, type NamedFile } from './files-to-zip';
import { fileNames, mapFile, meshFiles, stageFile } from './output-set';
import { rasterToPng } from './raster-to-png';
import { scheduleToCsv } from './schedule-to-csv';

/** How large a file will be. */
export interface FileSize {
  readonly of: 'set' | 'map' | 'gltf' | 'obj' | 'stage' | 'schedules' | `picture ${number} ${8 | 16}`;
  readonly bytes: number;
  /** False where it is estimated. */
  readonly isExact: boolean;
}

/** A spreadsheet beside the same tables as CSV, and what each sheet takes besides: measured on the samples and on 20,000 panels. */
const workbookShare = 0.82;
const sheetBytes = 1150;

/**
 * What can be saved of a plan, by its size: of what is quickly made the exact one, of pictures what the first of them takes by its
 * pixels, and of the whole set what these come to.
 */
export function* measureFiles(plan: Plan, evaluation: Evaluation): Generator<FileSize, undefined> {
  const outputs = outputsOf(evaluation);
  const map = mapFile(outputs);
  const meshes = meshFiles(outputs, plan.name);
  const isGlb = ({ name }: NamedFile) => name === fileNames.glb;
  yield exact('map', map.bytes.length);
  yield exact('gltf', meshes.find(isGlb)!.bytes.length);
  yield exact('obj', filesToZip(meshes.filter((mesh) => !isGlb(mesh))).length);
  yield exact('stage', stageFile(stageParts(plan, evaluation), plan.name, false).bytes.length);
  const tables = listSchedules(plan, evaluation).map(({ schedule }) => scheduleToCsv(schedule, plan.currency).length);
  yield {
    of: 'schedules',
    bytes: Math.round(workbookShare * sum(tables)) + sheetBytes * tables.length,
    isExact: false,
  };
  const pictures = [...measurePictures(outputs)];
  yield* pictures;
  const inSet = pictures.filter(({ of }, i) => of.endsWith(' 8') || outputs.fed.nodes[i >> 1]!.mode.depthBits > 8);
  yield {
    of: 'set',
    bytes: filesToZip([map, ...meshes]).length + sum(inSet.map(({ bytes }) => bytes)),
    isExact: false,
  };
}

/** Every node's picture in 8 bits and in 16, by what the first of them takes for each pixel. */
function* measurePictures({ surfaces, zones, runs, fed }: ReturnType<typeof outputsOf>): Generator<FileSize> {
  const [first] = fed.nodes;
  if (first === undefined) return;
  const raster = paintTestPicture({ surfaces, zones, runs, nodes: fed.nodes, map: mapPixels(surfaces, zones, fed) }, 0);
  const bytes = { 8: rasterToPng(raster, 8).length, 16: rasterToPng(raster, 16).length } as const;
  const pixels = first.canvasWidth * first.canvasHeight;
  for (const [node, { canvasWidth, canvasHeight }] of fed.nodes.entries()) {
    const share = (canvasWidth * canvasHeight) / pixels;
    for (const bits of [8, 16] as const) {
      yield { of: `picture ${node} ${bits}`, bytes: Math.round(bytes[bits] * share), isExact: node === 0 };
    }
  }
}

function exact(of: FileSize['of'], bytes: number): FileSize {
  return { of, bytes, isExact: true };
}

function sum(figures: readonly number[]): number {
  return figures.reduce((total, figure) => total + figure, 0);
}
