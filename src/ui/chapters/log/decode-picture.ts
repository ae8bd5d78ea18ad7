/** Widths in pixels at which a code is looked for: a phone's photo is far larger than a code needs. */
const widths = [1000, 1800, 500];

/** The text of the code in a picture; null where none is found in it. Throws where the file is no picture. */
export async function decodePicture(file: Blob): Promise<string | null> {
  const [{ default: jsQr }, picture] = await Promise.all([import('jsqr'), createImageBitmap(file)]);
  try {
    for (const width of widths) {
      const scale = Math.min(1, width / Math.max(picture.width, picture.height));
      const [wide, high] = [
        Math.max(1, Math.round(picture.width * scale)),
        Math.max(1, Math.round(picture.height * scale)),
      ];
      const canvas = document.createElement('canvas');
      canvas.width = wide;
      canvas.height = high;
      const brush = canvas.getContext('2d', { willReadFrequently: true });
      if (!brush) return null;
      brush.drawImage(picture, 0, 0, wide, high);
      const { data } = brush.getImageData(0, 0, wide, high);
      const found = jsQr(data, wide, high);
      if (found && found.data !== '') return found.data;
      if (scale === 1) return null;
    }
    return null;
  } finally {
    picture.close();
  }
}
