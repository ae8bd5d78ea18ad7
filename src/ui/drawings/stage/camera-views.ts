import { fitCamera } from './fit-camera';
import type { StageExtent } from './stage-extent';

export type CameraViewName = 'corner' | 'eye' | 'top';

/** Where a camera stands and what it looks at, in metres of the scene. */
export interface CameraView {
  readonly position: readonly [number, number, number];
  readonly target: readonly [number, number, number];
}

/** From where one looks into the stage: a direction in plan axes, and whether panels stand all round. */
export interface Outlook {
  readonly x: number;
  readonly y: number;
  readonly enclosed: boolean;
}

/** Height of an adult's eyes: common practice, no source. */
const eyeHeightM = 1.65;

/**
 * The three ways in: from a corner high outside, so that one sees into the stage; from eye level inside, on the side of the
 * audience; from straight above with plan y up. `fovDeg`: upright angle of the lens. `outline`: points that the corner shows
 * whole, x, y, z in metres of the scene.
 */
export function cameraView(
  name: CameraViewName,
  extent: StageExtent,
  out: Outlook,
  fovDeg: number,
  ratio: number,
  outline: Float32Array,
): CameraView {
  const { x, y, z, radius } = extent;
  const half = (fovDeg * Math.PI) / 360;
  // The narrower of the two angles of the picture decides how far away all of it fits.
  const narrow = Math.min(half, Math.atan(Math.tan(half) * ratio));
  const away = radius / Math.sin(narrow);
  if (name === 'top') return { position: [x, y + away, z + away * 1e-4], target: [x, y, z] };
  if (name === 'eye') {
    const back = Math.min(radius * (out.enclosed ? 0.5 : 1.6), 40);
    return {
      position: [x + out.x * back, eyeHeightM, z - out.y * back],
      target: [x - out.x * radius, Math.max(eyeHeightM, extent.height * 0.42), z + out.y * radius],
    };
  }
  // Well beside the opening, and a third of a right angle above the floor.
  const turn = 0.95;
  const rise = 0.55;
  const dx = out.x * Math.cos(turn) - out.y * Math.sin(turn);
  const dy = out.x * Math.sin(turn) + out.y * Math.cos(turn);
  const level = Math.cos(rise);
  if (outline.length > 0) return fitCamera(outline, [dx * level, Math.sin(rise), -dy * level], fovDeg, ratio);
  return {
    position: [x + dx * level * away, y + Math.sin(rise) * away, z - dy * level * away],
    target: [x, y * 0.8, z],
  };
}
