import { useFrame } from '@react-three/fiber';
import type { RefObject } from 'react';

/** Draws each frame and notes on the element what it took: draw calls, triangles, frames so far. Tests read them there. */
export function FrameReport({ on }: { readonly on: RefObject<HTMLElement | null> }) {
  // A positive priority hands the drawing of the frame over to this callback.
  useFrame(({ gl, scene, camera }) => {
    gl.render(scene, camera);
    if (on.current === null) return;
    const { dataset } = on.current;
    dataset.drawCalls = `${gl.info.render.calls}`;
    dataset.triangles = `${gl.info.render.triangles}`;
    dataset.frames = `${Number(dataset.frames ?? 0) + 1}`;
  }, 1);
  return null;
}
