import { useEffect, useRef } from 'react';
import type { ScreenPicture } from '../../../calc/outputs/shrink-raster';

/** A picture at its own pixels, as wide as there is room. */
export function PictureCanvas({ picture, label }: { readonly picture: ScreenPicture; readonly label: string }) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const pen = canvas.current?.getContext('2d');
    pen?.putImageData(new ImageData(picture.rgba, picture.width, picture.height), 0, 0);
  }, [picture]);
  return <canvas ref={canvas} role="img" aria-label={label} width={picture.width} height={picture.height} />;
}
