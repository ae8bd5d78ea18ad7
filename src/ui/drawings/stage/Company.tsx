import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo, useRef } from 'react';
import { DoubleSide, type Group, type InstancedMesh, Shape, ShapeGeometry, Vector2 } from 'three';
import { cardMaterial } from './card-material';
import { personOutline } from './person-outline';
import { unitCard } from './unit-card';
import type { Inks } from './use-inks';

interface CompanyProps {
  /** Where persons stand on the floor: x and z in metres of the scene. */
  readonly persons: readonly (readonly [number, number])[];
  /** Cards of the vehicle, 16 numbers each. */
  readonly vehicle: Float32Array;
  readonly inks: Inks;
}

/** Persons of 1.75 m and a vehicle, cut from card: they give the scale. Persons turn to whoever looks. */
export function Company({ persons, vehicle, inks }: CompanyProps) {
  const figures = useRef<Group>(null);
  const cards = useRef<InstancedMesh>(null);
  const invalidate = useThree((state) => state.invalidate);
  const shape = useMemo(() => new ShapeGeometry(new Shape(personOutline.map(([x, y]) => new Vector2(x, y)))), []);
  const material = useMemo(() => cardMaterial(inks.ink, inks.card), [inks]);
  useEffect(() => () => shape.dispose(), [shape]);
  useEffect(() => () => material.dispose(), [material]);
  useLayoutEffect(() => {
    if (cards.current === null) return;
    cards.current.instanceMatrix.array.set(vehicle);
    cards.current.instanceMatrix.needsUpdate = true;
    cards.current.computeBoundingSphere();
    invalidate();
  }, [vehicle, invalidate]);
  useFrame(({ camera }) => {
    for (const figure of figures.current?.children ?? []) {
      figure.rotation.y = Math.atan2(camera.position.x - figure.position.x, camera.position.z - figure.position.z);
    }
  });
  return (
    <>
      <group ref={figures}>
        {persons.map(([x, z]) => (
          <mesh key={`${x} ${z}`} geometry={shape} position={[x, 0, z]} castShadow raycast={() => null}>
            <meshBasicMaterial color={inks.soft} side={DoubleSide} />
          </mesh>
        ))}
      </group>
      <instancedMesh
        key={vehicle.length}
        ref={cards}
        args={[unitCard, material, vehicle.length / 16]}
        castShadow
        raycast={() => null}
      />
    </>
  );
}
