import { Canvas, useThree } from '@react-three/fiber';
import { useEffect, useMemo, useRef } from 'react';
import type { StageParts } from '../../../sheets/stage-parts';
import { type Tint, tintPanels } from '../../../sheets/tint-panels';
import type { StageView } from '../../state/stage-view';
import type { CameraViewName } from './camera-views';
import type { OrbitHandle } from './Orbit';
import { Scene } from './Scene';
import { shootPicture } from './shoot-picture';
import { type StagePictures, TestPictures } from './TestPictures';
import { useInks } from './use-inks';
import '../drawings.css';
import './stage-photo.css';

export interface PhotoAsked {
  readonly width: number;
  readonly height: number;
  readonly from: CameraViewName | StageView;
}

interface StagePhotoProps {
  readonly parts: StageParts;
  readonly tint: Tint;
  readonly pictures: StagePictures | null;
  readonly asked: PhotoAsked;
  /** The picture, or null where the browser could not make one of this size. */
  readonly onDone: (picture: Blob | null) => void;
}

/** Longer side of the window beside the page that the scene is set up in: its proportion is the picture's. */
const windowPx = 320;

/** Takes one picture of the model on light paper, out of sight, and hands it over. */
export function StagePhoto({ parts, tint, pictures, asked, onDone }: StagePhotoProps) {
  const board = useRef<HTMLDivElement>(null);
  const orbit = useRef<OrbitHandle | null>(null);
  const inks = useInks(board);
  const tints = useMemo(() => tintPanels(parts, tint), [parts, tint]);
  const scale = windowPx / Math.max(asked.width, asked.height);
  return (
    <div ref={board} className="board stage-photo" data-theme="light" aria-hidden="true" inert>
      {inks !== null && (
        <div style={{ width: asked.width * scale, height: asked.height * scale }}>
          <Canvas frameloop="never" flat shadows="percentage" dpr={1} camera={{ fov: 38, near: 0.1, far: 500 }}>
            <Scene parts={parts} tints={tints} inks={inks} orbit={orbit} />
            {pictures !== null && <TestPictures {...pictures} />}
            <Photographer asked={asked} onDone={onDone} look={(view) => orbit.current?.goTo(view)} />
          </Canvas>
        </div>
      )}
    </div>
  );
}

/** Last child of the scene: once it is there, all of it is. */
function Photographer({
  asked,
  onDone,
  look,
}: Pick<StagePhotoProps, 'asked' | 'onDone'> & { readonly look: (view: CameraViewName) => void }) {
  const { gl, scene, camera } = useThree();
  const latest = useRef({ onDone, look });
  useEffect(() => {
    latest.current = { onDone, look };
  });
  useEffect(() => {
    const left = new AbortController();
    const timer = setTimeout(async () => {
      if (typeof asked.from === 'string') latest.current.look(asked.from);
      else {
        camera.position.set(...asked.from.position);
        camera.lookAt(...asked.from.target);
      }
      const picture = await shootPicture({ gl, scene, camera }, asked, left.signal);
      if (!left.signal.aborted) latest.current.onDone(picture);
    });
    return () => {
      clearTimeout(timer);
      left.abort();
    };
  }, [gl, scene, camera, asked]);
  return null;
}
