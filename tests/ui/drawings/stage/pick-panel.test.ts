import { InstancedMesh, MeshBasicMaterial, PerspectiveCamera, Scene } from 'three';
import { expect, it } from 'vitest';
import { panelMatrices } from '../../../../src/ui/drawings/stage/panel-matrices';
import { pickPanel } from '../../../../src/ui/drawings/stage/pick-panel';
import { unitCard } from '../../../../src/ui/drawings/stage/unit-card';
import { stageFixture } from '../../../arbitraries/evaluation-fixture';

/** A flat wall of 4 x 4 panels, 2 m square, seen squarely from its audience. */
const table = stageFixture({ columns: 4, rows: 4, jointDeg: 0 }).surfaces.surfaces[0]!;
const mesh = new InstancedMesh(unitCard, new MeshBasicMaterial(), table.count);
mesh.instanceMatrix.array.set(
  panelMatrices(
    table,
    Array.from({ length: table.count }, (_, i) => i),
  ),
);
mesh.userData.offset = 100;
const scene = new Scene().add(mesh);
const camera = new PerspectiveCamera(38, 1, 0.1, 100);
camera.position.set(0, 1, 10);
camera.lookAt(0, 1, 0);
camera.updateMatrixWorld();

it('pickPanel finds the panel under a point, numbered through all surfaces', () => {
  // Just left of and below the middle: column 2 as the audience sees it, row 2.
  expect(pickPanel(scene, camera, 0.49, 0.51)).toBe(100 + 1 * 4 + 1);
  expect(pickPanel(scene, camera, 0.51, 0.49)).toBe(100 + 2 * 4 + 2);
});

it('pickPanel finds nothing beside the panels, nor in a scene without any', () => {
  expect(pickPanel(scene, camera, 0.02, 0.02)).toBeNull();
  expect(pickPanel(new Scene(), camera, 0.5, 0.5)).toBeNull();
});
