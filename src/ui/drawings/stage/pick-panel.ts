import { type Camera, InstancedMesh, type Object3D, Raycaster, Vector2 } from 'three';

const raycaster = new Raycaster();

/** Number of the nearest panel under a point, given as shares of the picture's width and height from its upper left corner; null where there is none. */
export function pickPanel(scene: Object3D, camera: Camera, x: number, y: number): number | null {
  raycaster.setFromCamera(new Vector2(x * 2 - 1, 1 - y * 2), camera);
  const cards: Object3D[] = [];
  scene.traverse((object) => {
    if (object instanceof InstancedMesh && typeof object.userData.offset === 'number') cards.push(object);
  });
  const hit = raycaster.intersectObjects(cards, false)[0];
  return hit?.instanceId === undefined ? null : (hit.object.userData.offset as number) + hit.instanceId;
}
