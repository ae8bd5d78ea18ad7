import { useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';
import { pickPanel } from './pick-panel';

interface PickerProps {
  readonly onSelect: (panel: number | null) => void;
  readonly onHover: (panel: number | null) => void;
}

/** A press that moves less than this is a click and no drag of the camera. */
const dragPx = 4;

/** Finds the panel under a click, and under the pointer at most once a frame; not while the camera is being dragged. */
export function Picker({ onSelect, onHover }: PickerProps) {
  const element = useThree((state) => state.gl.domElement);
  const get = useThree((state) => state.get);
  const tasks = useRef({ onSelect, onHover });
  useEffect(() => {
    tasks.current = { onSelect, onHover };
  });
  useEffect(() => {
    let pressed: { x: number; y: number } | null = null;
    let frame = 0;
    const find = (event: PointerEvent) => {
      const { left, top, width, height } = element.getBoundingClientRect();
      const { scene, camera } = get();
      return pickPanel(scene, camera, (event.clientX - left) / width, (event.clientY - top) / height);
    };
    const onDown = (event: PointerEvent) => {
      pressed = event.button === 0 && event.isPrimary ? { x: event.clientX, y: event.clientY } : null;
      cancelAnimationFrame(frame);
      frame = 0;
    };
    const onUp = (event: PointerEvent) => {
      const isClick = pressed !== null && Math.hypot(event.clientX - pressed.x, event.clientY - pressed.y) <= dragPx;
      pressed = null;
      if (isClick) tasks.current.onSelect(find(event));
    };
    const onMove = (event: PointerEvent) => {
      if (event.buttons !== 0 || event.pointerType === 'touch' || frame !== 0) return;
      frame = requestAnimationFrame(() => {
        frame = 0;
        tasks.current.onHover(find(event));
      });
    };
    const onLeave = () => {
      cancelAnimationFrame(frame);
      frame = 0;
      tasks.current.onHover(null);
    };
    element.addEventListener('pointerdown', onDown);
    element.addEventListener('pointerup', onUp);
    element.addEventListener('pointermove', onMove);
    element.addEventListener('pointerleave', onLeave);
    return () => {
      cancelAnimationFrame(frame);
      element.removeEventListener('pointerdown', onDown);
      element.removeEventListener('pointerup', onUp);
      element.removeEventListener('pointermove', onMove);
      element.removeEventListener('pointerleave', onLeave);
    };
  }, [element, get]);
  return null;
}
