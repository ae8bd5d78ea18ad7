import type { Terminal } from '../../src/cli/terminal';
import { printFonts } from '../sheets/pages/print-fonts';

export interface GivenTerminal extends Terminal {
  /** What was printed and complained of so far. */
  readonly output: () => string;
  readonly complaints: () => string;
  /** Files written so far, by their path. */
  readonly written: ReadonlyMap<string, Uint8Array>;
}

/** A terminal without a process: files by their name, and what was written kept. */
export function givenTerminal(files: Readonly<Record<string, string>> = {}, columns = 80): GivenTerminal {
  let printed = '';
  let complained = '';
  const written = new Map<string, Uint8Array>();
  return {
    columns,
    read(path) {
      const text = files[path];
      if (text === undefined) throw Object.assign(new Error(`ENOENT: ${path}`), { code: 'ENOENT' });
      return text;
    },
    written,
    write(path, bytes) {
      if (path.startsWith('locked/')) throw Object.assign(new Error(`EACCES: ${path}`), { code: 'EACCES' });
      written.set(path, bytes);
    },
    fonts: () => printFonts,
    today: () => '2026-11-25',
    print(text) {
      printed += text;
    },
    complain(text) {
      complained += text;
    },
    output: () => printed,
    complaints: () => complained,
  };
}
