import { type Camera, type Object3D, PerspectiveCamera, type Scene, ShaderMaterial, type WebGLRenderer } from 'three';
import { LineMaterial } from 'three/addons/lines/LineMaterial.js';
import { pictureTiles } from './picture-tiles';

interface Setting {
  readonly gl: WebGLRenderer;
  readonly scene: Scene;
  readonly camera: Camera;
}

/** Side that every graphics card draws at once; larger pictures are drawn part by part. */
const tilePx = 2048;
/** Lines are as wide as on a screen of so many pixels. */
const screenPx = 900;

/**
 * Draws a scene into a picture of any size, part by part, and packs it as PNG. Null where it was given up or where the browser has
 * no room for a picture of this size.
 */
export async function shootPicture(
  { gl, scene, camera }: Setting,
  { width, height }: { readonly width: number; readonly height: number },
  left: AbortSignal,
): Promise<Blob | null> {
  if (!(camera instanceof PerspectiveCamera)) return null;
  const sheet = document.createElement('canvas');
  sheet.width = width;
  sheet.height = height;
  const pen = sheet.getContext('2d', { alpha: false });
  if (pen === null) return null;
  camera.aspect = width / height;
  scene.traverse(widenLines(Math.max(1, Math.min(width, height) / screenPx)));
  gl.setPixelRatio(1);
  for (const tile of pictureTiles(width, height, tilePx)) {
    gl.setSize(tile.width, tile.height, false);
    camera.setViewOffset(width, height, tile.x, tile.y, tile.width, tile.height);
    gl.render(scene, camera);
    // In the same breath: what a context has drawn is gone afterwards.
    pen.drawImage(gl.domElement, tile.x, tile.y);
    await new Promise((resume) => setTimeout(resume));
    if (left.aborted) return null;
  }
  return new Promise((give) => sheet.toBlob(give, 'image/png'));
}

function widenLines(by: number): (object: Object3D) => void {
  return (object) => {
    const material = 'material' in object ? object.material : null;
    if (material instanceof LineMaterial) material.linewidth *= by;
    else if (material instanceof ShaderMaterial && material.uniforms.pen) material.uniforms.pen.value = by;
  };
}
