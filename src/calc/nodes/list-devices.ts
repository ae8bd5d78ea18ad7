import type { FrameRate } from '../../plan/primitives';
import type { SurfacePicture } from '../picture/picture-result';
import type { DeviceKind, RenderNode } from './node-result';

/** Something on the sync and on the network. */
export interface Device {
  readonly name: string;
  readonly kind: DeviceKind;
  /** The rate at which it works: of its surface, or of the camera. */
  readonly rate: FrameRate;
}

export interface DevicesInputs {
  readonly nodes: readonly RenderNode[];
  readonly spareNodes: number;
  /** What every surface runs at. */
  readonly surfaces: readonly Pick<SurfacePicture, 'surfaceId' | 'mode'>[];
  readonly cameraRate: FrameRate;
  readonly cameras: number;
  readonly trackers: number;
}

/** Nodes with the spare ones behind, processors, cameras and trackers, in that order, each kind numbered from 1. */
export function listDevices(inputs: DevicesInputs): readonly Device[] {
  const { nodes, cameraRate } = inputs;
  const rateOf = ({ surfaceId }: RenderNode) =>
    inputs.surfaces.find((surface) => surface.surfaceId === surfaceId)?.mode.rate ?? cameraRate;
  const numbered = (kind: DeviceKind, word: string, count: number, after = 0): Device[] =>
    Array.from({ length: count }, (_, i) => ({ name: `${word}${after + i + 1}`, kind, rate: cameraRate }));
  const processors = nodes.flatMap((node) => node.crops.map(({ processor }) => ({ processor, rate: rateOf(node) })));
  return [
    ...nodes.map((node): Device => ({ name: node.name, kind: 'node', rate: rateOf(node) })),
    ...numbered('node', 'N', inputs.spareNodes, nodes.length),
    ...processors
      .sort((a, b) => a.processor - b.processor)
      .map(({ processor, rate }): Device => ({ name: `P${processor}`, kind: 'processor', rate })),
    ...numbered('camera', 'Camera ', inputs.cameras),
    ...numbered('tracker', 'Tracker ', inputs.trackers),
  ];
}
