import type { PaperId } from '../sheets/pages/papers';
import type { Terminal } from './terminal';

/** What a call ends with. Of a plan: it stands, a check stops it, or it could not be read; of two: something changed. */
export const exitCodes = { ok: 0, stopped: 1, changed: 1, refused: 2 } as const;
export type ExitCode = (typeof exitCodes)[keyof typeof exitCodes];

/** One word of the command line. */
export interface Command {
  readonly name: string;
  /** How it is called, without the program's name: 'check PLAN.json [--json]'. */
  readonly usage: string;
  /**
   * Options that it takes, each with what it does; '--out DIR' takes a folder, '--address URL' an address,
   * '--format dxf|svg' one of the words, and anything else a text. These must be given, unless they stand in brackets:
   * '[--out DIR]'.
   */
  readonly options: Readonly<Record<string, string>>;
  /** Files that it takes. */
  readonly files: 0 | 1 | 2;
  /** Files that it can do with; as many as it takes where left out. */
  readonly filesLeast?: 1;
  /** What it does, in a line or two. */
  readonly summary: string;
  /** At once, or as a promise where a file takes its time. */
  readonly run: (given: Given, terminal: Terminal) => ExitCode | Promise<ExitCode>;
}

/** What stood after the command's name. */
export interface Given {
  readonly file: string;
  /** Only of a command that takes two. */
  readonly secondFile?: string;
  readonly options: ReadonlySet<string>;
  /** Folder that stood after --out; only of a command that takes one. */
  readonly out?: string;
  /** Word that stood after --format; only of a command that takes one. */
  readonly format?: 'dxf' | 'svg';
  /** Words that stood after options of the same name; only of a command that takes them. */
  readonly paper?: PaperId;
  readonly parts?: string;
  readonly date?: string;
  readonly address?: string;
  readonly from?: string;
  readonly to?: string;
}
