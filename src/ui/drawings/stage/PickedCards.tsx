import { useThree } from '@react-three/fiber';
import { useLayoutEffect, useMemo, useRef } from 'react';
import type { Color, InstancedMesh } from 'three';
import type { SurfaceSet } from '../../../calc/surfaces/surface-table';
import { panelMatrices } from './panel-matrices';
import { unitCard } from './unit-card';

interface PickedCardsProps {
  readonly surfaces: SurfaceSet;
  /** Numbers of panels through all surfaces. */
  readonly panels: readonly number[];
  readonly colour: Color;
  readonly opacity: number;
}

/** A thin coloured skin round the picked panels, or the one under the pointer: all of them in one draw call. */
export function PickedCards({ surfaces, panels, colour, opacity }: PickedCardsProps) {
  const mesh = useRef<InstancedMesh>(null);
  const invalidate = useThree((state) => state.invalidate);
  const matrices = useMemo(() => skinMatrices(surfaces, panels), [surfaces, panels]);
  const count = matrices.length / 16;
  useLayoutEffect(() => {
    if (mesh.current !== null) {
      mesh.current.instanceMatrix.array.set(matrices);
      mesh.current.instanceMatrix.needsUpdate = true;
      mesh.current.computeBoundingSphere();
    }
    invalidate();
  }, [matrices, invalidate]);
  if (count === 0) return null;
  return (
    <instancedMesh key={count} ref={mesh} args={[unitCard, undefined, count]} raycast={() => null}>
      <meshBasicMaterial color={colour} transparent opacity={opacity} depthWrite={false} />
    </instancedMesh>
  );
}

/** How far the skin stands off the card, in metres. */
const skinM = 0.008;

function skinMatrices(surfaces: SurfaceSet, panels: readonly number[]): Float32Array {
  const parts = surfaces.surfaces.map((table, s) => {
    const offset = surfaces.offsets[s]!;
    const locals = panels.filter((panel) => panel >= offset && panel < offset + table.count);
    return panelMatrices(
      table,
      locals.map((panel) => panel - offset),
      skinM,
    );
  });
  const all = new Float32Array(parts.reduce((length, part) => length + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
