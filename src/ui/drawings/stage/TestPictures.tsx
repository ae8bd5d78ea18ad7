import { useThree } from '@react-three/fiber';
import { memo, useEffect, useMemo } from 'react';
import {
  BufferAttribute,
  BufferGeometry,
  DataTexture,
  LinearFilter,
  LinearMipmapLinearFilter,
  MeshBasicMaterial,
  SRGBColorSpace,
} from 'three';
import type { ScreenPicture } from '../../../calc/outputs/shrink-raster';
import type { StageMeshes } from '../../../calc/outputs/stage-meshes';
import { type FaceArrays, faceArrays } from './face-arrays';

/** Faces of the stage and the pictures that nodes send them, each when it is painted. */
export interface StagePictures {
  readonly meshes: StageMeshes;
  readonly pictures: readonly (ScreenPicture & { readonly node: number })[];
}

/** Test pictures on the LED faces, each panel with its own pixels of its node's canvas. */
export const TestPictures = memo(function TestPictures({ meshes, pictures }: StagePictures) {
  const faces = useMemo(() => faceArrays(meshes), [meshes]);
  return faces.map((face) => {
    const picture = pictures.find(({ node }) => node === face.node);
    const canvas = meshes.nodes[face.node];
    if (picture === undefined || canvas === undefined) return null;
    return <PicturedFaces key={`${face.surfaceId} ${face.node}`} face={face} picture={picture} canvas={canvas} />;
  });
});

interface PicturedFacesProps {
  readonly face: FaceArrays;
  readonly picture: ScreenPicture;
  readonly canvas: StageMeshes['nodes'][number];
}

function PicturedFaces({ face, picture, canvas }: PicturedFacesProps) {
  const invalidate = useThree((state) => state.invalidate);
  const geometry = useMemo(() => {
    const made = new BufferGeometry();
    made.setAttribute('position', new BufferAttribute(face.positions, 3));
    made.setAttribute('uv', new BufferAttribute(face.uv, 2));
    made.setIndex(new BufferAttribute(face.indices, 1));
    return made;
  }, [face]);
  const material = useMemo(() => pictureMaterial(picture, canvas), [picture, canvas]);
  useEffect(() => () => geometry.dispose(), [geometry]);
  useEffect(() => {
    invalidate();
    return () => {
      material.map?.dispose();
      material.dispose();
      invalidate();
    };
  }, [material, invalidate]);
  return <mesh geometry={geometry} material={material} raycast={() => null} />;
}

/** A hair before the card that it is pasted on; lit by itself. */
function pictureMaterial(picture: ScreenPicture, canvas: PicturedFacesProps['canvas']): MeshBasicMaterial {
  const { rgba, width, height, by } = picture;
  const map = new DataTexture(rgba, width, height);
  map.colorSpace = SRGBColorSpace;
  map.magFilter = LinearFilter;
  map.minFilter = LinearMipmapLinearFilter;
  map.generateMipmaps = true;
  map.anisotropy = 8;
  // Drawn smaller, its last pixels may reach over the edge of the canvas.
  map.repeat.set(canvas.canvasWidth / (by * width), canvas.canvasHeight / (by * height));
  map.needsUpdate = true;
  return new MeshBasicMaterial({ map, polygonOffset: true, polygonOffsetFactor: 0, polygonOffsetUnits: -2 });
}
