import fc from 'fast-check';
import { PerspectiveCamera, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { type CameraView, cameraView } from '../../../../src/ui/drawings/stage/camera-views';
import { cardCorners } from '../../../../src/ui/drawings/stage/card-corners';
import { outlookOf } from '../../../../src/ui/drawings/stage/outlook';
import { rimSegments } from '../../../../src/ui/drawings/stage/rim-segments';
import { stageExtent } from '../../../../src/ui/drawings/stage/stage-extent';
import { vehicleCards } from '../../../../src/ui/drawings/stage/vehicle-cards';
import { stageFixture } from '../../../arbitraries/evaluation-fixture';

const ring = stageFixture({ columns: 136, rows: 13, jointDeg: 2.5 });
const extent = stageExtent(ring);

const ratios = fc.double({ min: 0.4, max: 3, noNaN: true });
const opening = { middle: { xMm: 0, yMm: -11_000 }, outX: 0, outY: -1 };
const truck = cardCorners(vehicleCards({ widthMm: 2600, heightMm: 4000 }, opening, outlookOf(ring), extent));
const outline = Float32Array.from([...rimSegments(ring.surfaces.surfaces[0]!), ...truck]);

/** How far from the middle of the picture the outermost point lies: 1 at its edge. Worked out by the 3D library. */
function reach({ position, target }: CameraView, ratio: number, points: Float32Array): number {
  const camera = new PerspectiveCamera(38, ratio, 0.1, 1000);
  camera.position.set(...position);
  camera.lookAt(...target);
  camera.updateMatrixWorld();
  let most = 0;
  for (let i = 0; i < points.length; i += 3) {
    const at = new Vector3(points[i]!, points[i + 1]!, points[i + 2]!).project(camera);
    most = Math.max(most, Math.abs(at.x), Math.abs(at.y));
  }
  return most;
}

describe('cameraView', () => {
  it('shows the middle of every panel from the top, in any window', () => {
    const table = ring.surfaces.surfaces[0]!;
    const middles = Float32Array.from({ length: table.count * 3 }, (_, i) => {
      const panel = Math.floor(i / 3);
      return [table.xMm[panel]!, table.zMm[panel]!, -table.yMm[panel]!][i % 3]! / 1000;
    });
    fc.assert(
      fc.property(ratios, (ratio) => {
        expect(reach(cameraView('top', extent, outlookOf(ring), 38, ratio, outline), ratio, middles)).toBeLessThan(1);
      }),
      { numRuns: 20 },
    );
  });
  it('shows wall and vehicle whole from the corner in any window, and leaves little paper round them', () => {
    fc.assert(
      fc.property(ratios, (ratio) => {
        const most = reach(cameraView('corner', extent, outlookOf(ring), 38, ratio, outline), ratio, outline);
        expect(most).toBeLessThan(1);
        expect(most).toBeGreaterThan(0.9);
      }),
    );
  });
  it('has a corner where there is nothing to show', () => {
    const { position } = cameraView('corner', extent, outlookOf(ring), 38, 1.5, new Float32Array(0));
    expect(position.every(Number.isFinite)).toBe(true);
  });
  it('stands at eye level inside a ring, on the side of its opening, and looks across', () => {
    const { position, target } = cameraView('eye', extent, outlookOf(ring), 38, 1.5, outline);
    expect(position[1]).toBe(1.65);
    // The opening lies at plan -y, so at scene +z.
    expect(position[2]).toBeGreaterThan(2);
    expect(Math.hypot(position[0], position[2])).toBeLessThan(11);
    expect(target[2]).toBeLessThan(-5);
  });
  it('stands before a flat wall, where its audience is', () => {
    const flat = stageFixture({ columns: 16, rows: 8, jointDeg: 0 });
    const { position } = cameraView('eye', stageExtent(flat), outlookOf(flat), 38, 1.5, outline);
    expect(position[2]).toBeGreaterThan(5);
  });
});

describe('outlookOf', () => {
  it('looks out of the opening, else from the audience of the first wall, else from below', () => {
    expect(outlookOf(ring)).toMatchObject({ y: -1, enclosed: true });
    const flat = stageFixture({ columns: 5, rows: 1, jointDeg: 0 });
    expect(outlookOf(flat)).toMatchObject({ y: -1, enclosed: false });
    expect(outlookOf({ walls: [] })).toEqual({ x: 0, y: -1, enclosed: false });
  });
});

describe('stageExtent', () => {
  it('holds every panel', () => {
    const table = ring.surfaces.surfaces[0]!;
    for (let i = 0; i < table.count; i += 7) {
      const away = Math.hypot(
        table.xMm[i]! / 1000 - extent.x,
        table.zMm[i]! / 1000 - extent.y,
        -table.yMm[i]! / 1000 - extent.z,
      );
      expect(away).toBeLessThanOrEqual(extent.radius);
    }
  });
  it('has a size where there is nothing', () => {
    const empty = { surfaces: { surfaces: [], offsets: [], total: 0 } };
    expect(stageExtent(empty).radius).toBeGreaterThan(0);
  });
});
