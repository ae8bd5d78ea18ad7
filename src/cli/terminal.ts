import type { PrintFonts } from '../files/pages-to-pdf';

/** What a command may reach outside itself; a test gives its own. */
export interface Terminal {
  /** Text of a file, or of standard input for '-'. Throws the system's error where it cannot be read. */
  readonly read: (path: string) => string;
  /** Writes a file, and the folders that it stands in; over one of the same name. Throws the system's error where it cannot. */
  readonly write: (path: string, bytes: Uint8Array) => void;
  /** Font files that pages are written in. */
  readonly fonts: () => PrintFonts;
  /** Day on the clock of the machine, '2026-11-25'. */
  readonly today: () => string;
  /** Writes to standard output, where the answer goes and nothing else. */
  readonly print: (text: string) => void;
  /** Writes to standard error: why something was refused. */
  readonly complain: (text: string) => void;
  /** Width in characters. */
  readonly columns: number;
}
