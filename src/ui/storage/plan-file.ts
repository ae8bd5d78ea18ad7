import { fileOpen, fileSave } from 'browser-fs-access';
import type { Plan } from '../../plan/plan';

/** Largest file that is read at all: a plan of 250,000 panels with an existing wiring stays below half of it. */
const bytesMost = 64 * 1024 * 1024;

export interface ReadFile {
  readonly name: string;
  readonly text: string;
  /** Lets the next save write the same file, where the browser can. */
  readonly handle: FileSystemFileHandle | null;
}

/** Thrown for a file that is too large to be a plan. */
export class FileTooLarge extends Error {}

const kind = { description: 'Voussoir plan', mimeTypes: ['application/json'], extensions: ['.json'] };

function isCancelled(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'AbortError';
}

export async function readPlanFile(file: File, handle: FileSystemFileHandle | null): Promise<ReadFile> {
  if (file.size > bytesMost) throw new FileTooLarge(`${file.name} is larger than any plan can be`);
  return { name: file.name, text: await file.text(), handle };
}

/** Asks for a file; null where the person changed their mind. */
export async function pickPlanFile(): Promise<ReadFile | null> {
  try {
    const file = await fileOpen({ ...kind, id: 'voussoir-plan' });
    return await readPlanFile(file, file.handle ?? null);
  } catch (error) {
    if (isCancelled(error)) return null;
    throw error;
  }
}

/** File name of a plan: its name and revision without what file systems refuse. */
export function planFileName({ name, revision }: Pick<Plan, 'name' | 'revision'>): string {
  const words = [name, revision === '' ? '' : `revision ${revision}`].filter((part) => part !== '').join(', ');
  const plain = words
    .normalize('NFC')
    .replace(/[\p{Cc}<>:"/\\|?*]/gu, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[. ]+|[. ]+$/g, '');
  return `${plain.slice(0, 120) || 'plan'}.json`;
}

/** Writes a text to a file, into `handle` where there is one. False where the person changed their mind. */
export async function savePlanFile(
  text: string,
  fileName: string,
  handle: FileSystemFileHandle | null,
): Promise<{ readonly handle: FileSystemFileHandle | null } | false> {
  const blob = new Blob([text], { type: 'application/json' });
  try {
    return { handle: await fileSave(blob, { ...kind, fileName, id: 'voussoir-plan' }, handle) };
  } catch (error) {
    if (isCancelled(error)) return false;
    throw error;
  }
}
