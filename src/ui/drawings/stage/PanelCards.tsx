import { useThree } from '@react-three/fiber';
import { memo, useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { InstancedBufferAttribute, type InstancedMesh } from 'three';
import type { SurfaceTable } from '../../../calc/surfaces/surface-table';
import { cardMaterial } from './card-material';
import { panelMatrices } from './panel-matrices';
import { tintColours } from './tint-colours';
import { unitCard } from './unit-card';
import type { Inks } from './use-inks';

interface PanelCardsProps {
  readonly table: SurfaceTable;
  /** Tint of every panel of the stage; this surface's begin at `offset`. */
  readonly tints: Uint8Array;
  readonly offset: number;
  readonly inks: Inks;
}

/** All panels of one surface in one draw call: instance i is the panel with index i in the surface's table. */
export const PanelCards = memo(function PanelCards({ table, tints, offset, inks }: PanelCardsProps) {
  const mesh = useRef<InstancedMesh>(null);
  const invalidate = useThree((state) => state.invalidate);
  const gl = useThree((state) => state.gl);
  const material = useMemo(() => cardMaterial(inks.ink), [inks]);
  useEffect(() => () => material.dispose(), [material]);

  useLayoutEffect(() => {
    if (mesh.current === null) return;
    const locals = Array.from({ length: table.count }, (_, local) => local);
    mesh.current.instanceMatrix.array.set(panelMatrices(table, locals));
    mesh.current.instanceMatrix.needsUpdate = true;
    mesh.current.computeBoundingSphere();
    gl.shadowMap.needsUpdate = true;
    invalidate();
  }, [table, gl, invalidate]);

  useLayoutEffect(() => {
    if (mesh.current === null) return;
    const { r, g, b } = inks.card;
    const colours = tintColours(tints, offset, table.count, inks.tints, [r, g, b]);
    mesh.current.instanceColor = new InstancedBufferAttribute(colours, 3);
    invalidate();
  }, [table, tints, offset, inks, invalidate]);

  // Another count wants another buffer, hence the key.
  return (
    <instancedMesh
      key={table.count}
      ref={mesh}
      args={[unitCard, material, table.count]}
      userData={{ offset }}
      castShadow
    />
  );
});
