import fc from 'fast-check';
import { PerspectiveCamera, Vector3 } from 'three';
import { describe, expect, it } from 'vitest';
import { cameraView } from '../../../../src/ui/drawings/stage/camera-views';
import { outlookOf } from '../../../../src/ui/drawings/stage/outlook';
import { stageExtent } from '../../../../src/ui/drawings/stage/stage-extent';
import { stageFixture } from '../../../arbitraries/evaluation-fixture';

const ring = stageFixture({ columns: 136, rows: 13, jointDeg: 2.5 });
const extent = stageExtent(ring);

describe('cameraView', () => {
  it('shows the middle of every panel from the top and nearly all from the corner, in any window', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.4, max: 3, noNaN: true }), (ratio) => {
        const table = ring.surfaces.surfaces[0]!;
        const shown = (name: 'top' | 'corner') => {
          const { position, target } = cameraView(name, extent, outlookOf(ring), 38, ratio);
          const camera = new PerspectiveCamera(38, ratio, 0.1, 1000);
          camera.position.set(...position);
          camera.lookAt(...target);
          camera.updateMatrixWorld();
          let inside = 0;
          for (let i = 0; i < table.count; i++) {
            const at = new Vector3(table.xMm[i]! / 1000, table.zMm[i]! / 1000, -table.yMm[i]! / 1000).project(camera);
            if (Math.abs(at.x) <= 1 && Math.abs(at.y) <= 1) inside++;
          }
          return inside / table.count;
        };
        expect(shown('top')).toBe(1);
        expect(shown('corner')).toBeGreaterThan(0.95);
      }),
      { numRuns: 20 },
    );
  });
  it('stands at eye level inside a ring, on the side of its opening, and looks across', () => {
    const { position, target } = cameraView('eye', extent, outlookOf(ring), 38, 1.5);
    expect(position[1]).toBe(1.65);
    // The opening lies at plan -y, so at scene +z.
    expect(position[2]).toBeGreaterThan(2);
    expect(Math.hypot(position[0], position[2])).toBeLessThan(11);
    expect(target[2]).toBeLessThan(-5);
  });
  it('stands before a flat wall, where its audience is', () => {
    const flat = stageFixture({ columns: 16, rows: 8, jointDeg: 0 });
    const { position } = cameraView('eye', stageExtent(flat), outlookOf(flat), 38, 1.5);
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
