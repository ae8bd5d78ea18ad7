import type { Terminal } from './terminal';

const systemReasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'it may not be read',
  EISDIR: 'it is a folder',
};

/** Text of a file; null, with the reason and the file's name on standard error, where it cannot be read. */
export function readText(file: string, terminal: Terminal): string | null {
  try {
    return terminal.read(file);
  } catch (error) {
    const { code, message } = error as { code?: string; message?: string };
    terminal.complain(
      `voussoir: ${file}: ${systemReasons[code ?? ''] ?? message ?? String(error)}\nreason: unreadable\n`,
    );
    return null;
  }
}
