import { useThree } from '@react-three/fiber';
import { type RefObject, useEffect, useImperativeHandle, useRef } from 'react';
import { PerspectiveCamera, Spherical, Vector3 } from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import { type CameraView, type CameraViewName, cameraView, type Outlook } from './camera-views';
import type { StageExtent } from './stage-extent';

/** What buttons and keys ask of the camera. */
export interface OrbitHandle {
  readonly goTo: (view: CameraViewName) => void;
  /** Turns round the target by so many radians to the right and upwards. */
  readonly turn: (right: number, up: number) => void;
  readonly zoom: (factor: number) => void;
}

interface OrbitProps {
  readonly extent: StageExtent;
  readonly outlook: Outlook;
  /** Points that the view from the corner shows, x, y, z each. */
  readonly outline: Float32Array;
  readonly handle: RefObject<OrbitHandle | null>;
  /** Called with where the camera stands and what it looks at, whenever it moved. */
  readonly onLook?: ((view: CameraView) => void) | undefined;
}

/** Never below the floor, in metres. */
const lowestM = 0.12;
const steepest = 0.0001;

/** Looks round the stage: three's own controls, which draw a frame only when something moved. */
export function Orbit({ extent, outlook, outline, handle, onLook }: OrbitProps) {
  const camera = useThree((state) => state.camera);
  const element = useThree((state) => state.gl.domElement);
  const invalidate = useThree((state) => state.invalidate);
  const ratio = useThree((state) => state.size.width / Math.max(1, state.size.height));
  const controls = useRef<OrbitControls | null>(null);
  const latest = useRef({ extent, outlook, outline, ratio, onLook });
  useEffect(() => {
    latest.current = { extent, outlook, outline, ratio, onLook };
  });

  useEffect(() => {
    const made = new OrbitControls(camera, element);
    const redraw = () => {
      if (camera.position.y < lowestM) camera.position.y = lowestM;
      latest.current.onLook?.({ position: camera.position.toArray(), target: made.target.toArray() });
      invalidate();
    };
    made.enableDamping = false;
    made.maxPolarAngle = Math.PI * 0.62;
    made.addEventListener('change', redraw);
    controls.current = made;
    placeCamera('corner', made, latest.current);
    return () => {
      made.removeEventListener('change', redraw);
      made.dispose();
      controls.current = null;
    };
  }, [camera, element, invalidate]);

  useEffect(() => {
    if (controls.current === null) return;
    controls.current.minDistance = 0.4;
    controls.current.maxDistance = extent.radius * 9;
    if (camera instanceof PerspectiveCamera) {
      camera.near = Math.max(0.05, extent.radius / 400);
      camera.far = extent.radius * 16;
      camera.updateProjectionMatrix();
    }
    invalidate();
  }, [extent, camera, invalidate]);

  useImperativeHandle(
    handle,
    () => ({
      goTo: (view) => {
        if (controls.current !== null) placeCamera(view, controls.current, latest.current);
      },
      turn: (right, up) =>
        moveRound(controls.current, (spherical) => {
          spherical.theta -= right;
          spherical.phi = Math.max(steepest, Math.min(Math.PI * 0.62, spherical.phi - up));
        }),
      zoom: (factor) =>
        moveRound(controls.current, (spherical) => {
          spherical.radius /= factor;
        }),
    }),
    [],
  );
  return null;
}

function placeCamera(
  view: CameraViewName,
  controls: OrbitControls,
  { extent, outlook, outline, ratio }: Pick<OrbitProps, 'extent' | 'outlook' | 'outline'> & { readonly ratio: number },
): void {
  const camera = controls.object;
  const fov = camera instanceof PerspectiveCamera ? camera.fov : 40;
  const { position, target } = cameraView(view, extent, outlook, fov, ratio, outline);
  camera.position.set(...position);
  controls.target.set(...target);
  controls.update();
  controls.dispatchEvent({ type: 'change' } as never);
}

function moveRound(controls: OrbitControls | null, change: (spherical: Spherical) => void): void {
  if (controls === null) return;
  const camera = controls.object;
  const spherical = new Spherical().setFromVector3(new Vector3().subVectors(camera.position, controls.target));
  change(spherical);
  camera.position.setFromSpherical(spherical).add(controls.target);
  controls.update();
}
