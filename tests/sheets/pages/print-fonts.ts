import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const read = (path: string) => new Uint8Array(readFileSync(require.resolve(`@expo-google-fonts/${path}`)));

/** The font files that are embedded. */
export const printFonts = {
  sans: read('ibm-plex-sans/400Regular/IBMPlexSans_400Regular.ttf'),
  strong: read('ibm-plex-sans/600SemiBold/IBMPlexSans_600SemiBold.ttf'),
  mono: read('ibm-plex-mono/400Regular/IBMPlexMono_400Regular.ttf'),
} as const;
