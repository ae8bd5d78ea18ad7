import { zipSync } from 'fflate';

export interface NamedFile {
  /** With folders, parted by '/'. */
  readonly name: string;
  readonly bytes: Uint8Array;
}

/** What is packed already and gains nothing from being packed again. */
const packed = /\.png$/;

/**
 * Files as one ZIP in their order. The same files give the same bytes, whenever and wherever: each has the earliest time that
 * the format knows. Source of the form: PKWARE, APPNOTE.TXT 6.3.
 */
export function filesToZip(files: readonly NamedFile[]): Uint8Array<ArrayBuffer> {
  // Midnight of the machine's own zone, which is how a ZIP states times.
  const mtime = new Date(1980, 0, 1);
  const level = (name: string) => (packed.test(name) ? 0 : 6);
  return zipSync(
    Object.fromEntries(files.map(({ name, bytes }) => [name, [bytes, { level: level(name), mtime }] as const])),
  );
}
