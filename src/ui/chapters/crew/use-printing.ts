import { useEffect, useState } from 'react';
import { flushSync } from 'react-dom';
import { loadPrintFonts } from '../../state/load-print-fonts';

/** Whether the browser is printing, however it was asked to; while `isReady` is false the page of the book is printed. */
export function usePrinting(isReady: boolean): boolean {
  const [isPrinting, setPrinting] = useState(false);
  useEffect(() => {
    // The browser takes what stands on the page when this returns.
    const before = () => flushSync(() => setPrinting(true));
    const after = () => setPrinting(false);
    window.addEventListener('beforeprint', before);
    window.addEventListener('afterprint', after);
    return () => {
      window.removeEventListener('beforeprint', before);
      window.removeEventListener('afterprint', after);
    };
  }, []);
  return isPrinting && isReady;
}

/** Opens the browser's print once the whole faces are there, for signs that the screen's smaller files have not. */
export async function printWithWholeFaces(): Promise<void> {
  try {
    await addWholeFaces();
  } finally {
    window.print();
  }
}

async function addWholeFaces(): Promise<void> {
  const { sans, strong, mono } = await loadPrintFonts();
  const faces = [
    wholeFace('IBM Plex Sans', '400', sans),
    wholeFace('IBM Plex Sans', '600', strong),
    wholeFace('IBM Plex Mono', '400', mono),
  ];
  await Promise.all(faces.map((face) => face.load()));
  for (const face of faces) document.fonts.add(face);
}

function wholeFace(family: string, weight: string, bytes: Uint8Array): FontFace {
  return new FontFace(family, new Uint8Array(bytes), { weight });
}
