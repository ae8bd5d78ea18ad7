// The command line: builds it when its sources are newer, then runs it in this process.
// Standard output carries the command's own words and nothing else.
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { buildCommandLine } from './build-command-line.mjs';

/** Exit code where the program itself is broken: none of those that say something of a plan. */
const broken = 70;

const root = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
try {
  await import(pathToFileURL(await buildCommandLine(root)).href);
} catch (error) {
  console.error(error);
  process.exitCode = broken;
}
