import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { PrintFonts } from '../files/pages-to-pdf';

/** The font files that pages are written in, out of the packages that hold them. */
export function readPrintFonts(): PrintFonts {
  const { resolve } = createRequire(import.meta.url);
  const read = (path: string) => new Uint8Array(readFileSync(resolve(`@expo-google-fonts/${path}`)));
  return {
    sans: read('ibm-plex-sans/400Regular/IBMPlexSans_400Regular.ttf'),
    strong: read('ibm-plex-sans/600SemiBold/IBMPlexSans_600SemiBold.ttf'),
    mono: read('ibm-plex-mono/400Regular/IBMPlexMono_400Regular.ttf'),
  };
}
