import { useEffect, useMemo } from 'react';
import { DoubleSide } from 'three';
import type { StageParts } from '../../../sheets/stage-parts';
import { floorMaterial } from './floor-material';
import type { StageExtent } from './stage-extent';
import type { Inks } from './use-inks';

interface FloorProps {
  readonly extent: StageExtent;
  readonly lengths: StageParts['lengths'];
  readonly inks: Inks;
}

/** Sides of one square of the grid, in metres. Source of the foot: the international foot of 0.3048 m. */
const cells = { metric: 1, feet: 0.3048 } as const;

/** The sheet of paper that the stage stands on, with its grid and the shadows on it. */
export function Floor({ extent, lengths, inks }: FloorProps) {
  const radius = extent.radius * 3.2;
  const material = useMemo(() => floorMaterial(inks.hair, cells[lengths], radius), [inks, lengths, radius]);
  useEffect(() => () => material.dispose(), [material]);
  return (
    <group position={[extent.x, 0, extent.z]} rotation={[-Math.PI / 2, 0, 0]}>
      <mesh position={[0, 0, -0.012]} renderOrder={-2} material={material} raycast={() => null}>
        <circleGeometry args={[radius, 64]} />
      </mesh>
      <mesh position={[0, 0, -0.008]} renderOrder={-1} receiveShadow raycast={() => null}>
        <circleGeometry args={[radius, 64]} />
        <shadowMaterial color="black" opacity={inks.shade} side={DoubleSide} depthWrite={false} />
      </mesh>
    </group>
  );
}
