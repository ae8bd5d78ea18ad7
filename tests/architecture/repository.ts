import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

export function readText(path: string): string {
  return readFileSync(`${root}/${path}`, 'utf8');
}

/** Names that .gitignore leaves out, and git's own folder: what is never part of the repository. */
function isIgnored(name: string): boolean {
  return ignored.some((pattern) => (pattern.startsWith('*') ? name.endsWith(pattern.slice(1)) : name === pattern));
}

const ignored = [
  '.git',
  ...readText('.gitignore')
    .split('\n')
    .map((line) => line.trim().replace(/\/$/, ''))
    .filter((line) => line !== '' && !line.startsWith('#')),
];

/** Folders and files at the top. */
export function topLevel(): { folders: string[]; files: string[] } {
  const entries = readdirSync(root, { withFileTypes: true }).filter((entry) => !isIgnored(entry.name));
  return {
    folders: entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name),
    files: entries.filter((entry) => !entry.isDirectory()).map((entry) => entry.name),
  };
}

/** Paths, from the root, of all files in a folder and below. */
export function filesUnder(folder: string): string[] {
  return readdirSync(folder === '' ? root : `${root}/${folder}`, { withFileTypes: true }).flatMap((entry) => {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (isIgnored(entry.name)) return [];
    return entry.isDirectory() ? filesUnder(path) : [path];
  });
}

const isScript = (path: string) => /\.(ts|tsx|mjs)$/.test(path) && !path.endsWith('.d.ts');

/** Source files of src: the ones that a compiler reads. */
export const sourceFiles: readonly string[] = filesUnder('src').filter(isScript);
export const testFiles: readonly string[] = filesUnder('tests').filter(isScript);
