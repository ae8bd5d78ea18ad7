import mono from '@expo-google-fonts/ibm-plex-mono/400Regular/IBMPlexMono_400Regular.ttf?url';
import sans from '@expo-google-fonts/ibm-plex-sans/400Regular/IBMPlexSans_400Regular.ttf?url';
import strong from '@expo-google-fonts/ibm-plex-sans/600SemiBold/IBMPlexSans_600SemiBold.ttf?url';
import type { PrintFonts } from '../../files/pages-to-pdf';

/** The font files that pages are written in, fetched when a first PDF is asked for. Throws where one is not to be had. */
export async function loadPrintFonts(): Promise<PrintFonts> {
  const load = async (url: string) => {
    const answer = await fetch(url);
    if (!answer.ok) throw new Error(`a font of the print is missing (${answer.status})`);
    return new Uint8Array(await answer.arrayBuffer());
  };
  const [sansBytes, strongBytes, monoBytes] = await Promise.all([load(sans), load(strong), load(mono)]);
  return { sans: sansBytes, strong: strongBytes, mono: monoBytes };
}
