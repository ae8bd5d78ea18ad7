import { useThree } from '@react-three/fiber';
import { useLayoutEffect, useRef } from 'react';
import type { DirectionalLight } from 'three';
import type { StageExtent } from './stage-extent';

/** The light that throws the shadows: from high on the left. They are drawn anew only when something moves. */
export function Daylight({ extent }: { readonly extent: StageExtent }) {
  const light = useRef<DirectionalLight>(null);
  const gl = useThree((state) => state.gl);
  const invalidate = useThree((state) => state.invalidate);
  const { x, y, z, radius } = extent;
  useLayoutEffect(() => {
    gl.shadowMap.autoUpdate = false;
    if (light.current === null) return;
    const { camera } = light.current.shadow;
    const reach = radius * 1.7;
    Object.assign(camera, { left: -reach, right: reach, top: reach, bottom: -reach, near: 0.1, far: radius * 6 });
    camera.updateProjectionMatrix();
    light.current.position.set(x - radius * 1.1, y + radius * 2.4, z - radius * 0.9);
    light.current.target.position.set(x, 0, z);
    light.current.target.updateMatrixWorld();
    gl.shadowMap.needsUpdate = true;
    invalidate();
  }, [gl, invalidate, x, y, z, radius]);
  return <directionalLight ref={light} castShadow shadow-mapSize={[2048, 2048]} shadow-radius={5} />;
}
