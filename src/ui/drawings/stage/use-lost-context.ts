import { useThree } from '@react-three/fiber';
import { useEffect } from 'react';

/** Tells when the graphics card has dropped the picture, and draws it anew, shadows included, as soon as it is back. */
export function useLostContext(onChange: (lost: boolean) => void): void {
  const gl = useThree((state) => state.gl);
  const invalidate = useThree((state) => state.invalidate);
  useEffect(() => {
    const element = gl.domElement;
    const onLost = () => onChange(true);
    const onBack = () => {
      onChange(false);
      gl.shadowMap.needsUpdate = true;
      invalidate();
    };
    element.addEventListener('webglcontextlost', onLost);
    element.addEventListener('webglcontextrestored', onBack);
    return () => {
      element.removeEventListener('webglcontextlost', onLost);
      element.removeEventListener('webglcontextrestored', onBack);
    };
  }, [gl, invalidate, onChange]);
}
