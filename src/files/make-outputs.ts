import { mapPixels } from '../calc/outputs/map-pixels';
import type { OutputsInputs } from '../calc/outputs/outputs-inputs';
import { paintTestPicture } from '../calc/outputs/picture/paint-test-picture';
import { type ScreenPicture, shrinkRaster } from '../calc/outputs/shrink-raster';
import { filesToZip, type NamedFile } from './files-to-zip';
import { fileNames, mapFile, meshFiles, outputSet, pictureFile } from './output-set';

/** One thing to be made of a stage. */
export type OutputsAsked =
  | { readonly make: 'set' | 'map' | 'gltf' | 'obj' }
  | { readonly make: 'picture'; readonly node: number; readonly bits: 8 | 16 }
  /** Test pictures for the screen, drawn smaller until no side and not all together have more pixels than this. */
  | { readonly make: 'screen-pictures'; readonly mostSide: number; readonly mostPixels: number };

/** How far it is; and a picture for the screen, where those are asked. */
export interface OutputsStep {
  readonly done: number;
  readonly picture?: ScreenPicture & { readonly node: number };
}

/** Makes it step by step; ends with the file, or with null where pictures for the screen were asked. */
export function* makeOutputs(
  asked: OutputsAsked,
  inputs: OutputsInputs,
  title: string,
): Generator<OutputsStep, NamedFile | null> {
  switch (asked.make) {
    case 'set': {
      const files: NamedFile[] = [];
      for (const { file, done } of outputSet(inputs, title)) {
        files.push(file);
        yield { done };
      }
      return { name: 'outputs.zip', bytes: filesToZip(files) };
    }
    case 'map':
      return mapFile(inputs);
    case 'gltf':
      return meshFiles(inputs, title).find(({ name }) => name === fileNames.glb)!;
    case 'obj':
      return {
        name: 'stage-obj.zip',
        bytes: filesToZip(meshFiles(inputs, title).filter(({ name }) => name !== fileNames.glb)),
      };
    case 'picture':
      return pictureFile(inputs, asked.node, asked.bits);
    case 'screen-pictures':
      yield* screenPictures(inputs, asked);
      return null;
  }
}

function* screenPictures(
  { surfaces, zones, runs, fed }: OutputsInputs,
  most: { readonly mostSide: number; readonly mostPixels: number },
): Generator<OutputsStep> {
  const { nodes } = fed;
  const map = mapPixels(surfaces, zones, fed);
  const by = shrinkBy(nodes, most);
  for (const node of nodes.keys()) {
    const picture = shrinkRaster(paintTestPicture({ surfaces, zones, runs, nodes, map }, node), by);
    yield { done: (node + 1) / nodes.length, picture: { ...picture, node } };
  }
}

/** The least whole number by which all of them are to be divided. */
function shrinkBy(
  canvases: readonly { readonly canvasWidth: number; readonly canvasHeight: number }[],
  { mostSide, mostPixels }: { readonly mostSide: number; readonly mostPixels: number },
): number {
  const side = canvases.reduce((most, one) => Math.max(most, one.canvasWidth, one.canvasHeight), 0);
  let by = Math.max(1, Math.ceil(side / mostSide));
  const pixels = () =>
    canvases.reduce((sum, one) => sum + Math.ceil(one.canvasWidth / by) * Math.ceil(one.canvasHeight / by), 0);
  while (pixels() > mostPixels && by < side) by++;
  return by;
}
