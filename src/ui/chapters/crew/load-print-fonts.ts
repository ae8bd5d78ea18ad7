import monoUrl from '@expo-google-fonts/ibm-plex-mono/400Regular/IBMPlexMono_400Regular.ttf?url';
import sansUrl from '@expo-google-fonts/ibm-plex-sans/400Regular/IBMPlexSans_400Regular.ttf?url';
import strongUrl from '@expo-google-fonts/ibm-plex-sans/600SemiBold/IBMPlexSans_600SemiBold.ttf?url';
import type { PrintFonts } from '../../../files/pages-to-pdf';

/** The font files that pages are laid out for, fetched when the first page is made of them. */
export async function loadPrintFonts(): Promise<PrintFonts> {
  const [sans, strong, mono] = await Promise.all([sansUrl, strongUrl, monoUrl].map(fetchBytes));
  return { sans: sans!, strong: strong!, mono: mono! };
}

async function fetchBytes(url: string): Promise<Uint8Array> {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`a font could not be loaded: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}
