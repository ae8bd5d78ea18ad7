import type { NamedFile } from '../files/files-to-zip';
import type { Terminal } from './terminal';

const systemReasons: Readonly<Record<string, string>> = {
  EACCES: 'it may not be written',
  EISDIR: 'there is a folder of that name',
  ENOTDIR: 'a file stands where a folder should be',
  EEXIST: 'a file stands where a folder should be',
  EROFS: 'nothing may be written there',
  ENOSPC: 'the disk is full',
};

/** Writes a file into a folder and says so; false, with the reason and its path on standard error, where it cannot be written. */
export function writeFile(folder: string, { name, bytes }: NamedFile, terminal: Terminal): boolean {
  const path = `${folder.replace(/\/+$/, '')}/${name}`;
  try {
    terminal.write(path, bytes);
  } catch (error) {
    const { code, message } = error as { code?: string; message?: string };
    const reason = systemReasons[code ?? ''] ?? message ?? String(error);
    terminal.complain(`voussoir: ${path}: ${reason}\nreason: unwritable\n`);
    return false;
  }
  terminal.print(`${path}  ${Math.ceil(bytes.length / 1000)} kB\n`);
  return true;
}
