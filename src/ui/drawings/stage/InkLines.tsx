import { useThree } from '@react-three/fiber';
import { useEffect, useLayoutEffect, useMemo } from 'react';
import type { Color } from 'three';
import { LineMaterial } from 'three/addons/lines/LineMaterial.js';
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js';

interface InkLinesProps {
  /** 6 numbers a segment, in metres of the scene. */
  readonly segments: Float32Array;
  readonly colour: Color;
  readonly widthPx: number;
}

/** Straight lines of a fixed width in pixels, all in one draw call. */
export function InkLines({ segments, colour, widthPx }: InkLinesProps) {
  const size = useThree((state) => state.size);
  const invalidate = useThree((state) => state.invalidate);
  const lines = useMemo(() => {
    const geometry = new LineSegmentsGeometry().setPositions(segments);
    const made = new LineSegments2(geometry, new LineMaterial({ linewidth: widthPx }));
    made.raycast = () => undefined;
    return made;
  }, [segments, widthPx]);
  useEffect(
    () => () => {
      lines.geometry.dispose();
      lines.material.dispose();
    },
    [lines],
  );
  useLayoutEffect(() => {
    lines.material.color.copy(colour);
    lines.material.resolution.set(size.width, size.height);
    invalidate();
  }, [lines, colour, size, invalidate]);
  return segments.length === 0 ? null : <primitive object={lines} />;
}
