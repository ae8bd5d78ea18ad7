/** A part of a picture, in pixels from its top left. */
export interface PictureTile {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A picture cut into parts with no side longer than `most` pixels, row by row; whole numbers above 0. */
export function pictureTiles(width: number, height: number, most: number): readonly PictureTile[] {
  const tiles: PictureTile[] = [];
  for (let y = 0; y < height; y += most) {
    for (let x = 0; x < width; x += most) {
      tiles.push({ x, y, width: Math.min(most, width - x), height: Math.min(most, height - y) });
    }
  }
  return tiles;
}
